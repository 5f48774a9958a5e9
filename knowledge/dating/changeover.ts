// One changeover, old variant to new: when it came, how sharp it was, and which sightings do not fit. Exact sums over
// a grid; no sampling, so the same sightings give the same answer to the last digit.
import { asBuiltShares } from "./as-built-shares.ts";
import type { LikelihoodMemory } from "./border-likelihood.ts";
import { type CellGrid, cellGrid } from "./cells.ts";
import { overlapMonths } from "./change-priors.ts";
import { type ChangeoverPosterior, circumstanceChances, widthChances } from "./changeover-posterior.ts";
import {
  type ChangeoverSetting,
  type DatedChange,
  EVEN_REPLACEMENTS,
  posteriorOf,
  whenChanged,
} from "./dated-change.ts";
import { type EndsOfUse, endsOfUse } from "./ends-of-use.ts";
import type { JudgedSighting } from "./judged-sighting.ts";
import type { ReportVerdict } from "./report-chance.ts";
import { type ChangeoverSighting, type GroupedReports, groupReports } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";
import { sightingVerdicts } from "./sighting-verdicts.ts";

export interface Changeover extends DatedChange {
  /** Chance of each overlap in months. Hardly known below 60 sightings: say only the two sums below. */
  readonly overlaps: readonly { readonly months: number; readonly chance: number }[];
  /** P(overlap ≤ 2 months) and P(overlap ≥ 4 months). */
  readonly withinWeeks: number;
  readonly overMonths: number;
  /** P(new) cell by cell. */
  readonly asBuilt: AsBuiltShares;
  readonly sightings: readonly JudgedSighting[];
  readonly ends: EndsOfUse;
  /** P(the odds of a swap are at least double what the grades promise). */
  readonly moreSwapsThanGraded: number;
  readonly statedOutside: boolean;
  /** Ids of sightings outside the window; they were not used. */
  readonly outside: readonly string[];
  /** Which variants were reported at all; with one only, the interval is no more than the prior. */
  readonly reported: "both" | "old-only" | "new-only" | "none";
  readonly posterior: ChangeoverPosterior;
}

export interface AsBuiltShares {
  readonly from: number;
  readonly cell: number;
  readonly new: Float64Array;
}

/** Swap odds from which the grades are called too hopeful. */
const DOUBLED = 2;

/**
 * The changeover the sightings show; refused for a window that is none. No sightings are needed: the answer is then
 * the prior, and says so in `reported`. With a `memory` kept beside the setting one more sighting costs less. Cost: see
 * borderLikelihoods; 10 to 20 ms for 200 sightings over 60 months.
 */
export function changeover(
  setting: ChangeoverSetting,
  sightings: readonly ChangeoverSighting[],
  memory?: LikelihoodMemory,
): Result<Changeover, Refusal> {
  const grid = cellGrid(setting.window, setting.production, setting.cell);
  if (!grid) return refused("no-window", "the window of build dates is empty or longer than a century");
  const grouped = groupReports(grid, sightings);
  const posterior = posteriorOf(grid, setting, grouped, { stated: setting.stated, memory });
  const replacements = setting.replacements ?? EVEN_REPLACEMENTS;
  const verdicts = sightingVerdicts(posterior, grouped.groups, replacements);
  const judged = judgedSightings(grouped, verdicts);
  const doubts = new Map(judged.map(({ id, notAsBuilt }) => [id, notAsBuilt]));
  const when = whenChanged(posterior);
  return found({
    ...when,
    ...overlapOf(posterior, setting.overlaps ?? overlapMonths),
    asBuilt: { from: grid.from, cell: grid.cell, new: asBuiltShares(posterior) },
    sightings: judged,
    ends: endsOfUse(sightings, doubts),
    moreSwapsThanGraded: doubledSwaps(posterior),
    statedOutside: isStatedOutside(grid, setting, grouped, memory),
    outside: grouped.outside,
    reported: reportedOf(grouped),
    posterior,
  });
}

function overlapOf(
  posterior: ChangeoverPosterior,
  months: readonly number[],
): Pick<Changeover, "overlaps" | "withinWeeks" | "overMonths"> {
  const chances = widthChances(posterior);
  const sumOf = (holds: (width: number) => boolean): number =>
    months.reduce((sum, width, index) => (holds(width) ? sum + (chances[index] as number) : sum), 0);
  return {
    overlaps: months.map((width, index) => ({ months: width, chance: chances[index] as number })),
    withinWeeks: sumOf((width) => width <= 2),
    overMonths: sumOf((width) => width >= 4),
  };
}

function doubledSwaps(posterior: ChangeoverPosterior): number {
  const chances = circumstanceChances(posterior);
  return posterior.circumstances.reduce(
    (sum, { swapOdds }, c) => (swapOdds >= DOUBLED ? sum + (chances[c] as number) : sum),
    0,
  );
}

function judgedSightings(
  grouped: GroupedReports,
  verdicts: readonly ReportVerdict[],
): readonly JudgedSighting[] {
  return [...grouped.groupOf]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([id, group]) => ({ id, ...(verdicts[group] as ReportVerdict) }));
}

/** Whether the middle of what the handbook states lies outside the interval that the sightings give by themselves. */
function isStatedOutside(
  grid: CellGrid,
  setting: ChangeoverSetting,
  grouped: GroupedReports,
  memory: LikelihoodMemory | undefined,
): boolean {
  const ends = setting.stated?.ends ?? [];
  if (ends.length === 0) return false;
  const centre = ends.reduce((sum, { at }) => sum + at, 0) / ends.length;
  const { interval } = whenChanged(posteriorOf(grid, setting, grouped, { memory }));
  return centre < interval.from || centre > interval.to;
}

function reportedOf({ groups }: GroupedReports): Changeover["reported"] {
  const hasNew = groups.some(({ isNew }) => isNew);
  const hasOld = groups.some(({ isNew }) => !isNew);
  if (hasNew && hasOld) return "both";
  if (hasNew) return "new-only";
  return hasOld ? "old-only" : "none";
}
