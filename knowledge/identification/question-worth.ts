/**
 * A quick measure of what a question tells of the verdict, without writing its table: of hundreds of questions about
 * a large part kind only the promising ones are worth writing down.
 */
import { mixedRow, type VariantRows } from "./question-rows.ts";
import { MIXED, type TableRows } from "./table-rows.ts";

/** More classes than this: each has one row of the table. */
const FEW_CLASSES = 16;

/** The class of each row as a number, and how many classes there are. */
export interface RowClasses {
  readonly of: Int32Array;
  readonly count: number;
}

export function rowClasses(table: TableRows): RowClasses {
  const indices = new Map<string, number>();
  const of = Int32Array.from(table.classes, (named) => {
    const known = indices.get(named);
    if (known !== undefined) return known;
    indices.set(named, indices.size);
    return indices.size - 1;
  });
  return { of, count: indices.size };
}

/** Σ_c P(c)²: the purity before any answer. */
export function purityNow(table: TableRows, classes: RowClasses): number {
  const sums = new Float64Array(classes.count);
  classes.of.forEach((named, row) => {
    sums[named] = (sums[named] as number) + (table.probabilities[row] as number);
  });
  return sums.reduce((sum, belief) => sum + belief * belief, 0);
}

/**
 * Σ_a Σ_c m[a][c]² ÷ P(a), m[a][c] = P(class c and answer a): the purity Σ_c P(c)² expected after the answer (Gini).
 * Where every variant is a class of its own, beliefs and their squares are gathered by shared row first, so that no
 * logarithm and few products are needed. Cost: rows of the table + shared rows × answers.
 */
export function expectedPurity(table: TableRows, classes: RowClasses, source: VariantRows): number {
  if (classes.count > FEW_CLASSES) return purityOfSingles(table, source);
  return purityOfClasses(table, classes, source);
}

function purityOfSingles(table: TableRows, source: VariantRows): number {
  const { width, rows, kinRows, rowOf, flat } = source;
  const { variants, probabilities, areKin } = table;
  const shared = rows.length / width;
  const beliefs = new Float64Array(2 * shared);
  const squares = new Float64Array(2 * shared);
  const chance = new Float64Array(width);
  const pure = new Float64Array(width);
  const add = (belief: number, square: number, from: Float64Array, offset: number): void => {
    for (let answer = 0; answer < width; answer += 1) {
      const likelihood = from[offset + answer] as number;
      chance[answer] = (chance[answer] as number) + belief * likelihood;
      pure[answer] = (pure[answer] as number) + square * likelihood * likelihood;
    }
  };
  for (let row = 0; row < variants.length; row += 1) {
    const variant = variants[row] as number;
    const belief = probabilities[row] as number;
    if (variant < 0) {
      add(belief, belief * belief, variant === MIXED ? mixedRow(table, source) : flat, 0);
      continue;
    }
    const place = (rowOf[variant] as number) + (areKin[row] === 1 ? shared : 0);
    beliefs[place] = (beliefs[place] as number) + belief;
    squares[place] = (squares[place] as number) + belief * belief;
  }
  for (let place = 0; place < shared; place += 1) {
    add(beliefs[place] as number, squares[place] as number, rows, place * width);
    add(beliefs[shared + place] as number, squares[shared + place] as number, kinRows, place * width);
  }
  return pure.reduce((sum, square, answer) => sum + square / (chance[answer] as number), 0);
}

function purityOfClasses(table: TableRows, classes: RowClasses, source: VariantRows): number {
  const { width, rows, kinRows, rowOf, flat } = source;
  const { variants, probabilities, areKin } = table;
  const shared = rows.length / width;
  const beliefs = new Float64Array(2 * shared * classes.count);
  const joint = new Float64Array(classes.count * width);
  const add = (named: number, belief: number, from: Float64Array, offset: number): void => {
    for (let answer = 0; answer < width; answer += 1) {
      const place = named * width + answer;
      joint[place] = (joint[place] as number) + belief * (from[offset + answer] as number);
    }
  };
  for (let row = 0; row < variants.length; row += 1) {
    const variant = variants[row] as number;
    const named = classes.of[row] as number;
    const belief = probabilities[row] as number;
    if (variant < 0) {
      add(named, belief, variant === MIXED ? mixedRow(table, source) : flat, 0);
      continue;
    }
    const place = (2 * named + (areKin[row] as number)) * shared + (rowOf[variant] as number);
    beliefs[place] = (beliefs[place] as number) + belief;
  }
  for (let half = 0; half < 2 * classes.count; half += 1) {
    const from = half % 2 === 1 ? kinRows : rows;
    for (let row = 0; row < shared; row += 1) {
      const belief = beliefs[half * shared + row] as number;
      if (belief > 0) add(half >> 1, belief, from, row * width);
    }
  }
  return purityOfJoint(joint, width);
}

function purityOfJoint(joint: Float64Array, width: number): number {
  let purity = 0;
  for (let answer = 0; answer < width; answer += 1) {
    let chance = 0;
    let squares = 0;
    for (let place = answer; place < joint.length; place += width) {
      const cell = joint[place] as number;
      chance += cell;
      squares += cell * cell;
    }
    if (chance > 0) purity += squares / chance;
  }
  return purity;
}
