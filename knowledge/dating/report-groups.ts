// Sightings as counts: how many say the same thing of the same dates. Counts are whole numbers in a fixed order, so
// that additions, corrections and withdrawals leave exactly what a fresh start would give.
import type { Interval } from "../calendar/interval.ts";
import { byCodeUnit } from "../handbook/problem.ts";
import { type CellGrid, type CellRange, cellsOf } from "./cells.ts";
import type { ReportGround } from "./report-chance.ts";
import { wholeCount } from "./whole-logarithm.ts";

/** One sighting of either variant of a changeover. */
export interface ChangeoverSighting extends ReportGround {
  readonly id: string;
  /** When the car was built. */
  readonly built: Interval;
  /** How many cars alike it stands for; one when left out. */
  readonly count?: number;
}

/** What a sighting says, and of which cells. */
export interface GroundInCells extends ReportGround, CellRange {}

/** Sightings that cannot be told apart. */
export interface ReportGroup extends GroundInCells {
  readonly count: number;
  /** The count in whole units; less than full when many share one imprecise interval and so its unknown true spread. */
  readonly units: number;
}

export interface GroupedReports {
  readonly groups: readonly ReportGroup[];
  /** The group of each sighting, by id; sightings outside the window are not in it. */
  readonly groupOf: ReadonlyMap<string, number>;
  /** Ids of sightings whose build date lies outside the window, sorted. */
  readonly outside: readonly string[];
}

/** How much n cars of one imprecise interval share their error: 1/(1 + (n − 1)ρ), the design effect of a cluster. */
const SHARED_DATE_ERROR = 0.01;

/** The counts of the sightings, sorted by what they say. */
export function groupReports(grid: CellGrid, sightings: readonly ChangeoverSighting[]): GroupedReports {
  const outside: string[] = [];
  const alike = new Map<string, { ground: GroundInCells; ids: string[]; count: number }>();
  const ofInterval = new Map<string, number>();
  for (const sighting of sightings) {
    const range = cellsOf(grid, sighting.built);
    if (!range) {
      outside.push(sighting.id);
      continue;
    }
    const { isNew, swap, misread, isSought, count = 1 } = sighting;
    const ground = { isNew, swap, misread, isSought, ...range };
    const name = groundName(ground);
    const entry = alike.get(name) ?? { ground, ids: [], count: 0 };
    entry.ids.push(sighting.id);
    entry.count += count;
    alike.set(name, entry);
    const interval = intervalName(range);
    ofInterval.set(interval, (ofInterval.get(interval) ?? 0) + count);
  }
  const sorted = [...alike.values()].sort((one, other) => byGround(one.ground, other.ground));
  const groupOf = new Map<string, number>();
  const groups = sorted.map(({ ground, ids, count }, index): ReportGroup => {
    for (const id of ids) groupOf.set(id, index);
    return {
      ...ground,
      count,
      units: unitsOf(ground, count, ofInterval.get(intervalName(ground)) as number),
    };
  });
  return { groups, groupOf, outside: outside.sort(byCodeUnit) };
}

/** The same of sightings that cannot be told apart, and of no others. */
export function groundName({ isNew, lo, hi, swap, misread, isSought }: GroundInCells): string {
  return `${isNew} ${lo} ${hi} ${swap} ${misread} ${isSought}`;
}

export function intervalName({ lo, hi }: CellRange): string {
  return `${lo}-${hi}`;
}

/** The units of `count` cars alike, of `sharing` cars that are dated to the same cells. */
export function unitsOf({ lo, hi }: CellRange, count: number, sharing: number): number {
  const weight = hi - lo === 1 ? 1 : 1 / (1 + (sharing - 1) * SHARED_DATE_ERROR);
  return wholeCount(count, weight);
}

/** The order of groups. */
export function byGround(one: GroundInCells, other: GroundInCells): number {
  return (
    Number(one.isNew) - Number(other.isNew) ||
    one.lo - other.lo ||
    one.hi - other.hi ||
    one.swap - other.swap ||
    one.misread - other.misread ||
    Number(one.isSought) - Number(other.isSought)
  );
}
