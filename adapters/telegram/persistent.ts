/** Work that is tried again when it fails, a few times, in its place in the row; then it is given up, and that is said. */

import { setTimeout as pause } from "node:timers/promises";
import type { Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { forTheLog } from "./for-the-log.ts";
import { isPassing, troubleOf } from "./trouble.ts";

/** A fault of ours seldom goes away by itself. */
const waits = [1000, 5000];
/** What is outside, the store and the platform, comes back, and nothing said meanwhile shall be lost: about ten minutes. */
const waitsOutside = [1000, 5000, 15_000, ...Array<number>(20).fill(30_000)];

/** Never rejects. `onLost` is told when all tries have failed. */
export async function persistently(
  log: Log,
  work: () => Promise<void>,
  onLost: (failure: unknown) => Promise<void>,
  wait: (milliseconds: number) => Promise<unknown> = idle,
): Promise<void> {
  for (let tries = 0; ; tries += 1) {
    try {
      return await work();
    } catch (failure) {
      const milliseconds = (isOutside(failure) ? waitsOutside : waits)[tries];
      if (milliseconds === undefined) return lost(log, failure, onLost);
      log.warn(forTheLog(failure), "a message could not be handled; trying again");
      await wait(milliseconds);
    }
  }
}

/** An answer that is kept and could not be sent would else never be. */
function isOutside(failure: unknown): boolean {
  return failure instanceof OutsideError || isPassing(troubleOf(failure));
}

/** A process that is asked to end does not stay for this: what was not handled is brought again. */
function idle(milliseconds: number): Promise<void> {
  return pause(milliseconds, undefined, { ref: false });
}

async function lost(log: Log, failure: unknown, onLost: (failure: unknown) => Promise<void>): Promise<void> {
  log.error(forTheLog(failure), "message lost");
  try {
    await onLost(failure);
  } catch (further) {
    log.error(forTheLog(further), "that a message was lost could not be said");
  }
}
