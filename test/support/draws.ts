// Draws from the few distributions that invented owners and invented parts need.

import type { Chance } from "./random-tables.ts";

export function pick<T>(chance: Chance, from: readonly T[]): T {
  return from[Math.min(from.length - 1, Math.floor(chance() * from.length))] as T;
}

/** Even over [from, to). */
export function even(chance: Chance, from: number, to: number): number {
  return from + (to - from) * chance();
}

/** Even in the logarithm over [from, to), both above 0. */
export function logEven(chance: Chance, from: number, to: number): number {
  return from * (to / from) ** chance();
}

/** Normal with mean 0 and deviation 1 (G. E. P. Box & M. E. Muller 1958, Annals of Mathematical Statistics 29:610). */
export function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}

/** The index on whose share of the weights `luck`, in [0, 1), falls; weights ≥ 0 with a sum above 0. */
export function indexAt(weights: ArrayLike<number>, luck: number): number {
  const all = Array.from(weights);
  let left = luck * all.reduce((sum, weight) => sum + weight, 0);
  let last = 0;
  for (const [index, weight] of all.entries()) {
    if (weight <= 0) continue;
    last = index;
    left -= weight;
    if (left < 0) return index;
  }
  return last;
}

/** `count` different ones in a random order; all of them when there are fewer. */
export function some<T>(chance: Chance, from: readonly T[], count: number): readonly T[] {
  const left = [...from];
  const taken: T[] = [];
  while (taken.length < count && left.length > 0) {
    taken.push(...left.splice(Math.floor(chance() * left.length), 1));
  }
  return taken;
}
