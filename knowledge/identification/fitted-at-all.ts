/**
 * Whether the works fitted any kind of the part to such a car when it was built. The as-built mix divides whatever is left of the
 * periods' tails, so that of a car from before the first period it would still name a kind, and almost surely.
 */
import { normalDistribution } from "../numbers/normal-distribution.ts";
import type { FittedSpan } from "./as-built-mix.ts";
import type { TimeGrid } from "./time-grid.ts";

/** A kind fitted to fewer such cars than this, by its dates, was fitted to none. Ours, no source. */
const LEAST_FITTED = 0.05;

/**
 * Whether Σ_k w_k · max over the periods of Φ((T_k − from)/s)·Φ((to − T_k)/s) reaches .05: with ends known "about" (s = 2 months) until
 * some three months before the first period. `spans`: those that agree with what is known of the car; none: false.
 */
export function isFittedAtAll({ times, weights }: TimeGrid, spans: readonly FittedSpan[]): boolean {
  const fitted = times.reduce((sum, time, k) => {
    const greatest = spans.reduce((most, span) => Math.max(most, withinSpan(span, time)), 0);
    return sum + (weights[k] as number) * greatest;
  }, 0);
  return fitted >= LEAST_FITTED;
}

function withinSpan(span: FittedSpan, time: number): number {
  return (
    normalDistribution((time - span.from) / span.startDeviation) *
    normalDistribution((span.to - time) / span.endDeviation)
  );
}
