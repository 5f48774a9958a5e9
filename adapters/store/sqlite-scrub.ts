/**
 * Takes what was erased out of SQLite's files. Overwriting rows as they are deleted (secure_delete) would do for those deleted under it,
 * and not for the pages that an earlier version or another program has let go. So the file is written anew (vacuum), which leaves only
 * what is kept, and the log of the pages of before is cut to nothing. That takes seconds for some hundred megabytes, so a thread of its
 * own does it while this one goes on answering; writers wait, as for any other process.
 */
import { Worker } from "node:worker_threads";
import { type Kysely, sql } from "kysely";
import type { Tables } from "./tables.ts";

/** What the thread says in the end: whether all is done, or SQLite's error. */
export type ScrubReport =
  | { readonly isDone: boolean }
  | { readonly errcode: number; readonly message: string };

/**
 * Counts the erasures whose traces are still in the files, within the transaction that erases. It stands in the file's header, so that
 * the next process finds it should this one die (https://www.sqlite.org/pragma.html#pragma_user_version).
 */
export async function markErased(one: Kysely<Tables>): Promise<void> {
  await sql.raw(`pragma user_version = ${(await marksIn(one)) + 1}`).execute(one);
}

/** False: somebody reads from the log, so that it cannot be cut yet, or has erased meanwhile. The marks stay until all is done. */
export async function scrubbed(db: Kysely<Tables>, file: string): Promise<boolean> {
  if ((await marksIn(db)) === 0) return true;
  const thread = new Worker(new URL("./sqlite-scrub-thread.ts", import.meta.url), { workerData: file });
  const report = await new Promise<ScrubReport>((resolve, reject) => {
    thread.once("message", resolve);
    thread.once("error", reject);
    thread.once("exit", () => reject(new Error("the thread that scrubs the file ended early")));
  });
  if ("isDone" in report) return report.isDone;
  throw Object.assign(new Error(report.message), { errcode: report.errcode });
}

async function marksIn(db: Kysely<Tables>): Promise<number> {
  const { rows } = await sql<{ user_version: number }>`pragma user_version`.execute(db);
  return rows[0]?.user_version ?? 0;
}
