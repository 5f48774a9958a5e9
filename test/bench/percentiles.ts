// Times on the wall and their percentiles. Another program on the same machine lengthens a time and says nothing about us:
// where a budget is held, the same work is done several times and the least or the median counts.

/** Milliseconds that `work` took, and what it gave. */
export function timed<T>(work: () => T): { readonly milliseconds: number; readonly result: T } {
  const from = performance.now();
  const result = work();
  return { milliseconds: performance.now() - from, result };
}

/** Nearest rank: the value that at least the share `share` of all does not exceed. `values`: at least one. */
export function percentile(values: readonly number[], share: number): number {
  const rising = values.toSorted((one, other) => one - other);
  return rising[Math.max(0, Math.ceil(share * rising.length) - 1)] ?? Number.NaN;
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
