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
 * The calendar month with the greatest chance, ties to the earlier one; undefined when all of the weight says that the window
 * saw no change. A border's weight is spread half a cell to either side, as for the interval. O(borders).
 */
export function likelyMonth(posterior: ChangeoverPosterior): LikelyMonth | undefined {
  const { grid, total } = posterior;
  const months = new Map<number, number>();
  borderWeights(posterior).forEach((weight, border) => {
    if (border === 0 || border === grid.cells || weight === 0) return;
    for (const side of [-0.25, 0.25]) {
      const month = Math.floor(instantOf(grid, border + side));
      months.set(month, (months.get(month) ?? 0) + weight / 2);
    }
  });
  const [best] = [...months].sort(([one, first], [other, second]) => second - first || one - other);
  return best && { month: { from: best[0], to: best[0] + 1 }, chance: best[1] / total };
}
