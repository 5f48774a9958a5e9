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
  let fitted = 0;
  for (const [k, time] of times.entries()) {
    fitted += (weights[k] as number) * greatestWithin(spans, time);
    // Most cars are: of a large part kind the first instant that counts is enough.
    if (fitted >= LEAST_FITTED) return true;
  }
  return false;
}

/** So many deviations outside a period nothing is left of it. */
const FAR = 8;
/** Inside a period by so much nothing can be gained from another. */
const WHOLE = 0.999;

function greatestWithin(spans: readonly FittedSpan[], time: number): number {
  let greatest = 0;
  for (const { from, to, startDeviation, endDeviation } of spans) {
    const [begun, left] = [(time - from) / startDeviation, (to - time) / endDeviation];
    if (begun < -FAR || left < -FAR) continue;
    greatest = Math.max(greatest, normalDistribution(begun) * normalDistribution(left));
    if (greatest > WHOLE) break;
  }
  return greatest;
}
