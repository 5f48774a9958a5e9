/** A few hundred rows that stand for thousands, to tell promising questions from the rest. */
import type { TableRows } from "./table-rows.ts";

/** So many rows are enough to tell promising questions from the rest. */
const SAMPLE = 500;

/** What of a table its questions are measured on. */
export type WorthTable = Pick<
  TableRows,
  "classes" | "variants" | "probabilities" | "areKin" | "kinShares" | "nothingShare"
>;

/**
 * A systematic sample of a table's rows, each as often as its belief says, by equal steps along the summed belief
 * (W. G. Cochran, Sampling Techniques, 1977, chapter 8): no chance in it, and a row of weight is never missed. A
 * table of fewer rows is its own sample.
 */
export function sampleOfRows(table: TableRows): WorthTable {
  if (table.variants.length <= SAMPLE) return table;
  const total = table.probabilities.reduce((sum, belief) => sum + belief, 0);
  const step = total / SAMPLE;
  const rows: number[] = [];
  const beliefs: number[] = [];
  let summed = 0;
  let passed = 0;
  table.probabilities.forEach((belief, row) => {
    summed += belief;
    const steps = Math.floor(summed / step + 0.5) - passed;
    if (steps <= 0) return;
    passed += steps;
    rows.push(row);
    beliefs.push(steps * step);
  });
  return {
    classes: rows.map((row) => table.classes[row] as string),
    variants: Int32Array.from(rows, (row) => table.variants[row] as number),
    probabilities: Float64Array.from(beliefs),
    areKin: Uint8Array.from(rows, (row) => table.areKin[row] as number),
    kinShares: table.kinShares,
    nothingShare: table.nothingShare,
  };
}
