/** The newest version of a record, and how the next one is laid down after it: whole now and then, else as a change. */
import { createHash } from "node:crypto";
import type { Change } from "../../bot/index.ts";
import { changeBetween, changed } from "./state-change.ts";
import type { VersionRow } from "./tables.ts";

export interface Head {
  /** 0: the record does not exist yet. */
  readonly version: number;
  /** undefined: there is no version, or the newest one was erased. */
  readonly text: string | undefined;
  readonly digest: string;
  /** Rows and characters to be read on top of the last whole state. */
  readonly rowsSinceWhole: number;
  readonly charactersSinceWhole: number;
}

export const noHead: Head = {
  version: 0,
  text: undefined,
  digest: "",
  rowsSinceWhole: 0,
  charactersSinceWhole: 0,
};

/** The whole state of a version that was erased. */
export const ERASED = "";

/** What the record is; undefined before its first version, and once it is erased. */
export function stateOf({ text }: Head): unknown {
  return text === undefined ? undefined : JSON.parse(text);
}

/** Reading a record never touches more rows than this, nor more than twice the characters of its state. */
const MOST_ROWS_SINCE_WHOLE = 64;

/** The row that puts `text` after `head`. */
export function rowAfter(
  head: Head,
  change: Change,
  text: string,
  outcome: string | null,
  era: number,
): VersionRow {
  const laid = laidDown(head, text);
  const row = {
    kind: change.kind,
    id: change.id,
    version: head.version + 1,
    era,
    at: change.at,
    by: change.by,
    why: change.why,
    message: change.message ?? null,
    ...laid,
    outcome,
  };
  return { ...row, digest: digestOf(row, head.digest) };
}

function laidDown(head: Head, text: string): Pick<VersionRow, "kept_start" | "kept_end" | "state"> {
  const whole = { kept_start: null, kept_end: null, state: text };
  if (text === ERASED || head.text === undefined || head.rowsSinceWhole + 1 >= MOST_ROWS_SINCE_WHOLE)
    return whole;
  const { keptStart, keptEnd, between } = changeBetween(head.text, text);
  if (head.charactersSinceWhole + between.length > text.length) return whole;
  return { kept_start: keptStart, kept_end: keptEnd, state: between };
}

/** The head once `row` stands after `head`; undefined when the row does not fit there. */
export function headAfter(
  head: Head,
  row: Pick<VersionRow, "version" | "digest" | "kept_start" | "kept_end" | "state">,
): Head | undefined {
  const { version, digest } = row;
  if (row.kept_start === null || row.kept_end === null) {
    const text = row.state === ERASED ? undefined : row.state;
    return { version, text, digest, rowsSinceWhole: 0, charactersSinceWhole: 0 };
  }
  const change = { keptStart: row.kept_start, keptEnd: row.kept_end, between: row.state };
  const text = head.text === undefined ? undefined : changed(head.text, change);
  if (text === undefined) return undefined;
  return {
    version,
    text,
    digest,
    rowsSinceWhole: head.rowsSinceWhole + 1,
    charactersSinceWhole: head.charactersSinceWhole + row.state.length,
  };
}

/** SHA-256 of the row and the digest before it. The era is left out: putting a backup back changes it. */
export function digestOf(row: Omit<VersionRow, "era" | "digest">, before: string): string {
  const fields = [
    before,
    row.kind,
    row.id,
    row.version,
    row.at,
    row.by,
    row.why,
    row.message,
    row.kept_start,
    row.kept_end,
    row.state,
    row.outcome,
  ];
  return createHash("sha256").update(JSON.stringify(fields)).digest("base64url");
}
