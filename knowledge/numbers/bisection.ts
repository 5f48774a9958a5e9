/** The place where a rising function reaches a value. Bisection and not Newton: slower, but it cannot run away. */

/**
 * The x in [low, high] at which `rising` reaches `target`, to the last digits a double holds; `low` or `high` when the
 * target lies outside. At most 200 evaluations.
 */
export function whereReached(
  rising: (x: number) => number,
  target: number,
  low: number,
  high: number,
): number {
  let from = low;
  let to = high;
  for (let step = 0; step < 200; step += 1) {
    const middle = from + (to - from) / 2;
    if (middle <= from || middle >= to) break;
    if (rising(middle) < target) from = middle;
    else to = middle;
  }
  return from + (to - from) / 2;
}
