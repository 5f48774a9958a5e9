// The likelihood of all sightings for every border, overlap and circumstance at once. A sighting says the same of all
// borders left of it and of all right of it; only within its overlap does it change, by differences that depend on
// the distance alone. So it costs a few additions per overlap instead of a logarithm per border.
import type { CellGrid } from "./cells.ts";
import type { Circumstance } from "./change-priors.ts";
import { type OverlapProfile, overlapProfile, profileName } from "./overlap-profile.ts";
import { type Replacements, reportChance, reportTerms } from "./report-chance.ts";
import type { ReportGroup } from "./report-groups.ts";
import { type RawSums, runningSums } from "./running-sums.ts";
import { wholeLogarithm } from "./whole-logarithm.ts";

export interface LikelihoodGround {
  readonly grid: CellGrid;
  /** Overlaps in cells. */
  readonly widths: readonly number[];
  readonly circumstances: readonly Circumstance[];
  readonly replacements: Replacements;
  /** The "new" variant is the one that goes and the "old" one the one that comes. */
  readonly isReversed?: boolean;
  /** Remembers kinds of sightings from one call to the next; of use for one ground only. Answers do not change. */
  readonly memory?: LikelihoodMemory;
}

/** What was worked out for kinds of sightings; start with an empty one for each setting. */
export type LikelihoodMemory = Map<string, StepTable>;

/** The steps a kind of sighting adds, one row per circumstance. */
export interface StepTable {
  readonly profiles: readonly OverlapProfile[];
  /** Per circumstance: whole logarithm when all of the stretch is after the change, and when none is. */
  readonly after: Float64Array;
  readonly before: Float64Array;
  /** Circumstance-major; the differences along the offsets of each width in turn. */
  readonly steps: Float64Array;
  readonly stepsPerCircumstance: number;
}

/**
 * Whole logarithms, circumstances × widths × (cells + 1) borders. Border 0 means "after the change all through the
 * window", the last border "before it all through". O(circumstances · groups · Σ(width + length of stretch)); with a
 * memory only of the groups that differ from the last time.
 */
export function borderLikelihoods(ground: LikelihoodGround, groups: readonly ReportGroup[]): Float64Array {
  const { grid, widths, circumstances, memory } = ground;
  const borders = grid.cells + 1;
  const tables = memory ?? new Map<string, StepTable>();
  const empty = (): RawSums => ({
    sums: new Float64Array(circumstances.length * widths.length * borders),
    after: new Float64Array(circumstances.length),
    before: new Float64Array(circumstances.length),
  });
  const add = (raw: RawSums, group: ReportGroup, units: number): void =>
    addGroup(raw, tableOf(ground, tables, group), { ...group, units }, borders);
  const { sums, after, before } = runningSums(tables, groups, empty, add);
  const accumulated = sums.slice();
  accumulate(accumulated, after, before, widths.length, borders);
  return accumulated;
}

function tableOf(ground: LikelihoodGround, tables: LikelihoodMemory, group: ReportGroup): StepTable {
  const { isNew, swap, misread, isSought, lo, hi } = group;
  const name = [isNew, swap, misread, isSought, profileName(ground.grid.cars, lo, hi)].join(" ");
  const table = tables.get(name) ?? stepTable(ground, group);
  tables.set(name, table);
  return table;
}

function addGroup(
  { sums, after, before }: RawSums,
  table: StepTable,
  group: ReportGroup,
  borders: number,
): void {
  for (let c = 0; c < after.length; c += 1) {
    after[c] = (after[c] as number) + group.units * (table.after[c] as number);
    before[c] = (before[c] as number) + group.units * (table.before[c] as number);
    addSteps(sums, table, group, c, borders);
  }
}

function addSteps(
  sums: Float64Array,
  table: StepTable,
  group: ReportGroup,
  circumstance: number,
  borders: number,
): void {
  const { lo, units } = group;
  const last = borders - 1;
  let step = circumstance * table.stepsPerCircumstance;
  for (let w = 0; w < table.profiles.length; w += 1) {
    const profile = table.profiles[w] as OverlapProfile;
    const row = (circumstance * table.profiles.length + w) * borders;
    const start = lo + profile.first;
    const size = profile.parts.length + 1;
    // What happens at or left of border 0 has happened by border 1; what happens at the last border is overwritten.
    const within = Math.min(size, last - start);
    for (let index = 0; index < within; index += 1) {
      const place = row + Math.max(1, start + index);
      sums[place] = (sums[place] as number) + units * (table.steps[step + index] as number);
    }
    step += size;
  }
}

function accumulate(
  sums: Float64Array,
  after: Float64Array,
  before: Float64Array,
  widths: number,
  borders: number,
): void {
  for (let c = 0; c < after.length; c += 1) {
    for (let w = 0; w < widths; w += 1) {
      const row = (c * widths + w) * borders;
      let running = after[c] as number;
      sums[row] = running;
      for (let border = 1; border < borders - 1; border += 1) {
        running += sums[row + border] as number;
        sums[row + border] = running;
      }
      sums[row + borders - 1] = before[c] as number;
    }
  }
}

function stepTable(ground: LikelihoodGround, group: ReportGroup): StepTable {
  const { grid, widths, circumstances, replacements } = ground;
  const profiles = widths.map((width) => overlapProfile(grid.cars, group.lo, group.hi, width));
  const stepsPerCircumstance = profiles.reduce((sum, profile) => sum + profile.parts.length + 1, 0);
  const after = new Float64Array(circumstances.length);
  const before = new Float64Array(circumstances.length);
  const steps = new Float64Array(circumstances.length * stepsPerCircumstance);
  const risesAfter = group.isNew !== (ground.isReversed ?? false);
  circumstances.forEach((circumstance, c) => {
    const terms = reportTerms(group, circumstance, replacements);
    const chanceAt = (share: number, rest: number): number =>
      risesAfter ? reportChance(terms, share, rest) : reportChance(terms, rest, share);
    const start = wholeLogarithm(chanceAt(1, 0));
    const end = wholeLogarithm(chanceAt(0, 1));
    after[c] = start;
    before[c] = end;
    let step = c * stepsPerCircumstance;
    for (const { parts, whole } of profiles) {
      let former = start;
      for (let index = 0; index < parts.length; index += 1) {
        const part = parts[index] as number;
        const next = wholeLogarithm(chanceAt(part / whole, (whole - part) / whole));
        steps[step] = next - former;
        former = next;
        step += 1;
      }
      steps[step] = end - former;
      step += 1;
    }
  });
  return { profiles, after, before, steps, stepsPerCircumstance };
}
