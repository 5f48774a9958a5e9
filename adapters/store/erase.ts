/**
 * Erasing from a record: the one exception to "a version is only ever added". All of it is one transaction, so a process that dies has
 * erased everything or nothing; a change that somebody else makes meanwhile makes it begin again, and so is neither lost nor left out.
 */
import { setTimeout as pause } from "node:timers/promises";
import { type Kysely, sql } from "kysely";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";
import { type Erasure, erasedRows } from "./erased-rows.ts";
import type { Tables, VersionRow } from "./tables.ts";

const PAGE = 200;
const PAUSE = 20;

/** False: there is no such record. Throws OutsideError once trouble has not passed for so long. */
export async function erase(engine: Engine, erasure: Erasure, patience: number): Promise<boolean> {
  const deadline = performance.now() + patience;
  for (;;) {
    try {
      engine.stillThere();
      return await engine.db.transaction().execute((one) => eraseIn(one, engine, erasure));
    } catch (failure) {
      const { kind, message } = engine.troubleOf(failure);
      const isPassing = kind === "again" || kind === "era" || kind === "taken";
      if (!isPassing || performance.now() > deadline) {
        if (failure instanceof OutsideError || kind === "refused") throw failure;
        throw new OutsideError(message, failure);
      }
      await pause(PAUSE);
    }
  }
}

async function eraseIn(one: Kysely<Tables>, engine: Engine, erasure: Erasure): Promise<boolean> {
  const { kind, id } = erasure.change;
  // Writing first takes SQLite's lock; a transaction that begins by reading may find that it can no longer write. In Postgres it keeps
  // a backup from being put back meanwhile, and stops no other writer.
  await one.updateTable("era").set({ begun: sql`begun` }).execute();
  const rows = await one
    .selectFrom("version")
    .selectAll()
    .where("kind", "=", kind)
    .where("id", "=", id)
    .orderBy("version")
    .execute();
  if (rows.length === 0) return false;
  const erased = erasedRows(rows, erasure, engine.place);
  // A version that came after we read is not deleted: it stands where the last of ours has to stand, and all of this begins again.
  await one
    .deleteFrom("version")
    .where("kind", "=", kind)
    .where("id", "=", id)
    .where("version", "<=", rows.length)
    .execute();
  for (let from = 0; from < erased.length; from += PAGE) await insert(one, erased.slice(from, from + PAGE));
  await engine.markErased(one);
  return true;
}

async function insert(one: Kysely<Tables>, rows: readonly VersionRow[]): Promise<void> {
  await one.insertInto("version").values(rows).execute();
}
