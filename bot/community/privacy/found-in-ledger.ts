/** What only the ledger knows of somebody: which records of others they have changed, and who has had theirs in hand. */
import type { Store } from "../../ports.ts";
import { Keepers, keepersId, keepersKind } from "../keepers/keepers-record.ts";
import { LedgerEntry, ledgerKind } from "../ledger.ts";
import type { Erasure } from "./erasure-record.ts";

/** Linear in the ledger. `readers`: whoever changed a record of theirs, and who keeps the community: both have been shown them. */
export async function foundInLedger(
  store: Store,
  community: string,
  { person, observations, pins, handedOver }: Erasure,
): Promise<NonNullable<Erasure["found"]>> {
  const own = new Set([...observations, ...pins, ...handedOver]);
  const changed = new Map<string, LedgerEntry["changed"][number]>();
  const readers = new Set(await keepersOf(store, community));
  for (const { by, state } of await store.history(ledgerKind, community)) {
    const records = LedgerEntry.safeParse(state).data?.changed ?? [];
    if (by !== person && records.some(({ id }) => own.has(id))) readers.add(by);
    const others = by === person ? records.filter(({ id }) => !own.has(id)) : [];
    for (const record of others) changed.set(`${record.kind}/${record.id}`, record);
  }
  readers.delete(person);
  return { changed: [...changed.values()], readers: [...readers] };
}

async function keepersOf(store: Store, community: string): Promise<readonly string[]> {
  const kept = Keepers.safeParse(await store.current(keepersKind.kind, `${community}/${keepersId}`));
  return kept.success ? kept.data.roles.map(({ person }) => person) : [];
}
