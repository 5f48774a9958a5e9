/** The store that a program serves from, with whatever an earlier version kept brought over. */
import { join } from "node:path";
import type { Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { type DatabaseStore, databaseStore } from "./database-store.ts";
import { importConversations } from "./import-conversations.ts";
import { openEngine, openEngineFile, type StorePlace } from "./open-engine.ts";

/** The service's store. Throws OutsideError when it cannot be had, and leaves nothing open. */
export async function openStore(place: StorePlace, log: Log): Promise<DatabaseStore> {
  const engine = await openEngine(place);
  try {
    await importConversations(engine, join(place.dataFolder, "conversations.jsonl"), Date.now(), log);
  } catch (failure) {
    await engine.close();
    if (failure instanceof OutsideError) throw failure;
    throw new OutsideError(engine.troubleOf(failure).message, failure);
  }
  return databaseStore(engine, { log });
}

/** A store in one SQLite file, wherever it is. */
export async function openStoreFile(file: string, log: Log): Promise<DatabaseStore> {
  return databaseStore(await openEngineFile(file), { log });
}
