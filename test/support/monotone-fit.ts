// The rising fit with the least squares, by pooling neighbours that fall: what a step is when nothing is assumed of it.

/** One value per label, never falling. */
export function monotoneFit(values: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const value of values) {
    let pool = { sum: value, count: 1 };
    for (
      let last = pools.at(-1);
      last !== undefined && last.sum * pool.count > pool.sum * last.count;
      last = pools.at(-1)
    ) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
  }
  return pools.flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count));
}
