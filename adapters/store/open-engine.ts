/** Which engine: the Postgres of DATABASE_URL, or else SQLite in a file of the data folder; with its tables brought up to date. */
import { join } from "node:path";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";

export interface StorePlace {
  readonly dataFolder: string;
  readonly databaseUrl?: string | undefined;
}

/** `isPatient`: nothing is cut off because it takes long, for commands. Throws OutsideError and leaves nothing open. */
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
