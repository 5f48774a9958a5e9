/**
 * Wilson's score interval for a share. It stays inside [0, 1] and holds up at 0 of n and n of n, where "p ± 1.96
 * standard errors" collapses to a point.
 */
import { normalQuantile } from "./normal-quantile.ts";

/** Both limits of a share, 0 ≤ low ≤ high ≤ 1. */
export interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

/**
 * The two-sided interval of `seen` among `looked` at the given level; 0 of 0 gives the whole of [0, 1]. Without
 * continuity correction: R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in
 * Medicine 17, 1998, method 3. wilsonInterval(81, 263, 0.95) = .2553 to .3662.
 */
export function wilsonInterval(seen: number, looked: number, level: number): ShareInterval {
  if (looked <= 0) return { low: 0, high: 1 };
  const z = normalQuantile((1 + level) / 2);
  const share = seen / looked;
  const widened = 1 + (z * z) / looked;
  const centre = (share + (z * z) / (2 * looked)) / widened;
  const half = (z / widened) * Math.sqrt((share * (1 - share)) / looked + (z * z) / (4 * looked * looked));
  return {
    low: seen <= 0 ? 0 : Math.max(0, centre - half),
    high: seen >= looked ? 1 : Math.min(1, centre + half),
  };
}
