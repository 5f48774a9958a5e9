/** From what variants or hypotheses are expected to answer to the rows of a question table. */
import type { AnswerRows } from "./answer-rows.ts";
import { KIN_LIKENESS } from "./evidence.ts";
import type { HypothesisSpace } from "./hypothesis-space.ts";
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
export function temperedRows(answers: AnswerRows, tempering: number): VariantRows {
  const width = answers.answers.length;
  const kinRows = answers.rows.map(
    (chance, index) => KIN_LIKENESS * chance + (1 - KIN_LIKENESS) * (answers.flat[index % width] as number),
  );
  const flat = raised(answers.flat, width, tempering);
  const { rowOf } = answers;
  return {
    width,
    rows: raised(answers.rows, width, tempering),
    kinRows: raised(kinRows, width, tempering),
    rowOf,
    flat,
  };
}

function raised(rows: Float64Array, width: number, power: number): Float64Array {
  if (power === 1) return rows;
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
export function likelihoodOfRows(
  table: TableRows,
  space: HypothesisSpace,
  source: VariantRows,
): Float64Array {
  const { width, rowOf, flat } = source;
  const size = table.variants.length;
  const likelihood = new Float64Array(size * width);
  for (let row = 0; row < size; row += 1) {
    const variant = table.variants[row] as number;
    if (variant === MIXED) {
      likelihood.set(mixedRow(table, row, space, source), row * width);
      continue;
    }
    const isKin = table.areKin[row] === 1;
    const from = variant === NOTHING ? flat : isKin ? source.kinRows : source.rows;
    const offset = variant === NOTHING ? 0 : (rowOf[variant] as number) * width;
    const start = row * width;
    for (let column = 0; column < width; column += 1) {
      likelihood[start + column] = from[offset + column] as number;
    }
  }
  return likelihood;
}

/** Weights are gathered by shared row first, so that thousands of kins cost one addition each. */
function mixedRow(table: TableRows, row: number, space: HypothesisSpace, source: VariantRows): Float64Array {
  const { width, rowOf, kinRows, flat } = source;
  const weights = new Float64Array(kinRows.length / width);
  let flatShare = 0;
  for (let at = table.starts[row] as number; at < (table.starts[row + 1] as number); at += 1) {
    const variant = space.variants[table.members[at] as number] as number;
    const share = table.shares[at] as number;
    if (variant < 0) flatShare += share;
    else weights[rowOf[variant] as number] = (weights[rowOf[variant] as number] as number) + share;
  }
  const mixed = flat.map((chance) => flatShare * chance);
  for (let kin = 0; kin < weights.length; kin += 1) {
    const weight = weights[kin] as number;
    if (weight === 0) continue;
    for (let column = 0; column < width; column += 1) {
      mixed[column] = (mixed[column] as number) + weight * (kinRows[kin * width + column] as number);
    }
  }
  return mixed;
}

/** The same from rows by hypothesis (row-major, hypotheses × answers), for questions that depend on the way. */
export function likelihoodOfHypotheses(
  table: TableRows,
  byHypothesis: Float64Array,
  width: number,
): Float64Array {
  const size = table.variants.length;
  const likelihood = new Float64Array(size * width);
  for (let row = 0; row < size; row += 1) {
    for (let at = table.starts[row] as number; at < (table.starts[row + 1] as number); at += 1) {
      const offset = (table.members[at] as number) * width;
      const share = table.shares[at] as number;
      for (let column = 0; column < width; column += 1) {
        const place = row * width + column;
        likelihood[place] = (likelihood[place] as number) + share * (byHypothesis[offset + column] as number);
      }
    }
  }
  return likelihood;
}
