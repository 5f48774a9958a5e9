// An empty store on each engine, for what all of them promise.
import { databaseStore } from "../../adapters/store/database-store.ts";
import { memoryStore } from "../../adapters/store/memory.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import type { Store } from "../../bot/index.ts";
import { silentLog } from "./logs.ts";
import { newPlaces } from "./store-places.ts";

const opened: { close(): Promise<void> }[] = [];

const database = (engine: keyof typeof newPlaces) => async (): Promise<Store> => {
  const store = databaseStore(await openEngine(await newPlaces[engine]()), { log: silentLog });
  opened.push(store);
  return store;
};

export const newStores: Readonly<Record<string, () => Promise<Store>>> = {
  memory: async () => memoryStore(),
  SQLite: database("SQLite"),
  Postgres: database("Postgres"),
};

/** Closes all that were opened in this test file. */
export async function closeStores(): Promise<void> {
  for (const store of opened) await store.close();
}
