// One change that trims or markets may have taken up at different times. Each group has its own date, most likely the
// common one, else some months away; so a group of three cars borrows from the others without being merged into them.
import type { Interval } from "../calendar/interval.ts";
import { byCodeUnit } from "../handbook/problem.ts";
import { sharesOf } from "./as-built-shares.ts";
import { borderLikelihoods, type LikelihoodGround } from "./border-likelihood.ts";
import { type CellGrid, cellGrid, instantWithin, stretchAround } from "./cells.ts";
import { borderPrior, circumstances, overlapMonths, widthPrior } from "./change-priors.ts";
import type { AsBuiltShares } from "./changeover.ts";
import { aroundCommonDate, type GroupSums } from "./common-date.ts";
import { shortestRun, spreadQuantile } from "./credible-run.ts";
import { type ChangeoverSetting, groundOf } from "./dated-change.ts";
import { type ChangeoverSighting, groupReports } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

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

const LEVEL = 0.9;

/** One group and what its sightings say of every border. */
export interface GroupLikelihoods {
  readonly market: string;
  readonly sightings: number;
  readonly likelihoods: Float64Array;
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
  const ground = { ...groundOf(grid, setting), memory: new Map() };
  const groups = markets.map((market): GroupLikelihoods => {
    const own = sightings.filter((one) => one.market === market);
    return {
      market,
      sightings: own.reduce((sum, { count = 1 }) => sum + count, 0),
      likelihoods: borderLikelihoods(ground, groupReports(grid, own).groups),
    };
  });
  return found(changeoverOfGroups(setting, ground, groups));
}

/** The same from the likelihoods of each group. */
export function changeoverOfGroups(
  setting: ChangeoverSetting,
  { grid, widths }: LikelihoodGround,
  groups: readonly GroupLikelihoods[],
): readonly MarketChangeover[] {
  const widthChances = widthPrior(setting.overlaps ?? overlapMonths, setting.stated?.overlap);
  const rowPriors = circumstances.flatMap(({ prior }) =>
    widthChances.map((width) => Math.log(prior * width)),
  );
  const sums = aroundCommonDate(
    grid,
    groups.map(({ likelihoods }) => likelihoods),
    rowPriors,
    borderPrior(grid, setting.stated),
    widths.length,
  );
  return groups.map(({ market, sightings }, index) =>
    described(grid, widths, market, sightings, sums[index] as GroupSums),
  );
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
    interval: stretchAround(grid, run.first, run.last),
    median: instantWithin(grid, spreadQuantile(weights, 0.5)),
    onCommonDate: sums.common / total,
    sightings,
    asBuilt: { from: grid.from, cell: grid.cell, new: shares },
  };
}
