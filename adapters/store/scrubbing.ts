/** When the files are scrubbed: once for all the erasures that have come before it began, and at the start for those of a process that died. */
import { setTimeout as pause } from "node:timers/promises";
import type { Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";

const PAUSE = 50;

export interface Scrubbing {
  /** Resolves once what was erased before the call is in no file. Throws OutsideError when somebody keeps it from it for too long. */
  scrub(): Promise<void>;
  /** Waits for what is under way. */
  close(): Promise<void>;
}

export function scrubbingOf(engine: Engine, log: Log, patience: number): Scrubbing {
  let last: Promise<void> = Promise.resolve();
  /** Not yet begun, so that it will take what is erased now. */
  let next: Promise<void> | undefined;
  let isClosing = false;

  async function scrubOnce(): Promise<void> {
    const deadline = performance.now() + patience;
    while (!(await tried())) {
      if (isClosing || performance.now() > deadline) {
        throw new OutsideError(
          `store: ${engine.place}: what was erased is gone from the records and not yet from the files, which another program still reads; end it and erase again`,
        );
      }
      await pause(PAUSE);
    }
  }

  async function tried(): Promise<boolean> {
    try {
      return await engine.scrub();
    } catch (failure) {
      const { kind, message } = engine.troubleOf(failure);
      if (kind !== "again") throw new OutsideError(message, failure);
      return false;
    }
  }

  function scrub(): Promise<void> {
    if (next !== undefined) return next;
    const begin = () => {
      next = undefined;
      return scrubOnce();
    };
    next = last.then(begin, begin);
    last = next;
    return next;
  }

  scrub().catch((failure: unknown) => {
    log.warn({ problem: engine.troubleOf(failure).message }, "what was erased is still in the store's files");
  });

  return {
    scrub,
    async close() {
      isClosing = true;
      await Promise.allSettled([last]);
    },
  };
}
