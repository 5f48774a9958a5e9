// One door that strangers write at, and what must hold whatever they write.
import type { Chance } from "../support/random-tables.ts";

export interface Target {
  readonly name: string;
  readonly about: string;
  /** Opened once; each call tries one thing that chance draws. */
  open(): Promise<OpenTarget>;
}

export interface OpenTarget {
  /** What did not hold, in words that say what was written; undefined when all did. Whatever it throws did not hold either. */
  attempt(chance: Chance): Promise<string | undefined> | string | undefined;
  close(): Promise<void>;
}

/** What takes longer than this, twice, can be used to silence the bot; the quickest of three counts. */
export const SLOW_MILLISECONDS = 1000;

/** As text in one line, cut. */
export function shown(value: unknown): string {
  return (typeof value === "string" ? JSON.stringify(value) : (JSON.stringify(value) ?? "")).slice(0, 400);
}

/** undefined when `work` is quick; it is run again when it was not, because the machine may have been busy elsewhere. */
export function slowness(work: () => unknown): string | undefined {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 3 && least > SLOW_MILLISECONDS; run += 1) {
    const from = performance.now();
    work();
    least = Math.min(least, performance.now() - from);
  }
  return least > SLOW_MILLISECONDS ? `took ${least.toFixed(0)} ms` : undefined;
}
