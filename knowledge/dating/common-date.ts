// Dates of several groups about a common one: a star, so messages to the middle and back are exact. The scatter falls off
// evenly on both sides, so one pass each way replaces a table of all pairs of dates.
import type { CellGrid } from "./cells.ts";
import { UNITS_PER_NAT } from "./whole-logarithm.ts";

/** P(a group keeps the common date); else it is off by d with a chance ∝ exp(−|d|/5 months). */
const SAME_DATE = 0.5;
const MEAN_SHIFT = 5;
const NEGLIGIBLE = -40;

/** How dates of groups scatter about the common one, on the borders of a grid. */
interface Scatter {
  readonly ratio: number;
  /** Per border: Σ ratio^|d| over the other borders. */
  readonly whole: Float64Array;
}

export interface GroupSums {
  /** Weights over widths × borders of the group's own date. */
  readonly joint: Float64Array;
  common: number;
}

/**
 * The weights of each group's own date. `likelihoods`: per group whole logarithms over rows × borders; `rowPriors`: the
 * logarithm of the prior of each row (circumstance × width, widths innermost); `prior`: of the common date by border.
 */
export function aroundCommonDate(
  grid: CellGrid,
  likelihoods: readonly Float64Array[],
  rowPriors: readonly number[],
  prior: Float64Array,
  widths: number,
): readonly GroupSums[] {
  const borders = grid.cells + 1;
  const scatter = scatterOf(grid, borders);
  const sums = likelihoods.map((): GroupSums => ({ joint: new Float64Array(widths * borders), common: 0 }));
  const bests = rowPriors.map((logPrior, row) =>
    likelihoods.reduce((sum, likelihood) => sum + bestOf(likelihood, row, borders), logPrior),
  );
  const greatest = bests.reduce((most, best) => Math.max(most, best), -Infinity);
  bests.forEach((best, row) => {
    if (best - greatest < NEGLIGIBLE) return;
    const own = likelihoods.map((likelihood) => scaledRow(likelihood, row, borders));
    addRow(sums, own, scatter, prior, Math.exp(best - greatest), (row % widths) * borders);
  });
  return sums;
}

function bestOf(likelihood: Float64Array, row: number, borders: number): number {
  let best = -Infinity;
  for (let place = row * borders; place < (row + 1) * borders; place += 1) {
    best = Math.max(best, likelihood[place] as number);
  }
  return best / UNITS_PER_NAT;
}

function scaledRow(likelihood: Float64Array, row: number, borders: number): Float64Array {
  const best = bestOf(likelihood, row, borders);
  return likelihood
    .subarray(row * borders, (row + 1) * borders)
    .map((whole) => Math.exp(whole / UNITS_PER_NAT - best));
}

function scatterOf(grid: CellGrid, borders: number): Scatter {
  const ratio = Math.exp(-grid.cell / MEAN_SHIFT);
  return { ratio, whole: aside(new Float64Array(borders).fill(1), ratio) };
}

/** Σ_{d ≠ 0} ratio^|d| · values[b + d] for every border b. */
function aside(values: Float64Array, ratio: number): Float64Array {
  const sums = new Float64Array(values.length);
  let running = 0;
  for (let border = 1; border < values.length; border += 1) {
    running = ratio * (running + (values[border - 1] as number));
    sums[border] = running;
  }
  running = 0;
  for (let border = values.length - 2; border >= 0; border -= 1) {
    running = ratio * (running + (values[border + 1] as number));
    sums[border] = (sums[border] as number) + running;
  }
  return sums;
}

/** One setting of circumstance and width: messages of all groups to the common date, and back to each. */
function addRow(
  sums: readonly GroupSums[],
  own: readonly Float64Array[],
  scatter: Scatter,
  prior: Float64Array,
  weight: number,
  at: number,
): void {
  const messages = own.map((likelihood) => {
    const off = aside(likelihood, scatter.ratio);
    return likelihood.map(
      (value, border) =>
        SAME_DATE * value + ((1 - SAME_DATE) * (off[border] as number)) / (scatter.whole[border] as number),
    );
  });
  sums.forEach((sum, group) => {
    const rest = prior.map((value, border) =>
      messages.reduce(
        (product, message, other) => (other === group ? product : product * (message[border] as number)),
        weight * value,
      ),
    );
    const off = aside(
      rest.map((value, border) => value / (scatter.whole[border] as number)),
      scatter.ratio,
    );
    const likelihood = own[group] as Float64Array;
    for (let border = 0; border < rest.length; border += 1) {
      const same = SAME_DATE * (rest[border] as number) * (likelihood[border] as number);
      const shifted = (1 - SAME_DATE) * (off[border] as number) * (likelihood[border] as number);
      sum.joint[at + border] = (sum.joint[at + border] as number) + same + shifted;
      sum.common += same;
    }
  });
}
