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

/** Of a processor, not of the clock on the wall, because the machine may be busy elsewhere. What takes longer can be used to silence the bot. */
export const SLOW_MILLISECONDS = 1000;

/** Of all of this process's threads. */
export function processorMilliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** As text in one line, cut. */
export function shown(value: unknown): string {
  return (typeof value === "string" ? JSON.stringify(value) : (JSON.stringify(value) ?? "")).slice(0, 400);
}

/** What `work` gives; `slow`: undefined when it was quick. It is run again when it was not, because the first time much is compiled. */
export function timedWork<Result>(work: () => Result): {
  readonly result: Result;
  readonly slow: string | undefined;
} {
  const from = processorMilliseconds();
  const result = work();
  let least = processorMilliseconds() - from;
  for (let run = 1; run < 3 && least > SLOW_MILLISECONDS; run += 1) {
    const begun = processorMilliseconds();
    work();
    least = Math.min(least, processorMilliseconds() - begun);
  }
  return { result, slow: least > SLOW_MILLISECONDS ? `took ${least.toFixed(0)} ms` : undefined };
}
