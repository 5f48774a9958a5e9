/** The rows of a record as they are once something is erased from it: the same versions, told anew from the first to the last. */
import type { Change, ErasedToo } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { ERASED, noHead, rowAfter, stateOf } from "./head.ts";
import type { VersionRow } from "./tables.ts";
import { headOrThrow } from "./versions-from.ts";

export interface Erasure {
  readonly change: Omit<Change, "message">;
  readonly rewrite: (state: unknown) => unknown;
  readonly also: ErasedToo;
}

/**
 * `rows`, all of a record, rewritten, and one more that says who erased. That one has a second task: whoever still goes by the newest
 * version as it was (another process, a change under way) wants to write under its number, finds it taken, and reads again. The era
 * need not change, which would mean to write every row of the store again.
 */
export function erasedRows(
  rows: readonly VersionRow[],
  erasure: Erasure,
  place: string,
): readonly VersionRow[] {
  const { change, rewrite, also } = erasure;
  const { by = same, why = same } = also;
  const erased: VersionRow[] = [];
  let before = noHead;
  let after = noHead;
  let text = ERASED;
  const add = (row: VersionRow) => {
    erased.push(row);
    after = headOrThrow(after, row, place);
  };
  for (const row of rows) {
    before = headOrThrow(before, row, place);
    text = textOf(before.text === undefined ? undefined : rewrite(stateOf(before)));
    const { kind, id, at } = row;
    const version = { kind, id, at, by: by(row.by), why: why(row.why, row.by) };
    const named = row.message === null ? version : { ...version, message: row.message };
    add(rowAfter(after, named, text, outcomeAfter(row.outcome, also), row.era));
  }
  const { kind, id, at } = change;
  const said = { kind, id, at: Math.round(at), by: change.by, why: change.why };
  const last = rows.at(-1);
  if (last !== undefined) add(rowAfter(after, said, text, null, last.era));
  return erased;
}

/** For a message that comes again after its answer was erased. */
export function answerErased({ kind }: Change): OutsideError {
  return new OutsideError(`store: the answer to this message was erased from the ${kind}`);
}

function textOf(state: unknown): string {
  return state === undefined ? ERASED : (JSON.stringify(state) ?? "null");
}

function outcomeAfter(kept: string | null, { outcome }: ErasedToo): string | null {
  if (kept === null || outcome === undefined) return null;
  return JSON.stringify(outcome(JSON.parse(kept))) ?? null;
}

function same(text: string): string {
  return text;
}
