// Where stores of the tests are: a new folder, or a new database of the Postgres that all test files share.
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { StorePlace } from "../../adapters/store/open-engine.ts";
import { newPostgresDatabase } from "./postgres-database.ts";

export function newStoreFolder(): string {
  return mkdtempSync(join(tmpdir(), "wm-store-"));
}

/** By engine, as the tables of tests name it. */
export const newPlaces: Readonly<Record<"SQLite" | "Postgres", () => Promise<StorePlace>>> = {
  SQLite: async () => ({ dataFolder: newStoreFolder() }),
  Postgres: async () => ({ dataFolder: newStoreFolder(), databaseUrl: await newPostgresDatabase() }),
};
