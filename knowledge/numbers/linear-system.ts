/** A small system of linear equations, solved by elimination with the largest pivot first. */

/**
 * The x with matrix · x = right, or undefined when the matrix is singular to working accuracy. `matrix`: n rows of n
 * finite numbers, `right`: n numbers. O(n³).
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined {
  const rows = matrix.map((row, index) => [...row, right[index] as number]);
  for (let column = 0; column < rows.length; column += 1) {
    if (!eliminate(rows, column)) return undefined;
  }
  return rows.map((row, index) => (row[rows.length] as number) / (row[index] as number));
}

/** Clears a column in all rows but its own; false when nothing is left to divide by. */
function eliminate(rows: number[][], column: number): boolean {
  let pivot = column;
  for (let row = column; row < rows.length; row += 1) {
    if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = row;
  }
  const chosen = rows[pivot];
  const former = rows[column];
  if (!chosen || !former || Math.abs(chosen[column] ?? 0) < 1e-300) return false;
  rows[pivot] = former;
  rows[column] = chosen;
  for (const row of rows) {
    if (row === chosen) continue;
    const factor = (row[column] as number) / (chosen[column] as number);
    for (let k = column; k < row.length; k += 1) row[k] = (row[k] as number) - factor * (chosen[k] as number);
  }
  return true;
}
