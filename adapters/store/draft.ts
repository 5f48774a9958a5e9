/**
 * What a change would write: the row of its record, and of each record it changes alongside. Which those are is known only once the
 * change has run; their states are read then, and should one of them be out of date by the time of the commit, all of it is run again.
 */
import type { Advance, Alongside, Change } from "../../bot/index.ts";
import { problemAlongside, withoutMessage } from "./alongside.ts";
import { type Head, headAfter, rowAfter, stateOf } from "./head.ts";
import { keyOf, type RecordName } from "./heads.ts";
import type { VersionRow } from "./tables.ts";

export interface Asked {
  readonly change: Change;
  readonly advance: Advance<unknown>;
}

export interface Draft<Entry extends Asked> {
  readonly entry: Entry;
  readonly outcome: unknown;
  readonly main: Step;
  /** The main one and those alongside; each of another record. */
  readonly steps: readonly Step[];
}

interface Step {
  /** Of the record. */
  readonly key: string;
  readonly row: VersionRow;
  /** The record once the row is kept. */
  readonly head: Head | undefined;
}

export type Tried<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: unknown };

type HeadOf = (record: RecordName) => Promise<Head>;

/** Not ok: the change itself failed. Throws what the reading of states throws. */
export async function drafted<Entry extends Asked>(
  entry: Entry,
  headOf: HeadOf,
  era: number,
): Promise<Tried<Draft<Entry>>> {
  const { change, advance } = entry;
  const head = await headOf(change);
  const tried = tryTo(() => advance(stateOf(head)));
  if (!tried.ok) return tried;
  const { state, outcome, alongside = [] } = tried.value;
  const problem = problemAlongside(change, tried.value);
  if (problem !== undefined) return { ok: false, failure: problem };
  const main = tryTo(() => {
    const answer = change.message === undefined ? null : (JSON.stringify(outcome) ?? "null");
    return stepAfter(head, change, state, answer, era);
  });
  if (!main.ok) return main;
  const steps: Step[] = [main.value];
  for (const each of alongside) {
    const step = await stepAlongside(each, headOf, era);
    if (!step.ok) return step;
    steps.push(step.value);
  }
  return { ok: true, value: { entry, outcome, main: main.value, steps } };
}

async function stepAlongside(
  { change, advance }: Alongside,
  headOf: HeadOf,
  era: number,
): Promise<Tried<Step>> {
  const head = await headOf(change);
  return tryTo(() => stepAfter(head, withoutMessage(change), advance(stateOf(head)), null, era));
}

function stepAfter(head: Head, change: Change, state: unknown, answer: string | null, era: number): Step {
  const row = rowAfter(head, change, JSON.stringify(state) ?? "null", answer, era);
  return { key: keyOf(change), row, head: headAfter(head, row) };
}

function tryTo<Value>(work: () => Value): Tried<Value> {
  try {
    return { ok: true, value: work() };
  } catch (failure) {
    return { ok: false, failure };
  }
}
