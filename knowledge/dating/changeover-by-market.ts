// One change that trims or markets may have taken up at different times. Each group has its own date, most likely the
// common one, else some months away; so a group of three cars borrows from the others without being merged into them.
import type { Interval } from "../calendar/interval.ts";
import { byCodeUnit } from "../handbook/problem.ts";
import { sharesOf } from "./as-built-shares.ts";
import { borderLikelihoods } from "./border-likelihood.ts";
import { type CellGrid, cellGrid, instantOf } from "./cells.ts";
import { borderPrior, circumstances, overlapMonths, widthPrior } from "./change-priors.ts";
import type { AsBuiltShares, ChangeoverSetting } from "./changeover.ts";
import { shortestRun, spreadQuantile } from "./credible-run.ts";
import { type ChangeoverSighting, groupReports } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";
import { UNITS_PER_NAT } from "./whole-logarithm.ts";

/** A sighting and the trim or market of its car. */
export interface MarketSighting extends ChangeoverSighting {
  readonly market: string;
}

export interface MarketChangeover {
  readonly market: string;
  readonly interval: Interval;
  readonly median: number;
  /** Chance that this group changed on the common date exactly. */
  readonly onCommonDate: number;
  readonly sightings: number;
  readonly asBuilt: AsBuiltShares;
}

/** P(a group keeps the common date); else it is off by d with a chance ∝ exp(−|d|/5 months). */
const SAME_DATE = 0.5;
const MEAN_SHIFT = 5;
const LEVEL = 0.9;
const NEGLIGIBLE = -40;

/** How dates of groups scatter about the common one, on the borders of a grid. */
interface Scatter {
  readonly ratio: number;
  /** Per border: Σ ratio^|d| over the other borders. */
  readonly whole: Float64Array;
}

/**
 * One changeover per group, sorted by name; groups of `named` without sightings are included and rest on the others.
 * Exact (the common date is the centre of a star). O(circumstances · widths · groups · borders).
 */
export function changeoverByMarket(
  setting: ChangeoverSetting,
  sightings: readonly MarketSighting[],
  named: readonly string[] = [],
): Result<readonly MarketChangeover[], Refusal> {
  const grid = cellGrid(setting.window, setting.production, setting.cell);
  if (!grid) return refused("no-window", "the window of build dates is empty or longer than a century");
  const markets = [...new Set([...named, ...sightings.map(({ market }) => market)])].sort(byCodeUnit);
  const months = setting.overlaps ?? overlapMonths;
  const widths = months.map((width) => Math.round(width / grid.cell));
  const ground = { grid, widths, circumstances, replacements: setting.replacements ?? { old: 1, new: 1 } };
  const likelihoods = markets.map((market) =>
    borderLikelihoods(
      ground,
      groupReports(
        grid,
        sightings.filter((one) => one.market === market),
      ).groups,
    ),
  );
  const rowPriors = circumstances.flatMap(({ prior }) =>
    widthPrior(months, setting.stated?.overlap).map((width) => Math.log(prior * width)),
  );
  const sums = pooled(grid, likelihoods, rowPriors, borderPrior(grid, setting.stated), widths.length);
  return found(
    markets.map((market, index) => {
      const count = sightings.filter((one) => one.market === market).length;
      return described(grid, widths, market, count, sums[index] as GroupSums);
    }),
  );
}

interface GroupSums {
  /** Weights over widths × borders of the group's own date. */
  readonly joint: Float64Array;
  common: number;
}

function pooled(
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

function described(
  grid: CellGrid,
  widths: readonly number[],
  market: string,
  sightings: number,
  sums: GroupSums,
): MarketChangeover {
  const weights = new Float64Array(grid.cells + 1);
  let total = 0;
  sums.joint.forEach((weight, place) => {
    const border = place % weights.length;
    weights[border] = (weights[border] as number) + weight;
    total += weight;
  });
  const run = shortestRun(weights, LEVEL);
  const shares = sharesOf(sums.joint, widths, grid.cells).map((sum) => sum / total);
  return {
    market,
    interval: { from: instantOf(grid, run.first - 0.5), to: instantOf(grid, run.last + 0.5) },
    median: instantOf(grid, spreadQuantile(weights, 0.5)),
    onCommonDate: sums.common / total,
    sightings,
    asBuilt: { from: grid.from, cell: grid.cell, new: shares },
  };
}
