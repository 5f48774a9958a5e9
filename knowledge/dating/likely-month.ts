// The month in which a change most likely came: what people ask for first, though the interval is the answer.
import type { Interval } from "../calendar/interval.ts";
import { instantOf } from "./cells.ts";
import { borderWeights, type ChangeoverPosterior } from "./changeover-posterior.ts";

export interface LikelyMonth {
  readonly month: Interval;
  /** Chance that the half-way point of the change lies in it. */
  readonly chance: number;
}

/**
 * The calendar month with the greatest chance, ties to the earlier one; undefined when none holds one chance in twenty, or
 * all of the weight says that the window saw no change. A border's weight is spread half a cell to either side, as for the interval. O(borders).
 */
export function likelyMonth(posterior: ChangeoverPosterior): LikelyMonth | undefined {
  const { grid, total } = posterior;
  return likeliestMonth(borderWeights(posterior), (border) => instantOf(grid, border), total);
}

/** A month less likely than this does not stand out. Ours, no source. */
const STANDS_OUT = 0.05;

/** The same from weights on places at even distances, of which the first and the last say that nothing changed. */
export function likeliestMonth(
  weights: Float64Array,
  instantAt: (place: number) => number,
  total: number,
): LikelyMonth | undefined {
  const months = new Map<number, number>();
  weights.forEach((weight, place) => {
    if (place === 0 || place === weights.length - 1) return;
    for (const side of [-0.25, 0.25]) {
      const month = Math.floor(instantAt(place + side));
      months.set(month, (months.get(month) ?? 0) + weight / 2);
    }
  });
  const [best] = [...months].sort(([one, first], [other, second]) => second - first || one - other);
  const chance = best === undefined ? 0 : best[1] / total;
  return best && chance >= STANDS_OUT ? { month: { from: best[0], to: best[0] + 1 }, chance } : undefined;
}
