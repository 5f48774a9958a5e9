/** What only one of several processes does, beside fetching updates: the list of commands, and notices. */

import { setTimeout as pause } from "node:timers/promises";
import type { Door } from "./door.ts";
import { forTheLog } from "./for-the-log.ts";
import { registerCommands } from "./register-commands.ts";
import { tellNotices } from "./tell-notices.ts";

export interface DutyTimes {
  /** How often notices are asked for. */
  readonly noticesEvery?: number;
}

export function doDuties(
  door: Door,
  isElected: () => boolean,
  { noticesEvery = 1500 }: DutyTimes,
): { close(): Promise<void> } {
  const closing = new AbortController();
  const running = duties(door, isElected, noticesEvery, closing.signal);
  return {
    async close() {
      closing.abort();
      await running;
    },
  };
}

async function duties(
  door: Door,
  isElected: () => boolean,
  every: number,
  signal: AbortSignal,
): Promise<void> {
  let isRegistered = false;
  while (!signal.aborted) {
    try {
      if (isElected() && !isRegistered) {
        await registerCommands(door.api);
        isRegistered = true;
      }
      if (isElected()) await tellNotices(door);
    } catch (failure) {
      door.log.warn(forTheLog(failure), "a duty could not be done; trying again");
    }
    // Aborted: over at once.
    await pause(every, undefined, { signal }).catch(() => undefined);
  }
}
