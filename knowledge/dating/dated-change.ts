// The posterior of one changeover under a setting, and the date it gives: the part of the answer that is worked out anew
// with every sighting.
import type { Interval } from "../calendar/interval.ts";
import { borderLikelihoods, type LikelihoodGround, type LikelihoodMemory } from "./border-likelihood.ts";
import { type CellGrid, instantWithin, stretchAround } from "./cells.ts";
import { borderPrior, circumstances, overlapMonths, type StatedChange, widthPrior } from "./change-priors.ts";
import {
  borderWeights,
  type ChangeoverPosterior,
  changeoverPosterior,
  type PosteriorGround,
  type PosteriorMargin,
  posteriorMargin,
} from "./changeover-posterior.ts";
import { shortestRun, spreadQuantile } from "./credible-run.ts";
import type { Replacements } from "./report-chance.ts";
import type { GroupedReports } from "./report-groups.ts";

export interface ChangeoverSetting {
  /** First to last possible build date: the whole production, not the span of the data. */
  readonly window: Interval;
  /** Cars by calendar year. */
  readonly production?: ReadonlyMap<number, number>;
  /** What is on sale as a replacement, old against new type; equal when nothing is known. */
  readonly replacements?: Replacements;
  readonly stated?: StatedChange;
  /** Length of a cell in months, when the usual one will not do. */
  readonly cell?: number;
  /** Overlaps looked at, in months, rising; those beyond the usual grid are for other shapes of change. */
  readonly overlaps?: readonly number[];
}

/** When the half-way point of the change came. */
export interface DatedChange {
  /** 90 % interval and middle, in months. Both ends of the window are possible. */
  readonly interval: Interval;
  readonly intervalChance: number;
  readonly median: number;
  /** Chance that the window saw no change at all: new throughout, old throughout. */
  readonly newThroughout: number;
  readonly oldThroughout: number;
}

const LEVEL = 0.9;

/** What is taken for granted of the replacements when nothing is known. */
export const EVEN_REPLACEMENTS: Replacements = { old: 1, new: 1 };

/** What the likelihood of sightings goes by under a setting. */
export function groundOf(grid: CellGrid, setting: ChangeoverSetting): LikelihoodGround {
  const widths = (setting.overlaps ?? overlapMonths).map((width) => Math.round(width / grid.cell));
  return { grid, widths, circumstances, replacements: setting.replacements ?? EVEN_REPLACEMENTS };
}

/** The posterior of grouped sightings, for other questions of the same history. */
export function posteriorOf(
  grid: CellGrid,
  setting: ChangeoverSetting,
  grouped: GroupedReports,
  given: { readonly stated?: StatedChange | undefined; readonly memory?: LikelihoodMemory | undefined } = {},
): ChangeoverPosterior {
  const { stated, memory } = given;
  const ground = { ...groundOf(grid, setting), ...(memory ? { memory } : {}) };
  return posteriorFrom(setting, stated, ground, borderLikelihoods(ground, grouped.groups));
}

/** The same from the likelihoods of the borders. */
export function posteriorFrom(
  setting: ChangeoverSetting,
  stated: StatedChange | undefined,
  ground: LikelihoodGround,
  likelihoods: Float64Array,
): ChangeoverPosterior {
  return changeoverPosterior(priorsOf(setting, stated, ground), likelihoods);
}

/** What date and shares need of it. */
export function marginFrom(
  setting: ChangeoverSetting,
  stated: StatedChange | undefined,
  ground: LikelihoodGround,
  likelihoods: Float64Array,
): PosteriorMargin {
  return posteriorMargin(priorsOf(setting, stated, ground), likelihoods);
}

function priorsOf(
  setting: ChangeoverSetting,
  stated: StatedChange | undefined,
  { grid, widths }: LikelihoodGround,
): PosteriorGround {
  const months = setting.overlaps ?? overlapMonths;
  return {
    grid,
    widths,
    circumstances,
    widthPrior: widthPrior(months, stated?.overlap),
    borderPrior: borderPrior(grid, stated),
  };
}

/** Interval, median and the two ends of the window. */
export function whenChanged(posterior: PosteriorMargin): DatedChange {
  const { grid, total } = posterior;
  const weights = borderWeights(posterior);
  const run = shortestRun(weights, LEVEL);
  return {
    interval: stretchAround(grid, run.first, run.last),
    intervalChance: run.chance,
    median: instantWithin(grid, spreadQuantile(weights, 0.5)),
    newThroughout: (weights[0] as number) / total,
    oldThroughout: (weights[grid.cells] as number) / total,
  };
}
