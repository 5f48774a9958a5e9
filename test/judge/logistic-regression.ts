/**
 * Logistic regression with a ridge, by Newton's steps (iteratively reweighted least squares): le Cessie and van Houwelingen,
 * "Ridge estimators in logistic regression", Applied Statistics 41 (1992), 191-201. No draws, so the same rows give the
 * same weights.
 */

export interface Row {
  readonly values: readonly number[];
  readonly isRight: boolean;
  readonly weight: number;
}

const mostSteps = 30;
const smallestStep = 1e-9;
/** The bias is hardly held back. */
const ridgeOfBias = 1e-3;

/** The bias and then one weight a value; `ridge` > 0 pulls the weights towards 0. */
export function fitLogistic(rows: readonly Row[], ridge: number): readonly number[] {
  const size = (rows[0]?.values.length ?? 0) + 1;
  let found: readonly number[] = new Array<number>(size).fill(0);
  for (let step = 0; step < mostSteps; step += 1) {
    const change = newtonStep(rows, found, ridge);
    found = found.map((value, at) => value + (change[at] ?? 0));
    if (change.every((each) => Math.abs(each) < smallestStep)) break;
  }
  return found;
}

function newtonStep(rows: readonly Row[], found: readonly number[], ridge: number): readonly number[] {
  const held = found.map((_, at) => (at === 0 ? ridgeOfBias : ridge));
  const slope = found.map((value, at) => -(held[at] ?? 0) * value);
  const curve = found.map((_, at) => found.map((__, other) => (at === other ? (held[at] ?? 0) : 0)));
  for (const { values, isRight, weight } of rows) {
    const with1 = [1, ...values];
    const probability =
      1 / (1 + Math.exp(-with1.reduce((sum, value, at) => sum + value * (found[at] ?? 0), 0)));
    const spread = weight * probability * (1 - probability);
    with1.forEach((value, at) => {
      if (value === 0) return;
      slope[at] = (slope[at] ?? 0) + weight * ((isRight ? 1 : 0) - probability) * value;
      const line = curve[at] ?? [];
      with1.forEach((other, across) => {
        line[across] = (line[across] ?? 0) + spread * value * other;
      });
    });
  }
  return solved(curve, slope);
}

/** Gaussian elimination; a ridge makes every pivot positive, so no lines need be exchanged. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const lines = matrix.map((line, at) => [...line, right[at] ?? 0]);
  lines.forEach((pivot, at) => {
    for (const line of lines.slice(at + 1)) subtract(line, pivot, at);
  });
  const size = lines.length;
  const found = new Array<number>(size).fill(0);
  for (let at = size - 1; at >= 0; at -= 1) {
    const line = lines[at] ?? [];
    const rest = found.reduce(
      (sum, value, other) => (other > at ? sum + value * (line[other] ?? 0) : sum),
      0,
    );
    found[at] = ((line[size] ?? 0) - rest) / (line[at] ?? 1);
  }
  return found;
}

/** Takes as much of the pivot's line from another as leaves 0 below the pivot. */
function subtract(line: number[], pivot: readonly number[], at: number): void {
  const times = (line[at] ?? 0) / (pivot[at] ?? 1);
  if (times === 0) return;
  for (let across = at; across < line.length; across += 1)
    line[across] = (line[across] ?? 0) - times * (pivot[across] ?? 0);
}
