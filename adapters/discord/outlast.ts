/**
 * Work that is tried again while what stands in its way passes: a store that cannot be written, a Discord that cannot be reached. Else
 * whoever speaks while a disk is full would have to say it again and again, and an answer that was kept but not shown would never be.
 */
import { setTimeout as pause } from "node:timers/promises";
import type { Log } from "../../bot/index.ts";
import { UnavailableError } from "../errors.ts";
import { troubleOf } from "./trouble.ts";

/** Interactions can be answered for fifteen minutes: what is given up after ten can still be told. */
const PATIENCE_MILLISECONDS = 10 * 60_000;
const WAITS = [500, 1000, 2000, 5000] as const;
const LONGEST_WAIT = 10_000;

export interface Outlasting {
  readonly log: Log;
  /** Once it is aborted, whatever waits is tried a last time. */
  readonly closing: AbortSignal;
  readonly patienceMilliseconds?: number;
}

export type Outlast = <Outcome>(work: () => Promise<Outcome>) => Promise<Outcome>;

/** Its patience is counted from now on. Rejects with what stood in the way last, or with what does not pass. */
export function outlasting({
  log,
  closing,
  patienceMilliseconds = PATIENCE_MILLISECONDS,
}: Outlasting): Outlast {
  const deadline = performance.now() + patienceMilliseconds;
  return async (work) => {
    for (let tries = 0; ; tries += 1) {
      const isLast = closing.aborted || performance.now() >= deadline;
      try {
        return await work();
      } catch (failure) {
        if (isLast || !passes(failure)) throw failure;
        log.warn({ trouble: troubleOf(failure) }, "something said could not be handled; trying again");
        await rest(WAITS[tries] ?? LONGEST_WAIT, closing);
      }
    }
  };
}

function passes(failure: unknown): boolean {
  return failure instanceof UnavailableError || troubleOf(failure) === "unreachable";
}

async function rest(milliseconds: number, closing: AbortSignal): Promise<void> {
  try {
    await pause(milliseconds, undefined, { signal: closing });
  } catch (failure) {
    // The rest is cut short; what was waited for is tried a last time.
    if (!closing.aborted) throw failure;
  }
}

/** The work, done once: what came of it the first time it succeeded is given again. */
export function once<Outcome>(work: () => Promise<Outcome>): () => Promise<Outcome> {
  let done: { readonly outcome: Outcome } | undefined;
  return async () => {
    done ??= { outcome: await work() };
    return done.outcome;
  };
}
