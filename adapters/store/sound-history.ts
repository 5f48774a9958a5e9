/** Whether rows in order are whole histories: numbered without a gap, each carrying the digest of itself and of all before it. */
import { digestOf, type Head, headAfter, noHead } from "./head.ts";
import type { PortableRow } from "./row-stream.ts";

export interface HistoryCheck {
  /** What is wrong with the next row, in one line; undefined: nothing. A record is complained about once. */
  take(row: PortableRow): string | undefined;
  readonly records: number;
  readonly versions: number;
}

export function historyCheck(): HistoryCheck {
  let records = 0;
  let versions = 0;
  let record: Pick<PortableRow, "kind" | "id"> | undefined;
  /** undefined: given up. */
  let head: Head | undefined;

  return {
    take(row) {
      versions += 1;
      if (row.kind !== record?.kind || row.id !== record.id) {
        records += 1;
        record = row;
        head = noHead;
      }
      if (head === undefined) return undefined;
      const before = head;
      head = undefined;
      const problem = problemOf(before, row);
      if (problem !== undefined)
        return `${row.kind} ${JSON.stringify(row.id)}, version ${row.version}: ${problem}`;
      head = headAfter(before, row);
      return undefined;
    },
    get records() {
      return records;
    },
    get versions() {
      return versions;
    },
  };
}

function problemOf(head: Head, row: PortableRow): string | undefined {
  if (row.version !== head.version + 1) return `version ${head.version + 1} is missing`;
  if (digestOf(row, head.digest) !== row.digest) return "is not what was written";
  const next = headAfter(head, row);
  if (next === undefined || !isJson(next.text ?? "null")) return "cannot be put together";
  return undefined;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch (failure) {
    if (failure instanceof SyntaxError) return false;
    throw failure;
  }
}
