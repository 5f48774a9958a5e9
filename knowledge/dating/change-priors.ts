// What is thought of a changeover before the first sighting: its date, the width of its overlap, and three unknowns
// that every sighting shares (how honest the grades are, what the replacements look like, who reports).
// Grids and priors were chosen by how often the intervals hold the truth in simulated works.
import type { CellGrid } from "./cells.ts";

/** Months from the first new car to the last old one. */
export const overlapMonths = [0, 1, 2, 3, 4, 6, 9, 12, 18, 24] as const;

/** One setting of the three unknowns. Pairs are weights of (new, old), so that swapping the variants is exact. */
export interface Circumstance {
  readonly prior: number;
  /** Multiplies the odds of a swap that the provenance grade promises. */
  readonly swapOdds: number;
  /** How much the replacements lean to the new and the old type, against what the handbook says. */
  readonly replacementLean: readonly [number, number];
  /** How readily the new and the old variant are reported. */
  readonly reporting: readonly [number, number];
}

const swapOddsGrid = [0.25, 0.5, 1, 2, 4] as const;
const leanGrid = [
  { weights: [1, 4], prior: 0.25 },
  { weights: [1, 1], prior: 0.5 },
  { weights: [4, 1], prior: 0.25 },
] as const;
const reportingGrid = [
  { weights: [1, 3], prior: 0.15 },
  { weights: [1, 1], prior: 0.7 },
  { weights: [3, 1], prior: 0.15 },
] as const;

/** How often the odds of a swap are off by a factor: the prior is even in the logarithm, one deviation a doubling. */
export const swapOddsPrior: readonly { readonly swapOdds: number; readonly prior: number }[] = (() => {
  const raw = swapOddsGrid.map((odds) => Math.exp(-0.5 * Math.log2(odds) ** 2));
  const total = raw.reduce((sum, value) => sum + value, 0);
  return swapOddsGrid.map((swapOdds, index) => ({ swapOdds, prior: (raw[index] as number) / total }));
})();

/** Five swap odds × three leanings × three ways of reporting. */
export const circumstances: readonly Circumstance[] = swapOddsPrior.flatMap(({ swapOdds, prior }) =>
  leanGrid.flatMap((lean) =>
    reportingGrid.map((reporting) => ({
      prior: prior * lean.prior * reporting.prior,
      swapOdds,
      replacementLean: lean.weights,
      reporting: reporting.weights,
    })),
  ),
);

/** The same with both variants reported as readily: for sightings that were sought, and for the shape of a change. */
export const evenlyReported: readonly Circumstance[] = swapOddsPrior.flatMap(({ swapOdds, prior }) =>
  leanGrid.map((lean) => ({
    prior: prior * lean.prior,
    swapOdds,
    replacementLean: lean.weights,
    reporting: [1, 1] as const,
  })),
);

/** What the handbook says of the changeover. */
export interface StatedChange {
  /** Stated ends, in months, each with its standard deviation in months. */
  readonly ends: readonly { readonly at: number; readonly deviation: number }[];
  /** Stated overlap in months, when the new variant began before the old one ended. */
  readonly overlap?: number;
}

const SHARP = 0.25;
const MEAN_OVERLAP = 8;
const STATED_OVERLAP = 3;

/**
 * One prior per width, summing to one: P(0) = .25, the rest exponential with mean 8 months, integrated from half-way
 * point to half-way point (the last one as far beyond as before). A stated overlap triples the nearest width.
 */
export function widthPrior(widths: readonly number[], statedOverlap?: number): readonly number[] {
  const upTo = (months: number): number => 1 - Math.exp(-months / MEAN_OVERLAP);
  const positive = widths.filter((width) => width > 0);
  const bins = positive.map((width, index) => {
    const below = index === 0 ? width / 2 : (width + (positive[index - 1] as number)) / 2;
    const next = positive[index + 1];
    return upTo(next === undefined ? width + (width - below) : (width + next) / 2) - upTo(below);
  });
  const total = bins.reduce((sum, bin) => sum + bin, 0);
  const hasSharp = positive.length < widths.length;
  const shared = hasSharp ? 1 - SHARP : 1;
  const prior = [...(hasSharp ? [SHARP] : []), ...bins.map((bin) => (shared * bin) / total)];
  return statedOverlap === undefined ? prior : leanedTo(prior, nearest(widths, statedOverlap));
}

function leanedTo(prior: readonly number[], chosen: number): readonly number[] {
  const leaned = prior.map((value, index) => (index === chosen ? STATED_OVERLAP * value : value));
  const total = leaned.reduce((sum, value) => sum + value, 0);
  return leaned.map((value) => value / total);
}

function nearest(widths: readonly number[], months: number): number {
  let best = 0;
  widths.forEach((width, index) => {
    if (Math.abs(width - months) < Math.abs((widths[best] as number) - months)) best = index;
  });
  return best;
}

/** Chance that the change lies at or before the beginning of the window, and at or after its end. */
const AT_AN_END = 0.02;
/** Weight of the handbook against the even share. Never 1: the even share is what lets evidence beat a wrong book. */
const TRUST = 0.8;

/** One prior per border, 0 … cells, summing to one: .02 at each end, the rest even, leaned to the stated ends. */
export function borderPrior(grid: CellGrid, stated?: StatedChange): Float64Array {
  const borders = grid.cells + 1;
  const inside = grid.cells - 1;
  const even = new Float64Array(borders).fill(inside > 0 ? (1 - 2 * AT_AN_END) / inside : 0);
  even[0] = inside > 0 ? AT_AN_END : 0.5;
  even[borders - 1] = inside > 0 ? AT_AN_END : 0.5;
  if (!stated || stated.ends.length === 0) return even;
  const leaned = new Float64Array(borders);
  for (const end of stated.ends) {
    for (let border = 0; border < borders; border += 1) {
      const away = (grid.from + border * grid.cell - end.at) / end.deviation;
      leaned[border] = (leaned[border] as number) + Math.exp((-away * away) / 2) / end.deviation;
    }
  }
  const total = leaned.reduce((sum, value) => sum + value, 0);
  if (!(total > 0)) return even;
  return even.map((value, border) => (TRUST * (leaned[border] as number)) / total + (1 - TRUST) * value);
}
