// The likelihood of all sightings for every border, overlap and circumstance at once. A sighting says the same of all
// borders left of it and of all right of it; only within its overlap does it change, by differences that depend on
// the distance alone. So it costs a few additions per overlap instead of a logarithm per border.
import type { CellGrid } from "./cells.ts";
import type { Circumstance } from "./change-priors.ts";
import { overlapProfile, profileName } from "./overlap-profile.ts";
import { type Replacements, reportChance, reportTerms } from "./report-chance.ts";
import type { GroundInCells, ReportGroup } from "./report-groups.ts";
import { accumulated, addReports, emptySums, type StepTable } from "./report-sums.ts";
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

/**
 * Whole logarithms, circumstances × widths × (cells + 1) borders. Border 0 means "after the change all through the
 * window", the last border "before it all through". O(circumstances · groups · Σ(width + length of stretch)).
 */
export function borderLikelihoods(ground: LikelihoodGround, groups: readonly ReportGroup[]): Float64Array {
  const tables = ground.memory ?? new Map<string, StepTable>();
  const sums = emptySums(ground);
  for (const group of groups) addReports(sums, tableOf(ground, tables, group), group.lo, group.units);
  return accumulated(sums);
}

/** What sightings of one kind in the cells lo … hi − 1 add. */
export function tableOf(ground: LikelihoodGround, tables: LikelihoodMemory, group: GroundInCells): StepTable {
  const { isNew, swap, misread, isSought, lo, hi } = group;
  const name = [isNew, swap, misread, isSought, profileName(ground.grid.cars, lo, hi)].join(" ");
  const table = tables.get(name) ?? stepTable(ground, group);
  tables.set(name, table);
  return table;
}

function stepTable(ground: LikelihoodGround, group: GroundInCells): StepTable {
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
