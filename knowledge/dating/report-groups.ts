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

/** Sightings that cannot be told apart. */
export interface ReportGroup extends ReportGround, CellRange {
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
  const alike = new Map<string, { ground: ReportGround & CellRange; ids: string[]; count: number }>();
  const ofInterval = new Map<string, number>();
  for (const sighting of sightings) {
    const range = cellsOf(grid, sighting.built);
    if (!range) {
      outside.push(sighting.id);
      continue;
    }
    const { isNew, swap, misread, isSought, count = 1 } = sighting;
    const key = [isNew, range.lo, range.hi, swap, misread, isSought].join(" ");
    const entry = alike.get(key) ?? {
      ground: { isNew, swap, misread, isSought, ...range },
      ids: [],
      count: 0,
    };
    entry.ids.push(sighting.id);
    entry.count += count;
    alike.set(key, entry);
    const interval = `${range.lo}-${range.hi}`;
    ofInterval.set(interval, (ofInterval.get(interval) ?? 0) + count);
  }
  const sorted = [...alike.values()].sort((one, other) => byGround(one.ground, other.ground));
  const groupOf = new Map<string, number>();
  const groups = sorted.map(({ ground, ids, count }, index): ReportGroup => {
    for (const id of ids) groupOf.set(id, index);
    const sharing = ofInterval.get(`${ground.lo}-${ground.hi}`) ?? 1;
    const weight = ground.hi - ground.lo === 1 ? 1 : 1 / (1 + (sharing - 1) * SHARED_DATE_ERROR);
    return { ...ground, count, units: wholeCount(count, weight) };
  });
  return { groups, groupOf, outside: outside.sort(byCodeUnit) };
}

function byGround(one: ReportGround & CellRange, other: ReportGround & CellRange): number {
  return (
    Number(one.isNew) - Number(other.isNew) ||
    one.lo - other.lo ||
    one.hi - other.hi ||
    one.swap - other.swap ||
    one.misread - other.misread ||
    Number(one.isSought) - Number(other.isSought)
  );
}
