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

/** False: there is no such record. Throws what the rewriting throws, and OutsideError once trouble has not passed for so long. */
export async function erase(engine: Engine, erasure: Erasure, patience: number): Promise<boolean> {
  const deadline = performance.now() + patience;
  for (;;) {
    const attempt = await tried(engine, erasure);
    if (attempt.ok) return attempt.isThere;
    if (!attempt.isPassing || performance.now() > deadline) throw attempt.problem;
    await pause(PAUSE);
  }
}

type Attempt =
  | { readonly ok: true; readonly isThere: boolean }
  | { readonly ok: false; readonly isPassing: boolean; readonly problem: unknown };

async function tried(engine: Engine, erasure: Erasure): Promise<Attempt> {
  let fault: unknown;
  const rewritten = (rows: readonly VersionRow[]) => {
    try {
      return erasedRows(rows, erasure, engine.place);
    } catch (failure) {
      fault = failure;
      throw failure;
    }
  };
  try {
    engine.stillThere();
    const isThere = await engine.db
      .transaction()
      .execute((one) => eraseIn(one, engine, erasure.change, rewritten));
    return { ok: true, isThere };
  } catch (failure) {
    // Not the database's: the rewriting itself failed, or the record is damaged.
    if (failure === fault) return { ok: false, isPassing: false, problem: failure };
    const { kind, message } = engine.troubleOf(failure);
    const isPassing = kind === "again" || kind === "era" || kind === "taken";
    return { ok: false, isPassing, problem: new OutsideError(message, failure) };
  }
}

async function eraseIn(
  one: Kysely<Tables>,
  engine: Engine,
  { kind, id }: Erasure["change"],
  rewritten: (rows: readonly VersionRow[]) => readonly VersionRow[],
): Promise<boolean> {
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
  const erased = rewritten(rows);
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
