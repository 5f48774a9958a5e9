/** Work that is tried again when it fails, a few times, in its place in the row; then it is given up, and that is said. */

import { setTimeout as pause } from "node:timers/promises";
import type { Log } from "../../bot/index.ts";
import { forTheLog } from "./for-the-log.ts";

const waits = [1000, 5000];

/** Never rejects. `onLost` is told when all tries have failed. */
export async function persistently(
  log: Log,
  work: () => Promise<void>,
  onLost: (failure: unknown) => Promise<void>,
): Promise<void> {
  for (const wait of [...waits, undefined]) {
    try {
      return await work();
    } catch (failure) {
      if (wait === undefined) return lost(log, failure, onLost);
      log.warn(forTheLog(failure), "a message could not be handled; trying again");
      await pause(wait);
    }
  }
}

async function lost(log: Log, failure: unknown, onLost: (failure: unknown) => Promise<void>): Promise<void> {
  log.error(forTheLog(failure), "message lost");
  try {
    await onLost(failure);
  } catch (further) {
    log.error(forTheLog(further), "that a message was lost could not be said");
  }
}
