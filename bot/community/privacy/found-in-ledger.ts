/** What only the ledger knows of somebody: which records of others they have changed, and who has had theirs in hand. */
import type { Store } from "../../ports.ts";
import { Keepers, keepersId, keepersKind } from "../keepers/keepers-record.ts";
import { LedgerEntry, ledgerKind } from "../ledger.ts";
import type { Erasure } from "./erasure-record.ts";

/**
 * Linear in the ledger. `readers`: whoever changed a record of theirs, or one that they have changed, and who keeps the community: all of
 * them have been shown or told something of them.
 */
export async function foundInLedger(
  store: Store,
  community: string,
  { person, observations, pins, handedOver }: Erasure,
): Promise<NonNullable<Erasure["found"]>> {
  const own = new Set([...observations, ...pins, ...handedOver]);
  const steps = (await store.history(ledgerKind, community)).map(({ by, state }) => ({
    by,
    records: LedgerEntry.safeParse(state).data?.changed ?? [],
  }));
  const changed = new Map<string, LedgerEntry["changed"][number]>();
  for (const { by, records } of steps) {
    const others = by === person ? records.filter(({ id }) => !own.has(id)) : [];
    for (const record of others) changed.set(`${record.kind}/${record.id}`, record);
  }
  const shared = new Set([...own, ...[...changed.values()].map(({ id }) => id)]);
  const readers = new Set(await keepersOf(store, community));
  for (const { by, records } of steps) if (records.some(({ id }) => shared.has(id))) readers.add(by);
  readers.delete(person);
  return { changed: [...changed.values()], readers: [...readers] };
}

async function keepersOf(store: Store, community: string): Promise<readonly string[]> {
  const kept = Keepers.safeParse(await store.current(keepersKind.kind, `${community}/${keepersId}`));
  return kept.success ? kept.data.roles.map(({ person }) => person) : [];
}
