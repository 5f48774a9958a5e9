// Which statements reach which mutants.
import { attempted } from "./attempt.ts";
import { eachAtOnce } from "./each-at-once.ts";
import type { MutatedSources } from "./mutants.ts";

export interface Reaching {
  readonly file: string;
  readonly index: number;
  /** What it and the opening of its file take of the processor's time. */
  readonly seconds: number;
  readonly openingSeconds: number;
  /** Whether it was seen to reach the mutant itself; if not, it may still rest on a value that another statement of its file had computed. */
  readonly isSeen: boolean;
}

const LIMIT_SECONDS = 600;

/** Mutant id to the statements of the files that reach it. Throws if a statement fails though nothing is changed. */
export async function reachOf(
  { noting }: MutatedSources,
  tests: readonly string[],
): Promise<ReadonlyMap<number, readonly Reaching[]>> {
  const reach = new Map<number, Reaching[]>();
  const outcomes = await eachAtOnce(tests, (file) =>
    attempted({ sources: [...noting], tests: [{ file }] }, LIMIT_SECONDS),
  );
  for (const [at, file] of tests.entries()) {
    const outcome = outcomes[at];
    if (outcome?.passed !== true)
      throw new Error(`mutation: ${file} fails as it is: ${outcome?.why ?? "no answer"}`);
    const { seconds, openingSeconds, reached } = outcome;
    const seen = reached.map((ids) => new Set(ids));
    for (const id of new Set(reached.flat())) {
      const those = seconds.map((took, index) => ({
        file,
        index,
        seconds: took,
        openingSeconds,
        isSeen: seen[index]?.has(id) ?? false,
      }));
      reach.set(id, [...(reach.get(id) ?? []), ...those]);
    }
  }
  return reach;
}
