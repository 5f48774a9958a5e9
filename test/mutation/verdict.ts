// Whether the tests notice a mutant.
import { attempted } from "./attempt.ts";
import type { Mutant } from "./mutants.ts";
import type { Reaching } from "./reach.ts";

export type Verdict = "noticed" | "hung or fell" | "survives" | "never run";

const QUICK_SECONDS = 0.5;

/** "hung or fell" (the process had to be ended, or ended by itself) counts as noticed: no test run would have passed. */
export async function verdictOn({ file, text }: Mutant, reaching: readonly Reaching[]): Promise<Verdict> {
  if (reaching.length === 0) return "never run";
  for (const statements of rounds(reaching)) {
    const openings = new Map(statements.map((one) => [one.file, one.openingSeconds]));
    const usual = [...openings.values(), ...statements.map(({ seconds }) => seconds)].reduce(
      (sum, one) => sum + one,
    );
    const tests = [...new Set(statements.map((one) => one.file))].map((test) => ({
      file: test,
      chosen: statements.filter((one) => one.file === test).map(({ index }) => index),
    }));
    const outcome = await attempted({ sources: [[file, text()]], tests }, 5 + 3 * usual);
    if (outcome === undefined) return "hung or fell";
    if (!outcome.passed) return "noticed";
  }
  return "survives";
}

/** The quick ones that were seen to reach it first: most mutants go no further, and one that never ends is ended soon. */
function rounds(reaching: readonly Reaching[]): readonly (readonly Reaching[])[] {
  const cost = ({ seconds, openingSeconds }: Reaching) => seconds + openingSeconds;
  const inOrder = reaching.toSorted((one, other) => cost(one) - cost(other));
  const isFirst = ({ isSeen, seconds }: Reaching) => isSeen && seconds < QUICK_SECONDS;
  return [inOrder.filter(isFirst), inOrder.filter((one) => !isFirst(one))].filter(({ length }) => length > 0);
}
