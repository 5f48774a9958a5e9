// Sightings of one change, counted by what they say, with the sums over them: kept from one acceptance to the next, so that one more
// sighting costs one kind of it and not all. What was counted before changes no digit of what is counted now.
import {
  borderLikelihoods,
  type LikelihoodGround,
  type LikelihoodMemory,
  tableOf,
} from "./border-likelihood.ts";
import { cellsOf } from "./cells.ts";
import {
  byGround,
  type ChangeoverSighting,
  type GroundInCells,
  groundName,
  intervalName,
  type ReportGroup,
  unitsOf,
} from "./report-groups.ts";
import { accumulated, addReports, emptySums, isExact, type ReportSums } from "./report-sums.ts";

interface KeptGroup {
  readonly ground: GroundInCells;
  readonly interval: KeptInterval;
  count: number;
  /** As they stand in the sums. */
  units: number;
}

/** Cars dated to the same cells share their error when these are several. */
interface KeptInterval {
  readonly groups: Set<KeptGroup>;
  count: number;
}

export interface KeptReports {
  /** How many cars were counted, those outside the window too. */
  seen: number;
  /** Advances with every count. */
  revision: number;
  readonly groups: Map<string, KeptGroup>;
  readonly intervals: Map<string, KeptInterval>;
  /** What is not in the sums as it is counted now. */
  readonly behind: Set<KeptGroup>;
  /** None before they are first asked for, and while they would be too large to be exact. */
  sums: ReportSums | undefined;
}

/** With the step tables beside the setting: several kept reports of one setting may share them. */
export type KeptGround = LikelihoodGround & { readonly memory: LikelihoodMemory };

export function noReports(): KeptReports {
  return {
    seen: 0,
    revision: 0,
    groups: new Map(),
    intervals: new Map(),
    behind: new Set(),
    sums: undefined,
  };
}

/** Counts `times` cars more of which this was said; fewer when it is negative. */
export function countReport(
  kept: KeptReports,
  { grid }: Pick<LikelihoodGround, "grid">,
  sighting: Omit<ChangeoverSighting, "id" | "count">,
  times: number,
): void {
  kept.seen += times;
  kept.revision += 1;
  const range = cellsOf(grid, sighting.built);
  if (range === undefined) return;
  const { isNew, swap, misread, isSought } = sighting;
  const group = groupOf(kept, { isNew, swap, misread, isSought, ...range });
  group.count += times;
  group.interval.count += times;
  for (const other of range.hi - range.lo === 1 ? [group] : group.interval.groups) kept.behind.add(other);
}

function groupOf({ groups, intervals }: KeptReports, ground: GroundInCells): KeptGroup {
  const name = groundName(ground);
  const known = groups.get(name);
  if (known !== undefined) return known;
  const interval = intervals.get(intervalName(ground)) ?? { groups: new Set(), count: 0 };
  intervals.set(intervalName(ground), interval);
  const group: KeptGroup = { ground, interval, count: 0, units: 0 };
  groups.set(name, group);
  interval.groups.add(group);
  return group;
}

/** As borderLikelihoods gives them of the same sightings, to the last digit; not to be written to, and until the next are counted. O(borders · widths · circumstances + groups that changed). */
export function keptLikelihoods(kept: KeptReports, ground: KeptGround): Float64Array {
  kept.sums ??= startedAnew(kept, ground);
  for (const group of kept.behind) bring(kept.sums, group, ground);
  for (const group of kept.behind) if (group.count === 0) drop(kept, group);
  kept.behind.clear();
  if (isExact(kept.sums)) return accumulated(kept.sums);
  kept.sums = undefined;
  return borderLikelihoods(ground, groupsOf(kept));
}

function startedAnew(kept: KeptReports, ground: KeptGround): ReportSums {
  for (const group of kept.groups.values()) {
    group.units = 0;
    kept.behind.add(group);
  }
  return emptySums(ground);
}

function bring(sums: ReportSums, group: KeptGroup, ground: KeptGround): void {
  const units = unitsOf(group.ground, group.count, group.interval.count);
  if (units !== group.units)
    addReports(sums, tableOf(ground, ground.memory, group.ground), group.ground.lo, units - group.units);
  group.units = units;
}

function drop({ groups, intervals }: KeptReports, group: KeptGroup): void {
  groups.delete(groundName(group.ground));
  group.interval.groups.delete(group);
  if (group.interval.groups.size === 0) intervals.delete(intervalName(group.ground));
}

function groupsOf({ groups }: KeptReports): readonly ReportGroup[] {
  return [...groups.values()].map(({ ground, count, units }) => ({ ...ground, count, units })).sort(byGround);
}
