// An interval and a middle from weights on the borders of a grid. The shortest run and not the central one: a history
// that may have begun before the window has its weight at one end.

/** Borders first … last, and the chance they hold together. */
export interface CredibleRun {
  readonly first: number;
  readonly last: number;
  readonly chance: number;
}

/**
 * The shortest run of borders that holds at least `level` of the weights; of equally short ones the earliest. `weights` ≥ 0, not all 0. O(borders).
 */
export function shortestRun(weights: ArrayLike<number>, level: number): CredibleRun {
  let total = 0;
  for (let index = 0; index < weights.length; index += 1) total += weights[index] as number;
  const wanted = level * total;
  let best = { first: 0, last: weights.length - 1, held: total };
  let held = 0;
  let first = 0;
  for (let last = 0; last < weights.length; last += 1) {
    held += weights[last] as number;
    while (first < last && held - (weights[first] as number) >= wanted) {
      held -= weights[first] as number;
      first += 1;
    }
    const saved = best.last - best.first - (last - first);
    if (held >= wanted && saved > 0) best = { first, last, held };
  }
  return { first: best.first, last: best.last, chance: total > 0 ? best.held / total : 0 };
}

/**
 * Where a share of the weight lies to the left, each border's weight spread evenly over half a step on either side:
 * a number of borders, from −½ to borders − ½. `share` in (0, 1).
 */
export function spreadQuantile(weights: ArrayLike<number>, share: number): number {
  let total = 0;
  for (let index = 0; index < weights.length; index += 1) total += weights[index] as number;
  const wanted = share * total;
  let before = 0;
  for (let index = 0; index < weights.length; index += 1) {
    const weight = weights[index] as number;
    if (weight > 0 && before + weight >= wanted) return index - 0.5 + (wanted - before) / weight;
    before += weight;
  }
  return weights.length - 0.5;
}
