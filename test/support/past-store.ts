// A community as it was when its ledger stood at some number, read out of the histories that a store keeps. What changed with the
// ledger was kept in the same commit, so a record's state of then is that of its version of as many mentions.
import { LedgerEntry, ledgerKind } from "../../bot/community/ledger.ts";
import type { Current, Store } from "../../bot/index.ts";

/** Reads as the store would have read at that number; for communities whose every record came with the ledger. */
export async function pastStore(store: Store, community: string, number: number): Promise<Store> {
  const ledger = (await store.history(ledgerKind, community)).slice(0, number);
  const mentions = new Map<string, { readonly kind: string; readonly id: string; version: number }>();
  for (const { kind, id } of ledger.flatMap(({ state }) => LedgerEntry.parse(state).changed)) {
    const record = mentions.get(`${kind}/${id}`) ?? { kind, id: `${community}/${id}`, version: 0 };
    record.version += 1;
    mentions.set(`${kind}/${id}`, record);
  }
  const currents: (Current & { readonly kind: string })[] = [];
  for (const { kind, id, version } of mentions.values()) {
    const state = (await store.history(kind, id))[version - 1]?.state;
    currents.push({ kind, id, version, state });
  }
  const found = (kind: string, id: string) => currents.find((one) => one.kind === kind && one.id === id);
  return {
    ...store,
    current: async (kind, id) => found(kind, id)?.state,
    version: async (kind, id) => (kind === ledgerKind ? ledger.length : (found(kind, id)?.version ?? 0)),
    history: async (kind, id, after = 0) =>
      (kind === ledgerKind ? ledger : await store.history(kind, id)).slice(after),
    async *currents(kind, prefix) {
      const found = currents.filter((one) => one.kind === kind && one.id.startsWith(prefix));
      yield* found.sort((one, other) => (one.id < other.id ? -1 : 1));
    },
  };
}
