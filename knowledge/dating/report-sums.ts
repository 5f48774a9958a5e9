// The sums of all sightings' logarithms, at first as steps from border to border and then accumulated, in place: a table has a hundred
// thousand places and is kept for each trim of each change. They are whole numbers, so that sightings may come, change and go in any
// order and leave the digits that a fresh start would give.
import type { CellGrid } from "./cells.ts";
import type { OverlapProfile } from "./overlap-profile.ts";

/** The steps that a sighting of one kind adds, one row per circumstance. */
export interface StepTable {
  readonly profiles: readonly OverlapProfile[];
  /** Per circumstance: whole logarithm when all of the stretch is after the change, and when none is. */
  readonly after: Float64Array;
  readonly before: Float64Array;
  /** Circumstance-major; the differences along the offsets of each width in turn. */
  readonly steps: Float64Array;
  readonly stepsPerCircumstance: number;
}

export interface ReportSums {
  readonly borders: number;
  /** Circumstances × widths × borders. */
  readonly table: Float64Array;
  /** Per circumstance: all after the change, and all before it. */
  readonly after: Float64Array;
  readonly before: Float64Array;
  isAccumulated: boolean;
}

export function emptySums(sizes: {
  readonly grid: CellGrid;
  readonly widths: readonly number[];
  readonly circumstances: readonly unknown[];
}): ReportSums {
  const borders = sizes.grid.cells + 1;
  const settings = sizes.circumstances.length;
  return {
    borders,
    table: new Float64Array(settings * sizes.widths.length * borders),
    after: new Float64Array(settings),
    before: new Float64Array(settings),
    isAccumulated: false,
  };
}

/**
 * Adds so many units of sightings of one kind whose stretch begins in the cell `lo`, or takes them away when they are negative.
 * O(circumstances · Σ(width + length of stretch)); the first after `accumulated` costs a pass over the table.
 */
export function addReports(sums: ReportSums, table: StepTable, lo: number, units: number): void {
  takeApart(sums);
  const { after, before } = sums;
  for (let c = 0; c < after.length; c += 1) {
    after[c] = (after[c] as number) + units * (table.after[c] as number);
    before[c] = (before[c] as number) + units * (table.before[c] as number);
    addSteps(sums, table, { lo, units, circumstance: c });
  }
}

function addSteps(
  { table: sums, borders }: ReportSums,
  table: StepTable,
  { lo, units, circumstance }: { readonly lo: number; readonly units: number; readonly circumstance: number },
): void {
  const last = borders - 1;
  let step = circumstance * table.stepsPerCircumstance;
  for (let w = 0; w < table.profiles.length; w += 1) {
    const { first, parts } = table.profiles[w] as OverlapProfile;
    const row = (circumstance * table.profiles.length + w) * borders;
    const start = lo + first;
    const size = parts.length + 1;
    // What happens at or left of border 0 has happened by border 1; what happens at the last border is overwritten.
    const within = Math.min(size, last - start);
    for (let index = 0; index < within; index += 1) {
      const place = row + Math.max(1, start + index);
      sums[place] = (sums[place] as number) + units * (table.steps[step + index] as number);
    }
    step += size;
  }
}

/** Half of what a sum of whole numbers may come to and stay exact, so that none on the way from one to another exceeds it. */
const EXACT = 2 ** 52;

/** No logarithm is above zero and no step is larger than the two ends it lies between, so these bound every sum. */
export function isExact({ after, before }: ReportSums): boolean {
  return after.every((sum, c) => Math.abs(sum) + Math.abs(before[c] as number) < EXACT);
}

/** The sums at every border, not to be written to; they stand until the next are added. */
export function accumulated(sums: ReportSums): Float64Array {
  const { table, borders, after, before } = sums;
  if (sums.isAccumulated) return table;
  const rows = table.length / borders;
  for (let row = 0; row < rows; row += 1) {
    const c = Math.floor((row * after.length) / rows);
    const [start, last] = [row * borders, (row + 1) * borders - 1];
    let running = after[c] as number;
    table[start] = running;
    for (let place = start + 1; place < last; place += 1) {
      running += table[place] as number;
      table[place] = running;
    }
    table[last] = before[c] as number;
  }
  sums.isAccumulated = true;
  return table;
}

/** Steps again: what is exact comes back as it was. */
function takeApart(sums: ReportSums): void {
  const { table, borders } = sums;
  if (!sums.isAccumulated) return;
  for (let start = 0; start < table.length; start += borders) {
    for (let place = start + borders - 2; place > start; place -= 1)
      table[place] = (table[place] as number) - (table[place - 1] as number);
  }
  sums.isAccumulated = false;
}
