// Optimal string alignment distance (insert, delete, replace, swap of neighbours), cut off at a bound.
// Damerau (1964), "A technique for computer detection and correction of spelling errors", CACM 7:171-176:
// four in five typing errors are one of these. Three rows, and a row whose least is over the bound ends it.

/** The distance, or bound + 1 when it is larger; O(length squared), no allocation beyond three short rows. */
export function boundedEditDistance(one: string, other: string, bound: number): number {
  if (Math.abs(one.length - other.length) > bound) return bound + 1;
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const current = nextRow(one, other, row, above, before);
    if (Math.min(...current) > bound) return bound + 1;
    before = above;
    above = current;
  }
  return Math.min(above[other.length] ?? bound + 1, bound + 1);
}

function nextRow(
  one: string,
  other: string,
  row: number,
  above: readonly number[],
  before: readonly number[],
): number[] {
  const current = [row];
  for (let column = 1; column <= other.length; column += 1) {
    const isSame = one[row - 1] === other[column - 1];
    const replace = (above[column - 1] ?? 0) + (isSame ? 0 : 1);
    const shift = Math.min((above[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1);
    const isSwap =
      row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
    const swap = isSwap ? (before[column - 2] ?? 0) + 1 : replace;
    current.push(Math.min(replace, shift, swap));
  }
  return current;
}
