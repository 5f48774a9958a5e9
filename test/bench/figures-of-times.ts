// Measured times as figures, p99 held to a budget.

import { percentile } from "./percentiles.ts";
import type { Figure } from "./row.ts";
import type { TurnTimes } from "./times-of-turns.ts";

/** Times by the clock as figures, and what of p99 the processor was at work. */
export function figuresOfTurns({ byTheClock, onProcessor }: TurnTimes, most: number): readonly Figure[] {
  const ours: Figure = { what: "p99 of the processor", value: percentile(onProcessor, 0.99), unit: "ms" };
  return [...figuresOfTimes(byTheClock, most), ours];
}

/** `milliseconds`: at least one; `most`: the budget of p99. */
export function figuresOfTimes(milliseconds: readonly number[], most: number): readonly Figure[] {
  return [
    { what: "p50", value: percentile(milliseconds, 0.5), unit: "ms" },
    { what: "p99", value: percentile(milliseconds, 0.99), unit: "ms", budget: { atMost: most } },
    { what: "slowest", value: Math.max(...milliseconds), unit: "ms" },
  ];
}
