// How long work takes on the processor, not on the wall clock: other programs on a busy machine hardly count.

/**
 * Milliseconds of the processor that this thread took for the work, and by the clock. What the engine's helpers did beside it,
 * compiling and collecting, is not in the former.
 */
export function timedOnProcessor<T>(work: () => T): {
  readonly onProcessor: number;
  readonly byTheClock: number;
  readonly result: T;
} {
  const from = performance.now();
  const start = process.threadCpuUsage();
  const result = work();
  const { user, system } = process.threadCpuUsage(start);
  return { onProcessor: (user + system) / 1000, byTheClock: performance.now() - from, result };
}

/** The least milliseconds of processor time of this thread over so many runs of the work. */
export function leastProcessorMilliseconds(runs: number, work: (run: number) => void): number {
  const times = Array.from({ length: runs }, (_, run) => timedOnProcessor(() => work(run)).onProcessor);
  return Math.min(...times);
}
