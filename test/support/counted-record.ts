// A record that counts its messages and folds their names into one number, so that a message lost, taken twice or out of order shows. It
// is entered in a ledger alongside, which several records share and which tells the message as its reason.
import type { Advance, Alongside } from "../../bot/index.ts";

export interface Counted {
  readonly count: number;
  readonly fold: number;
}

export interface WriterTask {
  readonly dataFolder: string;
  readonly databaseUrl?: string;
  readonly name: string;
  /** The number of the first message, and of the one it stops before. */
  readonly from: number;
  readonly most: number;
  readonly records: number;
  /** Sent by an earlier process that died before it was told. */
  readonly unconfirmed: readonly { readonly record: number; readonly message: string }[];
}

export function recordName(record: number): string {
  return `record ${record}`;
}

export function folded(before: Counted | undefined, message: string): Counted {
  let fold = before?.fold ?? 0;
  for (const character of message) fold = (Math.imul(fold, 31) + (character.codePointAt(0) ?? 0)) | 0;
  return { count: (before?.count ?? 0) + 1, fold };
}

/** One more message; the outcome is the state. */
export function countOn(message: string): Advance<Counted> {
  return (state) => {
    const next = folded(state as Counted | undefined, message);
    return { state: next, outcome: next };
  };
}

/** So many ledgers all records share, so that changes of different records meet there. */
export const LEDGERS = 3;

export function ledgerName(ledger: number): string {
  return `ledger ${ledger}`;
}

/** One more message, entered in the ledger of the record and in the one that all share. */
export function countInLedgers(record: number, message: string, by: string): Advance<Counted> {
  const entered = (ledger: number): Alongside => ({
    change: { kind: "ledger", id: ledgerName(ledger), by, at: 0, why: message },
    advance: (state) => folded(state as Counted | undefined, message),
  });
  const alongside = [...new Set([0, record % LEDGERS])].map(entered);
  return (state) => ({ ...countOn(message)(state), alongside });
}
