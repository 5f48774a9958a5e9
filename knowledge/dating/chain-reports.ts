// Sightings of several successive variants as counts, and what each says of a variant's share at the works.
import type { Interval } from "../calendar/interval.ts";
import { type CellGrid, type CellRange, cellsOf } from "./cells.ts";
import { swapChance } from "./report-chance.ts";
import { wholeCount } from "./whole-logarithm.ts";

/** One sighting of one of the variants. */
export interface ChainSighting {
  readonly id: string;
  /** Index of the reported variant in the order in which they followed each other. */
  readonly variant: number;
  readonly built: Interval;
  readonly swap: number;
  readonly misread: number;
  /** How many cars alike it stands for; one when left out. */
  readonly count?: number;
}

/** Sightings that cannot be told apart. */
export interface ChainGroup extends CellRange {
  readonly variant: number;
  readonly swap: number;
  readonly misread: number;
  /** How many; imprecise dates that share an interval count a little less. */
  readonly count: number;
}

const SHARED_DATE_ERROR = 0.01;
/** No reading is so sure that a single one may rule a history out. */
const LEAST_MISREAD = 0.005;
const ONE = wholeCount(1, 1);

/** The counts, sorted by what they say; sightings outside the window or of no known variant are left out. */
export function groupChain(
  grid: CellGrid,
  sightings: readonly ChainSighting[],
  variants: number,
): readonly ChainGroup[] {
  const alike = new Map<string, ChainGroup & { count: number }>();
  const ofInterval = new Map<string, number>();
  for (const sighting of sightings) {
    const group = groupOfSighting(grid, sighting, variants);
    if (!group) continue;
    const { variant, lo, hi, swap, misread } = group;
    const key = [variant, lo, hi, swap, misread].join(" ");
    const entry = alike.get(key) ?? { ...group, count: 0 };
    const cars = sighting.count ?? 1;
    entry.count += cars;
    alike.set(key, entry);
    const interval = `${lo}-${hi}`;
    ofInterval.set(interval, (ofInterval.get(interval) ?? 0) + cars);
  }
  const counted = [...alike.values()].map((group): ChainGroup => {
    if (group.hi - group.lo === 1) return group;
    const sharing = ofInterval.get(`${group.lo}-${group.hi}`) as number;
    return { ...group, count: wholeCount(group.count, 1 / (1 + (sharing - 1) * SHARED_DATE_ERROR)) / ONE };
  });
  return counted.sort(
    (one, other) =>
      one.variant - other.variant ||
      one.lo - other.lo ||
      one.hi - other.hi ||
      one.swap - other.swap ||
      one.misread - other.misread,
  );
}

/** What tells one sighting from another; undefined for one outside the window or of no known variant. */
export function groupOfSighting(
  grid: CellGrid,
  { variant, built, swap, misread }: ChainSighting,
  variants: number,
): Omit<ChainGroup, "count"> | undefined {
  const range = cellsOf(grid, built);
  if (!range || !(variant >= 0 && variant < variants)) return undefined;
  return { variant, ...range, swap, misread: Math.max(LEAST_MISREAD, misread) };
}

/** P(report of a variant) = floor + slope · its share at the works. */
export interface ReportLine {
  readonly floor: number;
  readonly slope: number;
}

/**
 * floor = e + (1 − m − e)σq, slope = (1 − m − e)(1 − σ), e = m ÷ (K − 1): only the reported variant's own share enters.
 * `replacement`: the variant's share among the replacements.
 */
export function reportLine(
  group: Pick<ChainGroup, "swap" | "misread">,
  swapOdds: number,
  replacement: number,
  variants: number,
): ReportLine {
  const error = group.misread / Math.max(1, variants - 1);
  const right = 1 - group.misread - error;
  const swapped = swapChance(group.swap, swapOdds);
  return { floor: error + right * swapped * replacement, slope: right * (1 - swapped) };
}
