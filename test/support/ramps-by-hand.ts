// What a chain's sums are checked against, written as they are defined.

/** The share of what comes in a cell, after a ramp of `width` cells that begins at the border `start`. */
export function risenBy(cell: number, start: number, width: number): number {
  return width === 0 ? Number(cell >= start) : Math.min(1, Math.max(0, (cell + 0.5 - start) / width));
}

/** The chance that at least k of n dates thrown evenly over a window lie in the first `part` of it. */
export function atLeastSoMany(k: number, n: number, part: number): number {
  const choose = (of: number, r: number): number => (r === 0 ? 1 : (choose(of, r - 1) * (of - r + 1)) / r);
  let sum = 0;
  for (let j = k; j <= n; j += 1) sum += choose(n, j) * part ** j * (1 - part) ** (n - j);
  return sum;
}
