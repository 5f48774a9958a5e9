// Which sightings look swapped or misread once all of them are known. The posterior already contains the sighting it
// judges; nothing is left out or counted twice.
import type { Circumstance } from "./change-priors.ts";
import type { ChangeoverPosterior } from "./changeover-posterior.ts";
import { type OverlapProfile, overlapProfile, profileName } from "./overlap-profile.ts";
import { type Replacements, type ReportVerdict, reportTerms, reportVerdict } from "./report-chance.ts";
import type { ReportGroup } from "./report-groups.ts";

/** The posterior without who reports what, which does not touch a verdict: fewer rows, the same sums. */
interface Rows {
  readonly circumstances: readonly Circumstance[];
  /** Whole weights, circumstances × widths × borders, and their sums over borders 0 … b within each row. */
  readonly weights: Float64Array;
  readonly running: Float64Array;
  readonly borders: number;
}

/** Verdicts of one kind of sighting, worked out once: circumstance-major, along the offsets of each width in turn. */
interface VerdictTable {
  readonly profiles: readonly OverlapProfile[];
  /** Per row of a width: all of the stretch after the change, then the part shares, then all of it before. */
  readonly notAsBuilt: Float64Array;
  readonly swapped: Float64Array;
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
  const { cars } = posterior.grid;
  const rows = verdictRows(posterior);
  const tables = new Map<string, VerdictTable>();
  return groups.map((group) => {
    const { isNew, swap, misread, lo, hi } = group;
    const name = [isNew, swap, misread, profileName(cars, lo, hi)].join(" ");
    const table = tables.get(name) ?? verdictTable(rows, posterior, group, replacements);
    tables.set(name, table);
    return averageVerdict(rows, table, lo, posterior.total);
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

/** Rows with less of the posterior than this are passed over: 150 of them cannot show in a verdict. */
const NEGLIGIBLE = 1e-10;

function verdictTable(
  rows: Rows,
  posterior: ChangeoverPosterior,
  group: ReportGroup,
  replacements: Replacements,
): VerdictTable {
  const profiles = posterior.widths.map((width) =>
    overlapProfile(posterior.grid.cars, group.lo, group.hi, width),
  );
  const size = profiles.reduce((sum, { parts }) => sum + parts.length + 2, 0);
  const notAsBuilt = new Float64Array(size * rows.circumstances.length);
  const swapped = new Float64Array(notAsBuilt.length);
  let at = 0;
  for (const circumstance of rows.circumstances) {
    const terms = reportTerms(group, circumstance, replacements);
    for (const { parts, whole } of profiles) {
      for (let index = -1; index <= parts.length; index += 1) {
        const part = index < 0 ? whole : (parts[index] ?? 0);
        const verdict = reportVerdict(terms, (group.isNew ? part : whole - part) / whole);
        notAsBuilt[at] = verdict.notAsBuilt;
        swapped[at] = verdict.swapped;
        at += 1;
      }
    }
  }
  return { profiles, notAsBuilt, swapped };
}

/** Borders before `from` leave the stretch after the change, those beyond `to` before it, those between partly. */
function averageVerdict(rows: Rows, table: VerdictTable, lo: number, total: number): ReportVerdict {
  const { weights, running, borders } = rows;
  const last = borders - 1;
  let notAsBuilt = 0;
  let swapped = 0;
  let at = 0;
  let row = 0;
  const add = (weight: number, place: number): void => {
    notAsBuilt += weight * (table.notAsBuilt[place] as number);
    swapped += weight * (table.swapped[place] as number);
  };
  for (let c = 0; c < rows.circumstances.length; c += 1) {
    for (const { first, parts } of table.profiles) {
      const size = parts.length + 2;
      if ((running[row + last] as number) < total * NEGLIGIBLE) {
        at += size;
        row += borders;
        continue;
      }
      const start = lo + first;
      const from = Math.min(last, Math.max(1, start));
      const to = Math.max(from - 1, Math.min(last - 1, start + parts.length - 1));
      add(running[row + from - 1] as number, at);
      for (let border = from; border <= to; border += 1) {
        add(weights[row + border] as number, at + 1 + border - start);
      }
      add((running[row + last] as number) - (running[row + to] as number), at + 1 + parts.length);
      at += size;
      row += borders;
    }
  }
  return { notAsBuilt: notAsBuilt / total, swapped: swapped / total };
}
