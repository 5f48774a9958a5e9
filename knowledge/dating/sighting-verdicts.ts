// Which sightings look swapped or misread once all of them are known. The posterior already contains the sighting it
// judges; nothing is left out or counted twice.
import type { Circumstance } from "./change-priors.ts";
import type { ChangeoverPosterior } from "./changeover-posterior.ts";
import { type OverlapProfile, overlapProfile, profileName } from "./overlap-profile.ts";
import {
  type Replacements,
  type ReportTerms,
  type ReportVerdict,
  reportTerms,
  reportVerdict,
} from "./report-chance.ts";
import type { ReportGroup } from "./report-groups.ts";

/** The posterior without who reports what, which does not touch a verdict: fewer rows, the same sums. */
interface Rows {
  readonly circumstances: readonly Circumstance[];
  /** Whole weights, circumstances × widths × borders, and their sums over borders 0 … b within each row. */
  readonly weights: Float64Array;
  readonly running: Float64Array;
  readonly borders: number;
}

/**
 * One verdict per group, averaged over the posterior. A swap for the same variant cannot be seen: show people
 * "not as built". O(groups · circumstances · Σ(width + length of stretch)).
 */
export function sightingVerdicts(
  posterior: ChangeoverPosterior,
  groups: readonly ReportGroup[],
  replacements: Replacements,
): readonly ReportVerdict[] {
  const { widths, total } = posterior;
  const { cars } = posterior.grid;
  const rows = verdictRows(posterior);
  const profiles = new Map<string, readonly OverlapProfile[]>();
  return groups.map((group) => {
    const name = profileName(cars, group.lo, group.hi);
    const known =
      profiles.get(name) ?? widths.map((width) => overlapProfile(cars, group.lo, group.hi, width));
    profiles.set(name, known);
    const sums = groupSums(rows, group, known, replacements);
    return { notAsBuilt: sums.notAsBuilt / total, swapped: sums.swapped / total };
  });
}

function verdictRows(posterior: ChangeoverPosterior): Rows {
  const { circumstances, widths, grid } = posterior;
  const borders = grid.cells + 1;
  const size = widths.length * borders;
  const places = new Map<string, number>();
  const kept: Circumstance[] = [];
  const rowOf = circumstances.map((circumstance) => {
    const name = [circumstance.swapOdds, ...circumstance.replacementLean].join(" ");
    const place = places.get(name) ?? kept.push(circumstance) - 1;
    places.set(name, place);
    return place;
  });
  const weights = new Float64Array(kept.length * size);
  rowOf.forEach((place, c) => {
    for (let cell = 0; cell < size; cell += 1) {
      const sum = (weights[place * size + cell] as number) + (posterior.weights[c * size + cell] as number);
      weights[place * size + cell] = sum;
    }
  });
  return { circumstances: kept, weights, running: runningWeights(weights, borders), borders };
}

function runningWeights(weights: Float64Array, borders: number): Float64Array {
  const running = new Float64Array(weights.length);
  for (let row = 0; row < weights.length; row += borders) {
    let sum = 0;
    for (let border = 0; border < borders; border += 1) {
      sum += weights[row + border] as number;
      running[row + border] = sum;
    }
  }
  return running;
}

/** Sums of weight × verdict while one group is worked out. */
interface VerdictSums {
  notAsBuilt: number;
  swapped: number;
}

function add(sums: VerdictSums, weight: number, verdict: ReportVerdict): void {
  sums.notAsBuilt += weight * verdict.notAsBuilt;
  sums.swapped += weight * verdict.swapped;
}

function groupSums(
  rows: Rows,
  group: ReportGroup,
  profiles: readonly OverlapProfile[],
  replacements: Replacements,
): VerdictSums {
  const sums: VerdictSums = { notAsBuilt: 0, swapped: 0 };
  rows.circumstances.forEach((circumstance, c) => {
    const terms = reportTerms(group, circumstance, replacements);
    profiles.forEach((profile, w) => {
      const row = (c * profiles.length + w) * rows.borders;
      if (rows.running[row + rows.borders - 1] === 0) return;
      addRow(sums, rows, row, group, profile, terms);
    });
  });
  return sums;
}

/** Borders before `from` leave the stretch after the change, those beyond `to` before it, those between partly. */
function addRow(
  sums: VerdictSums,
  { weights, running, borders }: Rows,
  row: number,
  group: ReportGroup,
  profile: OverlapProfile,
  terms: ReportTerms,
): void {
  const last = borders - 1;
  const start = group.lo + profile.first;
  const from = Math.min(last, Math.max(1, start));
  const to = Math.max(from - 1, Math.min(last - 1, start + profile.parts.length - 1));
  add(sums, running[row + from - 1] as number, reportVerdict(terms, group.isNew ? 1 : 0));
  for (let border = from; border <= to; border += 1) {
    const weight = weights[row + border] as number;
    if (weight === 0) continue;
    const part = profile.parts[border - start] as number;
    const share = (group.isNew ? part : profile.whole - part) / profile.whole;
    add(sums, weight, reportVerdict(terms, share));
  }
  const beyond = (running[row + last] as number) - (running[row + to] as number);
  add(sums, beyond, reportVerdict(terms, group.isNew ? 0 : 1));
}
