// What the works fitted in each cell: the average over all changeovers that are still possible, and not a step at the
// most likely one. This is what identification needs as its prior.
import type { PosteriorMargin } from "./changeover-posterior.ts";
import { doubledShare, doubledWhole } from "./overlap-profile.ts";

/** P(new | cell) for every cell of the window: Σ posterior · F. O(borders · Σ widths). */
export function asBuiltShares(posterior: PosteriorMargin): Float64Array {
  const { grid, widths, joint, total } = posterior;
  return sharesOf(joint, widths, grid.cells).map((sum) => sum / total);
}

/** Σ weight · F for every cell; `joint`: widths × borders. */
export function sharesOf(joint: Float64Array, widths: readonly number[], cells: number): Float64Array {
  const shares = new Float64Array(cells);
  const borders = cells + 1;
  widths.forEach((width, w) => {
    const row = w * borders;
    const whole = doubledWhole(width);
    const reach = Math.ceil(width / 2) + 1;
    // Weight of the borders so far left of the cell that it is wholly new; the first border is always that.
    let settled = joint[row] as number;
    let next = 1;
    for (let cell = 0; cell < cells; cell += 1) {
      while (next <= cell - reach) {
        settled += joint[row + next] as number;
        next += 1;
      }
      let partly = 0;
      for (let border = next; border < cells && border <= cell + reach; border += 1) {
        partly += (joint[row + border] as number) * doubledShare(cell - border, width);
      }
      shares[cell] = (shares[cell] as number) + settled + partly / whole;
    }
  });
  return shares;
}
