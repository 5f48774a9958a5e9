/** The thread that `sqlite-scrub.ts` starts: it alone waits while the file is written anew, on a connection of its own. */
import { DatabaseSync } from "node:sqlite";
import { parentPort, workerData } from "node:worker_threads";
import type { ScrubReport } from "./sqlite-scrub.ts";

const PATIENCE_MILLISECONDS = 1000;
/** Primary result codes of what passes, https://www.sqlite.org/rescode.html */
const PASSING = new Set([5, 6]);

function scrub(connection: DatabaseSync): boolean {
  const marks = marksIn(connection);
  connection.exec("vacuum");
  const { busy } = connection.prepare("pragma wal_checkpoint(truncate)").get() ?? {};
  if (busy !== 0) return false;
  // Whoever has erased since then has put the same words into the log again.
  connection.exec("begin immediate");
  const isSame = marksIn(connection) === marks;
  if (isSame) connection.exec("pragma user_version = 0");
  connection.exec("commit");
  return isSame;
}

function marksIn(connection: DatabaseSync): unknown {
  const { user_version: marks } = connection.prepare("pragma user_version").get() ?? {};
  return marks;
}

function report(file: string): ScrubReport {
  let connection: DatabaseSync | undefined;
  try {
    connection = new DatabaseSync(file, { timeout: PATIENCE_MILLISECONDS });
    connection.exec("pragma synchronous = full; pragma fullfsync = on");
    return { isDone: scrub(connection) };
  } catch (failure) {
    if (!(failure instanceof Error) || !("errcode" in failure) || typeof failure.errcode !== "number")
      throw failure;
    if (PASSING.has(failure.errcode & 0xff)) return { isDone: false };
    return { errcode: failure.errcode, message: failure.message };
  } finally {
    connection?.close();
  }
}

parentPort?.postMessage(report(workerData));
