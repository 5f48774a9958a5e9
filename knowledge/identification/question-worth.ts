/**
 * A quick measure of what a question tells of the verdict, without writing its table: of hundreds of questions about
 * a large part kind only the promising ones are worth writing down.
 */
import { mixedRow, type VariantRows } from "./question-rows.ts";
import type { WorthTable } from "./row-sample.ts";
import { MIXED } from "./table-rows.ts";

/** With more classes than this, each row is measured as a class of its own: a large table has one row a class. */
const FEW_CLASSES = 16;

/** The class of each row as a number, and how many classes there are. */
interface RowClasses {
  readonly of: Int32Array;
  readonly count: number;
}

export function rowClasses(table: WorthTable): RowClasses {
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
export function purityNow(table: WorthTable, classes: RowClasses): number {
  const sums = new Float64Array(classes.count);
  classes.of.forEach((named, row) => {
    sums[named] = (sums[named] as number) + (table.probabilities[row] as number);
  });
  return sums.reduce((sum, belief) => sum + belief * belief, 0);
}

/**
 * Σ_a Σ_c m[a][c]² ÷ P(a), m[a][c] = P(class c and answer a): the purity Σ_c P(c)² expected after the answer (Gini).
 * Where there are many classes, beliefs and their squares are gathered by shared row first, so that no
 * logarithm and few products are needed. Cost: rows of the table + shared rows × answers.
 */
export function expectedPurity(table: WorthTable, classes: RowClasses, source: VariantRows): number {
  if (classes.count > FEW_CLASSES) return purityOfSingles(table, source);
  return purityOfClasses(table, classes, source);
}

function purityOfSingles(table: WorthTable, source: VariantRows): number {
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
  variants.forEach((variant, row) => {
    const belief = probabilities[row] as number;
    if (variant < 0) {
      add(belief, belief * belief, variant === MIXED ? mixedRow(table, source) : flat, 0);
      return;
    }
    const place = (rowOf[variant] as number) + (areKin[row] === 1 ? shared : 0);
    beliefs[place] = (beliefs[place] as number) + belief;
    squares[place] = (squares[place] as number) + belief * belief;
  });
  beliefs.forEach((belief, place) => {
    if (belief === 0) return;
    const isKin = place >= shared;
    const offset = (isKin ? place - shared : place) * width;
    add(belief, squares[place] as number, isKin ? kinRows : rows, offset);
  });
  return pure.reduce((sum, square, answer) => sum + square / (chance[answer] as number), 0);
}

function purityOfClasses(table: WorthTable, classes: RowClasses, source: VariantRows): number {
  const joint = new Float64Array(classes.count * source.width);
  // Measurements hardly share rows: gathering them would cost more than it saves.
  const isShared = (source.rows.length / source.width) * FEW_CLASSES < table.variants.length;
  if (isShared) addGathered(joint, table, classes, source);
  else addOneByOne(joint, table, classes, source);
  return purityOfJoint(joint, source.width);
}

/** Adds belief · P(answer | row) of one row of `from` to the answers of a class. */
function addRow(
  joint: Float64Array,
  start: number,
  belief: number,
  from: Float64Array,
  offset: number,
  width: number,
): void {
  for (let answer = 0; answer < width; answer += 1) {
    const place = start + answer;
    joint[place] = (joint[place] as number) + belief * (from[offset + answer] as number);
  }
}

function addOneByOne(joint: Float64Array, table: WorthTable, classes: RowClasses, source: VariantRows): void {
  const { width, rows, kinRows, rowOf, flat } = source;
  const { variants, probabilities, areKin } = table;
  const { of } = classes;
  variants.forEach((variant, row) => {
    const start = (of[row] as number) * width;
    const belief = probabilities[row] as number;
    if (variant < 0)
      addRow(joint, start, belief, variant === MIXED ? mixedRow(table, source) : flat, 0, width);
    else {
      const from = areKin[row] === 1 ? kinRows : rows;
      addRow(joint, start, belief, from, (rowOf[variant] as number) * width, width);
    }
  });
}

function addGathered(joint: Float64Array, table: WorthTable, classes: RowClasses, source: VariantRows): void {
  const { width, rows, kinRows, rowOf, flat } = source;
  const { variants, probabilities, areKin } = table;
  const { of, count } = classes;
  const shared = rows.length / width;
  const beliefs = new Float64Array(2 * shared * count);
  variants.forEach((variant, row) => {
    const belief = probabilities[row] as number;
    const named = of[row] as number;
    if (variant < 0) {
      addRow(joint, named * width, belief, variant === MIXED ? mixedRow(table, source) : flat, 0, width);
      return;
    }
    const place = (2 * named + (areKin[row] as number)) * shared + (rowOf[variant] as number);
    beliefs[place] = (beliefs[place] as number) + belief;
  });
  beliefs.forEach((belief, place) => {
    if (belief === 0) return;
    const half = Math.floor(place / shared);
    addRow(
      joint,
      (half >> 1) * width,
      belief,
      half % 2 === 1 ? kinRows : rows,
      (place - half * shared) * width,
      width,
    );
  });
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
