// What the sightings leave of every (circumstance, overlap, border): weights as whole numbers, so that every margin
// is an exact sum.
import type { CellGrid } from "./cells.ts";
import type { Circumstance } from "./change-priors.ts";
import { UNITS_PER_NAT } from "./whole-logarithm.ts";

export interface ChangeoverPosterior {
  readonly grid: CellGrid;
  /** Overlaps in cells. */
  readonly widths: readonly number[];
  readonly circumstances: readonly Circumstance[];
  /** Whole weights, circumstances × widths × borders. */
  readonly weights: Float64Array;
  /** Whole weights over widths × borders, all circumstances together. */
  readonly joint: Float64Array;
  /** Sum of the weights. */
  readonly total: number;
}

export interface PosteriorGround {
  readonly grid: CellGrid;
  readonly widths: readonly number[];
  readonly circumstances: readonly Circumstance[];
  /** Priors over widths and borders. */
  readonly widthPrior: readonly number[];
  readonly borderPrior: Float64Array;
}

/** The best setting weighs 2³⁹; what weighs less than half a unit counts as 0. The sum of all stays below 2⁵³. */
const BEST = 2 ** 39;
const NEGLIGIBLE = -28;

/** Posterior ∝ prior · likelihood; `likelihoods` as borderLikelihoods gives them. */
export function changeoverPosterior(ground: PosteriorGround, likelihoods: Float64Array): ChangeoverPosterior {
  const { grid, widths, circumstances } = ground;
  const size = widths.length * (grid.cells + 1);
  const logarithms = logPosterior(ground, likelihoods);
  let greatest = -Infinity;
  for (const logarithm of logarithms) if (logarithm > greatest) greatest = logarithm;
  const weights = logarithms;
  const joint = new Float64Array(size);
  let total = 0;
  for (let start = 0; start < weights.length; start += size) {
    for (let cell = 0; cell < size; cell += 1) {
      const below = (logarithms[start + cell] as number) - greatest;
      const weight = below < NEGLIGIBLE ? 0 : Math.round(BEST * Math.exp(below));
      weights[start + cell] = weight;
      joint[cell] = (joint[cell] as number) + weight;
      total += weight;
    }
  }
  return { grid, widths, circumstances, weights, joint, total };
}

/** What date and shares need of a posterior: its margin over widths and borders. */
export type PosteriorMargin = Pick<ChangeoverPosterior, "grid" | "widths" | "joint" | "total">;

/** The margin of changeoverPosterior, to the last digit, without a second table of all weights. `likelihoods` stay as they are. */
export function posteriorMargin(ground: PosteriorGround, likelihoods: Float64Array): PosteriorMargin {
  const { grid, widths } = ground;
  const borders = grid.cells + 1;
  const joint = new Float64Array(widths.length * borders);
  const rows = rowsOf(ground);
  const logBorder = ground.borderPrior.map(Math.log);
  const bests = rows.map((logPrior, row) => bestOfRow(likelihoods, row * borders, logPrior, logBorder));
  const greatest = bests.reduce((most, best) => Math.max(most, best), -Infinity);
  let total = 0;
  rows.forEach((logPrior, row) => {
    if ((bests[row] as number) - greatest < NEGLIGIBLE) return;
    const into = (row % widths.length) * borders;
    for (let border = 0; border < borders; border += 1) {
      const nats = (likelihoods[row * borders + border] as number) / UNITS_PER_NAT;
      const below = nats + (logPrior + (logBorder[border] as number)) - greatest;
      const weight = below < NEGLIGIBLE ? 0 : Math.round(BEST * Math.exp(below));
      joint[into + border] = (joint[into + border] as number) + weight;
      total += weight;
    }
  });
  return { grid, widths, joint, total };
}

/** The logarithm of the prior of each circumstance × width. */
function rowsOf({ circumstances, widthPrior }: PosteriorGround): readonly number[] {
  const logWidth = widthPrior.map(Math.log);
  return circumstances.flatMap(({ prior }) => logWidth.map((width) => Math.log(prior) + width));
}

function bestOfRow(
  likelihoods: Float64Array,
  start: number,
  logPrior: number,
  logBorder: Float64Array,
): number {
  let best = -Infinity;
  for (let border = 0; border < logBorder.length; border += 1) {
    const nats = (likelihoods[start + border] as number) / UNITS_PER_NAT;
    best = Math.max(best, nats + (logPrior + (logBorder[border] as number)));
  }
  return best;
}

function logPosterior(ground: PosteriorGround, likelihoods: Float64Array): Float64Array {
  const borders = ground.grid.cells + 1;
  const logBorder = ground.borderPrior.map(Math.log);
  const logarithms = new Float64Array(likelihoods.length);
  rowsOf(ground).forEach((logPrior, index) => {
    const row = index * borders;
    for (let border = 0; border < borders; border += 1) {
      const nats = (likelihoods[row + border] as number) / UNITS_PER_NAT;
      logarithms[row + border] = nats + (logPrior + (logBorder[border] as number));
    }
  });
  return logarithms;
}

/** Whole weights of the borders. */
export function borderWeights(posterior: PosteriorMargin): Float64Array {
  const borders = posterior.grid.cells + 1;
  const sums = new Float64Array(borders);
  posterior.joint.forEach((weight, place) => {
    const border = place % borders;
    sums[border] = (sums[border] as number) + weight;
  });
  return sums;
}

/** Probabilities of the widths. */
export function widthChances(posterior: ChangeoverPosterior): Float64Array {
  const borders = posterior.grid.cells + 1;
  const sums = new Float64Array(posterior.widths.length);
  posterior.joint.forEach((weight, place) => {
    const width = Math.floor(place / borders);
    sums[width] = (sums[width] as number) + weight;
  });
  return sums.map((sum) => sum / posterior.total);
}

/** Probabilities of the circumstances, in their order. */
export function circumstanceChances(posterior: ChangeoverPosterior): Float64Array {
  const { weights, circumstances, total } = posterior;
  const size = weights.length / circumstances.length;
  return Float64Array.from(circumstances, (_, c) => {
    let sum = 0;
    for (let place = c * size; place < (c + 1) * size; place += 1) sum += weights[place] as number;
    return sum / total;
  });
}
