// What a run came to, in figures.
import { percentile } from "../bench/percentiles.ts";
import type { Answer } from "./crowd.ts";
import type { Program, Used } from "./program.ts";

export interface Outcome {
  readonly problems: readonly string[];
  readonly errors: Readonly<Record<string, number>>;
  readonly said: { readonly once: number; readonly again: number };
  readonly answered: number;
  readonly seconds: number;
  /** Answers a second over the busiest ten seconds: before and after them people come and go one by one. */
  readonly busiest: number;
  readonly latency: Readonly<Record<string, Latency>>;
  /** Of each process: megabytes when nobody has spoken and at the end, and how much of a processor it needed between. */
  readonly used: readonly UsedBetween[];
  /** How much of a processor the doubles and the people needed themselves, who share the machine. */
  readonly own: number;
  readonly store: { readonly records: number; readonly versions: number };
}

export interface UsedBetween {
  readonly before: number;
  readonly after: number;
  readonly heap: number;
  /** 1: a whole processor, all the time. */
  readonly processor: number;
}

export interface Latency {
  readonly answers: number;
  readonly p50: number;
  readonly p95: number;
  readonly p99: number;
  readonly most: number;
}

/** Of one process between two looks; one that was killed meanwhile counts from its new start. */
export function usedBetween(before: Used | undefined, after: Used, seconds: number): UsedBetween {
  return {
    before: before?.resident ?? 0,
    after: after.resident,
    heap: after.heap,
    processor: Math.max(0, after.processor - (before?.processor ?? 0)) / seconds,
  };
}

export function errorsOf(programs: readonly Program[]): Readonly<Record<string, number>> {
  const all = new Map<string, number>();
  for (const { errors } of programs) {
    for (const [words, count] of errors) all.set(words, (all.get(words) ?? 0) + count);
  }
  return Object.fromEntries(all);
}

const BUSY_MILLISECONDS = 10_000;

export function busiestRate(answers: readonly Answer[]): number {
  const times = answers.map(({ at }) => at).toSorted((one, other) => one - other);
  let from = 0;
  let most = 0;
  for (const [index, at] of times.entries()) {
    while ((times[from] ?? at) <= at - BUSY_MILLISECONDS) from += 1;
    most = Math.max(most, index - from + 1);
  }
  return (1000 * most) / BUSY_MILLISECONDS;
}

export function latencies(answers: readonly Answer[]): Readonly<Record<string, Latency>> {
  const byDoor = new Map<string, number[]>([["all", answers.map(({ milliseconds }) => milliseconds)]]);
  for (const { door, milliseconds } of answers) byDoor.set(door, [...(byDoor.get(door) ?? []), milliseconds]);
  return Object.fromEntries(
    [...byDoor].map(([door, times]) => [
      door,
      {
        answers: times.length,
        p50: percentile(times, 0.5),
        p95: percentile(times, 0.95),
        p99: percentile(times, 0.99),
        most: Math.max(0, ...times),
      },
    ]),
  );
}
