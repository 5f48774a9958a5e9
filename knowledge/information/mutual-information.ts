// Mutual information of two characters from their joint table: what knowing one tells of the other.

import { entropyBits } from "./entropy.ts";

/**
 * Mutual information in bits, I(X;Y) = H(X) + H(Y) − H(X,Y)
 * (T. M. Cover & J. A. Thomas, Elements of Information Theory, 2006, equation 2.45).
 * `joint`: rows of X, columns of Y, counts or probabilities ≥ 0 that need not sum to one; rows may differ
 * in length (missing cells count as zero). Never below 0. Empty: 0.
 */
export function mutualInformationBits(joint: readonly (readonly number[])[]): number {
  const rowSums: number[] = [];
  const columnSums: number[] = [];
  const cells: number[] = [];
  for (const row of joint) {
    let rowSum = 0;
    row.forEach((weight, column) => {
      rowSum += weight;
      columnSums[column] = (columnSums[column] ?? 0) + weight;
      cells.push(weight);
    });
    rowSums.push(rowSum);
  }
  return Math.max(0, entropyBits(rowSums) + entropyBits(columnSums) - entropyBits(cells));
}
