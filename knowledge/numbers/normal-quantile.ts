/** The inverse of the normal distribution function, for limits of the form "estimate ± z deviations". */
import { whereReached } from "./bisection.ts";
import { normalDistribution } from "./normal-distribution.ts";

/** The z that a standard normal value stays below with the given chance in (0, 1); normalQuantile(.975) = 1.959964. */
export function normalQuantile(chance: number): number {
  if (chance <= 0) return Number.NEGATIVE_INFINITY;
  if (chance >= 1) return Number.POSITIVE_INFINITY;
  if (chance > 0.5) return -whereReached(normalDistribution, 1 - chance, -38, 0);
  return whereReached(normalDistribution, chance, -38, 0);
}
