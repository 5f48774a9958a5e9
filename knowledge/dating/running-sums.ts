// Sums over groups of sightings, kept from one call to the next: what differs from the last time is added or taken away, so that one
// more sighting costs one group. Units and logarithms are whole numbers, so nothing is lost by the order while sums stay exact.
import type { ReportGroup } from "./report-groups.ts";
import { wholeCount } from "./whole-logarithm.ts";

/** The sums before they are accumulated over the borders. */
export interface RawSums {
  readonly sums: Float64Array;
  readonly after: Float64Array;
  readonly before: Float64Array;
}

interface Standing extends RawSums {
  readonly groups: Map<string, ReportGroup>;
  /** Every sum is a multiple of it. */
  readonly grain: number;
}

/** All cars, and each trim and market by itself. */
const MOST_STANDING = 24;

const standings = new WeakMap<object, Standing[]>();

/**
 * The sums of these groups, not to be written to. They start from those under `memory` that differ least, or from `empty` when no
 * more than half could be kept; `add` adds a group with so many units, which may be negative. Sums that are too large to be exact
 * are made anew in the order of the groups, so that what was asked before never changes a digit.
 */
export function runningSums(
  memory: object,
  groups: readonly ReportGroup[],
  empty: () => RawSums,
  add: (raw: RawSums, group: ReportGroup, units: number) => void,
): RawSums {
  const known = standings.get(memory) ?? [];
  standings.set(memory, known);
  const grain = groups.every(isOfOneCell) ? wholeCount(1, 1) : 1;
  const wanted = new Map(groups.map((group) => [groupName(group), group]));
  const nearest = nearestOf(known, wanted, grain);
  const standing: Standing = nearest ?? { ...empty(), groups: new Map(), grain };
  bring(standing, wanted, add);
  const others = known.filter((one) => one !== standing);
  if (isExact(standing)) {
    // The one used last stands last; the one longest unused goes.
    known.splice(0, known.length, ...others.slice(1 - MOST_STANDING), standing);
    return standing;
  }
  known.splice(0, known.length, ...others);
  const fresh = empty();
  for (const group of groups) add(fresh, group, group.units);
  return fresh;
}

/** What went first, so that no sum on the way is larger than those before and after. */
function bring(
  standing: Standing,
  wanted: ReadonlyMap<string, ReportGroup>,
  add: (raw: RawSums, group: ReportGroup, units: number) => void,
): void {
  for (const [name, group] of standing.groups) {
    if (wanted.has(name)) continue;
    add(standing, group, -group.units);
    standing.groups.delete(name);
  }
  for (const [name, group] of wanted) {
    const change = group.units - (standing.groups.get(name)?.units ?? 0);
    if (change !== 0) add(standing, group, change);
    standing.groups.set(name, group);
  }
}

/** Cars that are dated to a cell count as whole ones: all their sums are multiples of one car's units. */
function isOfOneCell({ lo, hi }: ReportGroup): boolean {
  return hi - lo === 1;
}

/** No logarithm is above zero and no step is larger than the two ends it lies between, so these bound every sum. */
function isExact({ after, before, grain }: Standing): boolean {
  return after.every((sum, at) => -sum - (before[at] as number) < 2 ** 52 * grain);
}

function nearestOf(
  known: readonly Standing[],
  wanted: ReadonlyMap<string, ReportGroup>,
  grain: number,
): Standing | undefined {
  let nearest: Standing | undefined;
  let least = wanted.size / 2;
  for (const standing of known) {
    if (standing.grain !== grain) continue;
    const difference = differenceOf(standing.groups, wanted, least);
    if (difference >= least) continue;
    nearest = standing;
    least = difference;
  }
  return nearest;
}

/** In how many groups they differ; counted no further than `most`. */
function differenceOf(
  one: ReadonlyMap<string, ReportGroup>,
  other: ReadonlyMap<string, ReportGroup>,
  most: number,
): number {
  let alike = 0;
  let different = 0;
  for (const [name, { units }] of other) {
    const there = one.get(name);
    if (there !== undefined) alike += 1;
    if (there?.units !== units) different += 1;
    if (different >= most) return different;
  }
  return different + one.size - alike;
}

function groupName({ isNew, swap, misread, isSought, lo, hi }: ReportGroup): string {
  return [isNew, swap, misread, isSought, lo, hi].join(" ");
}
