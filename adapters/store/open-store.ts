/** Which store: the one at DATABASE_URL, or else a file in the data folder; with its tables brought up to date. */
import { join } from "node:path";
import type { Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { type DatabaseStore, databaseStore } from "./database-store.ts";
import type { Engine } from "./engine.ts";
import { importConversations } from "./import-conversations.ts";

export interface StorePlace {
  readonly dataFolder: string;
  readonly databaseUrl: string | undefined;
}

/** The service's store. Throws OutsideError when it cannot be had, and leaves nothing open. */
export async function openStore(place: StorePlace, log: Log): Promise<DatabaseStore> {
  const engine = await openEngine(place);
  try {
    await importConversations(engine, join(place.dataFolder, "conversations.jsonl"), Date.now(), log);
  } catch (failure) {
    await engine.close();
    throw failure;
  }
  return databaseStore(engine, { log });
}

/** A store in one SQLite file, wherever it is. */
export async function openStoreFile(file: string, log: Log): Promise<DatabaseStore> {
  return databaseStore(await openEngineFile(file), { log });
}

/** The engine alone, for commands. `isPatient`: nothing is cut off because it takes long. */
export async function openEngine(place: StorePlace, isPatient = false): Promise<Engine> {
  if (place.databaseUrl === undefined) return openEngineFile(join(place.dataFolder, "witness-mark.sqlite"));
  const { openPostgres, patientLimits } = await import("./postgres.ts");
  return migratedEngine(await openPostgres(place.databaseUrl, isPatient ? patientLimits : undefined));
}

export async function openEngineFile(file: string): Promise<Engine> {
  const { openSqlite } = await import("./sqlite.ts");
  return migratedEngine(await openSqlite(file));
}

async function migratedEngine(engine: Engine): Promise<Engine> {
  try {
    await engine.migrate();
    return engine;
  } catch (failure) {
    await engine.close();
    if (failure instanceof OutsideError) throw failure;
    throw new OutsideError(engine.troubleOf(failure).message, failure);
  }
}
