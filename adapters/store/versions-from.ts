/** Rows of one record, put together again into its versions. */
import type { Version } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { type Head, headAfter, noHead, stateOf } from "./head.ts";
import type { VersionRow } from "./tables.ts";

/** What a state is put together from; the outcomes can stay where they are. */
export type StateRow = Omit<VersionRow, "era" | "outcome">;

/** What a head is put together from; who, when and why can stay where they are too. */
export type HeadRow = Pick<
  StateRow,
  "kind" | "id" | "version" | "kept_start" | "kept_end" | "state" | "digest"
>;

/** One record is damaged; the others go on. */
export class DamagedRecordError extends OutsideError {
  constructor(place: string, row: HeadRow) {
    const record = `${row.kind} ${JSON.stringify(row.id)}`;
    super(
      `store: ${place}: ${record} is damaged at version ${row.version}; witness-mark store check tells more, a backup mends it`,
    );
    this.name = "DamagedRecordError";
  }
}

/** The head once `row` stands after `head`. Throws DamagedRecordError when it does not fit there. */
export function headOrThrow(head: Head, row: HeadRow, place: string): Head {
  const next = headAfter(head, row);
  if (next === undefined) throw new DamagedRecordError(place, row);
  return next;
}

/** `rows`: all of one record, in order. */
export function versionsFrom(rows: readonly StateRow[], place: string): readonly Version[] {
  let head = noHead;
  return rows.map((row) => {
    head = headOrThrow(head, row, place);
    return {
      version: row.version,
      by: row.by,
      at: row.at,
      why: row.why,
      ...(row.message === null ? {} : { message: row.message }),
      state: stateOf(head),
    };
  });
}
