/**
 * "Did you mean": the one known name within a slip or two of what was typed. Optimal string alignment distance
 * (Damerau 1964, "A technique for computer detection and correction of spelling errors"): four kinds of slip count one each.
 */

/**
 * The known name nearest to `typed`: at most one slip for names up to five letters, two for longer ones.
 * Undefined when none is near or two are equally near, because a wrong hint is worse than none.
 */
export function closestName(typed: string, known: readonly string[]): string | undefined {
  const near = known
    .map((name) => ({ name, slips: slipsBetween(typed, name) }))
    .filter(({ name, slips }) => slips <= (name.length <= 5 ? 1 : 2))
    .sort((a, b) => a.slips - b.slips);
  const [first, second] = near;
  if (first === undefined || first.slips === second?.slips) return undefined;
  return first.name;
}

/** Insertions, deletions, replacements and swaps of neighbours from one word to the other. Cost: product of the lengths. */
export function slipsBetween(from: string, to: string): number {
  const rows: number[][] = [Array.from({ length: to.length + 1 }, (_, column) => column)];
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const replaced = at(rows, i - 1, j - 1) + (from[i - 1] === to[j - 1] ? 0 : 1);
      const isSwap = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      const swapped = isSwap ? at(rows, i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(at(rows, i - 1, j) + 1, (row[j - 1] ?? 0) + 1, replaced, swapped));
    }
    rows.push(row);
  }
  return at(rows, from.length, to.length);
}

function at(rows: readonly (readonly number[])[], row: number, column: number): number {
  return rows[row]?.[column] ?? 0;
}
