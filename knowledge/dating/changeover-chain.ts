// Several variants that followed each other, all changeovers at once. Taken pair by pair, every pair would throw away
// what the sightings of the others say of it, and the intervals would be up to twice as wide.
import type { Interval } from "../calendar/interval.ts";
import { betaAtMost } from "../numbers/beta-distribution.ts";
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { type CellGrid, cellGrid, instantWithin, stretchAround } from "./cells.ts";
import { type MeanShares, meanShares, withImprecise } from "./chain-imprecise.ts";
import { type ChainPass, type ChainPriors, chainPass } from "./chain-passes.ts";
import { type ChainGroup, type ChainSighting, groupChain } from "./chain-reports.ts";
import { type ChainGround, chainTerms } from "./chain-terms.ts";
import { borderPrior, overlapMonths, type StatedChange, swapOddsPrior, widthPrior } from "./change-priors.ts";
import { shortestRun, spreadQuantile } from "./credible-run.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface ChainSetting {
  readonly window: Interval;
  readonly production?: ReadonlyMap<number, number>;
  /** Weight of each variant among the replacements on sale, in the order of the variants; any scale, not all 0. */
  readonly replacements: readonly number[];
  /** What the handbook says of each changeover, in order; undefined for nothing. */
  readonly stated?: readonly (StatedChange | undefined)[];
  readonly cell?: number;
}

/** The changeover from variant k to variant k + 1. */
export interface ChainChangeover {
  readonly interval: Interval;
  readonly intervalChance: number;
  readonly median: number;
  readonly overlaps: readonly { readonly months: number; readonly chance: number }[];
  /** Chances of the half-way point over half cells: 2 · cells + 1 values from the beginning of the window. */
  readonly middles: Float64Array;
}

export interface ChangeoverChain {
  readonly changeovers: readonly ChainChangeover[];
  readonly from: number;
  readonly cell: number;
  /** Per variant: share of the works' output, cell by cell. */
  readonly asBuilt: readonly Float64Array[];
  readonly posterior: ChainPosterior;
}

/** What the sightings leave of every ramp, by the factor on the odds of a swap. */
export interface ChainPosterior {
  readonly ground: ChainGround;
  readonly byOdds: readonly {
    readonly swapOdds: number;
    readonly chance: number;
    /** Per changeover: chances of width × first border of the ramp; each sums to one. */
    readonly ramps: readonly Float64Array[];
  }[];
  /** The same with all factors together, and from it the mean share of what came after each changeover, cell by cell. */
  readonly ramps: readonly Float64Array[];
  readonly means: MeanShares;
}

const LEVEL = 0.9;
/** Passes in which imprecise dates and the means of their neighbours settle: one from an even spread, two sweeps. */
const SWEEPS = 3;

/**
 * All changeovers of two or more variants in the given order. Assumes that both variants of a pair are reported as
 * readily: beside it show `pairInChain`'s interval if that is wider. Refused for fewer than two variants or no window.
 * O(sightings · Σ widths + variants · borders · widths), five times.
 */
export function changeoverChain(
  setting: ChainSetting,
  sightings: readonly ChainSighting[],
): Result<ChangeoverChain, Refusal> {
  const grid = cellGrid(setting.window, setting.production, setting.cell);
  if (!grid) return refused("no-window", "the window of build dates is empty or longer than a century");
  if (setting.replacements.length < 2)
    return refused("out-of-range", "a changeover needs at least two variants");
  const ground = chainGround(grid, setting);
  const priors = chainPriors(grid, setting);
  const groups = groupChain(grid, sightings, setting.replacements.length);
  const passes = swapOddsPrior.map(({ swapOdds, prior }) => {
    const { logEvidence, chances: ramps } = settledPass(ground, priors, groups, swapOdds);
    return { swapOdds, logarithm: logEvidence + Math.log(prior), ramps };
  });
  const odds = normaliseLogarithms(passes.map(({ logarithm }) => logarithm));
  const byOdds = passes.map(({ swapOdds, ramps }, index) => ({
    swapOdds,
    chance: odds[index] as number,
    ramps,
  }));
  const chances = setting.replacements.slice(1).map((_, change) => mixed(byOdds, change));
  const means = meanShares(ground, chances);
  return found({
    changeovers: chances.map((ramp) => described(ground, ramp)),
    from: grid.from,
    cell: grid.cell,
    asBuilt: setting.replacements.map((_, variant) => variantShares(means, variant, grid.cells)),
    posterior: { ground, byOdds, ramps: chances, means },
  });
}

