/** From what variants or hypotheses are expected to answer to the rows of a question table. */
import type { AnswerRows } from "./answer-rows.ts";
import { MIXED, NOTHING, type TableRows } from "./table-rows.ts";

/** P(answer | variant) and P(answer | kin of the variant), row-major over shared rows; P(answer | nothing). */
export interface VariantRows {
  readonly width: number;
  readonly rows: Float64Array;
  readonly kinRows: Float64Array;
  readonly rowOf: Int32Array;
  readonly flat: Float64Array;
}

/** Rows of a feature, each raised to the tempering of its group and made to sum to one again. */
export function temperedRows(expected: AnswerRows, tempering: number): VariantRows {
  const { rows, kinRows, rowOf, flat } = expected;
  const width = expected.answers.length;
  if (tempering === 1) return { width, rows, kinRows, rowOf, flat };
  return {
    width,
    rows: raised(rows, width, tempering),
    kinRows: raised(kinRows, width, tempering),
    rowOf,
    flat: raised(flat, width, tempering),
  };
}

function raised(rows: Float64Array, width: number, power: number): Float64Array {
  const tempered = rows.map((chance) => chance ** power);
  for (let start = 0; start < tempered.length; start += width) {
    let total = 0;
    for (let column = start; column < start + width; column += 1) total += tempered[column] as number;
    for (let column = start; column < start + width; column += 1) {
      tempered[column] = (tempered[column] as number) / total;
    }
  }
  return tempered;
}

/** The likelihood of a question over the rows of a table; a mixed row is the average of its kins. */
export function likelihoodOfRows(table: TableRows, source: VariantRows): Float64Array {
  const { width, rowOf, rows, kinRows, flat } = source;
  const { variants, areKin } = table;
  const likelihood = new Float64Array(variants.length * width);
  variants.forEach((variant, row) => {
    if (variant === MIXED) {
      likelihood.set(mixedRow(table, source), row * width);
      return;
    }
    const isKin = areKin[row] === 1;
    const from = variant === NOTHING ? flat : isKin ? kinRows : rows;
    const offset = variant === NOTHING ? 0 : (rowOf[variant] as number) * width;
    const start = row * width;
    for (let column = 0; column < width; column += 1) {
      likelihood[start + column] = from[offset + column] as number;
    }
  });
  return likelihood;
}

/** P(answer | not in the handbook). Shares are gathered by shared row first: one addition for each of many kins. */
export function mixedRow(
  table: Pick<TableRows, "kinShares" | "nothingShare">,
  source: VariantRows,
): Float64Array {
  const { width, rowOf, kinRows, flat } = source;
  const { kinShares, nothingShare } = table;
  const weights = new Float64Array(kinRows.length / width);
  for (let variant = 0; variant < kinShares.length; variant += 1) {
    const row = rowOf[variant] as number;
    weights[row] = (weights[row] as number) + (kinShares[variant] as number);
  }
  return flat.map((chance, column) => {
    let sum = nothingShare * chance;
    for (let row = 0; row < weights.length; row += 1) {
      sum += (weights[row] as number) * (kinRows[row * width + column] as number);
    }
    return sum;
  });
}

/** The same from rows by hypothesis (row-major, hypotheses × answers), for questions that depend on the way. */
export function likelihoodOfHypotheses(
  table: TableRows,
  byHypothesis: Float64Array,
  width: number,
): Float64Array {
  const likelihood = new Float64Array(table.variants.length * width);
  table.variants.forEach((_, row) => {
    for (let at = table.starts[row] as number; at < (table.starts[row + 1] as number); at += 1) {
      const offset = (table.members[at] as number) * width;
      const share = table.shares[at] as number;
      for (let column = 0; column < width; column += 1) {
        const place = row * width + column;
        likelihood[place] = (likelihood[place] as number) + share * (byHypothesis[offset + column] as number);
      }
    }
  });
  return likelihood;
}
