// Shannon entropy: how many yes/no answers, on average, separate us from knowing. Counts and
// unnormalised weights are accepted as they come, so that no caller has to normalise first.

/**
 * Entropy in bits of a distribution given as weights: H = −Σ p·log2(p), p = w / Σ w
 * (C. E. Shannon, "A mathematical theory of communication", 1948, section 6).
 * `weights`: counts or probabilities, ≥ 0, need not sum to one. Empty or all zero: 0.
 * Example: entropyBits([9, 5]) = 0.940286.
 */
export function entropyBits(weights: readonly number[]): number {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let bits = 0;
  for (const weight of weights) {
    const share = weight / total;
    if (share > 0) bits -= share * Math.log2(share);
  }
  return Math.max(0, bits);
}