function chainGround(grid: CellGrid, setting: ChainSetting): ChainGround {
  const total = setting.replacements.reduce((sum, weight) => sum + weight, 0);
  return {
    grid,
    widths: overlapMonths.map((months) => Math.round(months / grid.cell)),
    replacements: setting.replacements.map((weight) => weight / total),
  };
}

function chainPriors(grid: CellGrid, setting: ChainSetting): ChainPriors {
  const halves = { ...grid, cell: grid.cell / 2, cells: 2 * grid.cells };
  return {
    logWidth: widthPrior(overlapMonths).map(Math.log),
    logMiddle: setting.replacements.slice(1).map((_, change) => {
      const stated = setting.stated?.[change];
      return stated ? borderPrior(halves, stated).map(Math.log) : undefined;
    }),
  };
}

function settledPass(
  ground: ChainGround,
  priors: ChainPriors,
  groups: readonly ChainGroup[],
  swapOdds: number,
): ChainPass {
  const exact = chainTerms(ground, groups, swapOdds);
  if (groups.every(({ lo, hi }) => hi - lo === 1)) return chainPass(ground, exact, priors);
  let pass = chainPass(ground, withImprecise(ground, exact, groups, swapOdds, evenSpread(ground)), priors);
  for (let sweep = 1; sweep < SWEEPS; sweep += 1) {
    const means = meanShares(ground, pass.chances);
    pass = chainPass(ground, withImprecise(ground, exact, groups, swapOdds, means), priors);
  }
  return pass;
}

/** Mean shares before any sighting: changeovers thrown evenly over the window and put in order. */
function evenSpread(ground: ChainGround): MeanShares {
  const { cells } = ground.grid;
  const changes = ground.replacements.length - 1;
  return Array.from({ length: changes }, (_, change) =>
    Float64Array.from({ length: cells }, (_value, cell) =>
      betaAtMost((cell + 0.5) / cells, change + 1, changes - change),
    ),
  );
}

/** The ramps of a changeover with all factors on the odds of a swap together. */
function mixed(byOdds: ChainPosterior["byOdds"], change: number): Float64Array {
  const sums = new Float64Array(byOdds[0]?.ramps[change]?.length ?? 0);
  for (const { chance, ramps } of byOdds) {
    ramps[change]?.forEach((value, place) => {
      sums[place] = (sums[place] as number) + chance * value;
    });
  }
  return sums;
}

function variantShares(means: MeanShares, variant: number, cells: number): Float64Array {
  return Float64Array.from({ length: cells }, (_, cell) => {
    const come = variant === 0 ? 1 : ((means[variant - 1] as Float64Array)[cell] as number);
    return Math.max(0, come - (means[variant]?.[cell] ?? 0));
  });
}

function described(ground: ChainGround, ramp: Float64Array): ChainChangeover {
  const { grid, widths } = ground;
  const borders = grid.cells + 1;
  const middles = new Float64Array(2 * grid.cells + 1);
  const overlaps = overlapMonths.map((months) => ({ months, chance: 0 }));
  ramp.forEach((chance, place) => {
    const w = Math.floor(place / borders);
    const middle = 2 * (place % borders) + (widths[w] as number);
    const overlap = overlaps[w] as (typeof overlaps)[number];
    overlap.chance += chance;
    // Beyond the window there is no middle, and no chance of a ramp.
    middles[middle] = (middles[middle] as number) + chance;
  });
  const run = shortestRun(middles, LEVEL);
  return {
    interval: stretchAround(grid, run.first / 2, run.last / 2),
    intervalChance: run.chance,
    median: instantWithin(grid, spreadQuantile(middles, 0.5) / 2),
    overlaps,
    middles,
  };
}
