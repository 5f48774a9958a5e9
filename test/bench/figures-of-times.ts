// Measured times as figures, p99 held to a budget.

import { percentile } from "./percentiles.ts";
import type { Figure } from "./row.ts";

/** `milliseconds`: at least one; `most`: the budget of p99. */
export function figuresOfTimes(milliseconds: readonly number[], most: number): readonly Figure[] {
  return [
    { what: "p50", value: percentile(milliseconds, 0.5), unit: "ms" },
    { what: "p99", value: percentile(milliseconds, 0.99), unit: "ms", budget: { atMost: most } },
    { what: "slowest", value: Math.max(...milliseconds), unit: "ms" },
  ];
}
