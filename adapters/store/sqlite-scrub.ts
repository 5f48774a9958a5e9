/**
 * Takes what was erased out of SQLite's files. Overwriting each row as it is deleted (secure_delete) would not be enough: pages that
 * were split or joined keep copies in the gaps between their rows, and a backup that was put back leaves whole pages behind. So the
 * file is written anew (vacuum), which leaves only what is kept; then the log, which holds the pages of before, is cut to nothing. It
 * takes a second for some hundred megabytes; erasing is rare.
 */
import { type Kysely, sql } from "kysely";
import type { Tables } from "./tables.ts";

/**
 * Counts the erasures whose traces are still in the files, within the transaction that erases. It stands in the file's header, so that
 * the next process finds it should this one die (https://www.sqlite.org/pragma.html#pragma_user_version).
 */
export async function markErased(one: Kysely<Tables>): Promise<void> {
  await sql.raw(`pragma user_version = ${(await marksIn(one)) + 1}`).execute(one);
}

/** False: somebody reads from the log, so that it cannot be cut yet, or has erased meanwhile. The marks stay until all is done. */
export async function scrubbed(alone: Kysely<Tables>): Promise<boolean> {
  const marks = await marksIn(alone);
  if (marks === 0) return true;
  await sql`vacuum`.execute(alone);
  const { rows } = await sql<{ busy: number }>`pragma wal_checkpoint(truncate)`.execute(alone);
  return rows[0]?.busy === 0 && (await isUnmarked(alone, marks));
}

async function isUnmarked(alone: Kysely<Tables>, marks: number): Promise<boolean> {
  await sql`begin immediate`.execute(alone);
  const isSame = (await marksIn(alone)) === marks;
  if (isSame) await sql`pragma user_version = 0`.execute(alone);
  await sql`commit`.execute(alone);
  return isSame;
}

async function marksIn(db: Kysely<Tables>): Promise<number> {
  const { rows } = await sql<{ user_version: number }>`pragma user_version`.execute(db);
  return rows[0]?.user_version ?? 0;
}
