/**
 * The ledger of a community: one record that advances with every change of what answers go by. Its number says how far a process has
 * read, its history which records to read again, and who did what: the audit.
 */
import { z } from "zod";
import type { Alongside } from "../ports.ts";

export const ledgerKind = "ledger";

/** Which records this step of the ledger changed. */
export const LedgerEntry = z.strictObject({
  changed: z.array(z.strictObject({ kind: z.string(), id: z.string() })).readonly(),
});
export type LedgerEntry = z.output<typeof LedgerEntry>;

/** The ledger's next step; the ids are those within the community. */
export function ledgerStep(
  community: string,
  changed: LedgerEntry["changed"],
  by: string,
  at: number,
  why: string,
): Alongside {
  const entry: LedgerEntry = { changed };
  return { change: { kind: ledgerKind, id: community, by, at, why: keepable(why) }, advance: () => entry };
}

/** What was done holds people's words; a zero character and half of a surrogate pair no database keeps. */
export function keepable(why: string): string {
  return why.replaceAll("\0", "").replace(/\p{Surrogate}/gu, "");
}
