// How long work takes on the processor, not on the wall clock: other programs on a busy machine do not count.

/** The least milliseconds of processor time of this thread over so many runs of the work. */
export function leastProcessorMilliseconds(runs: number, work: (run: number) => void): number {
  const times = Array.from({ length: runs }, (_, run) => {
    const start = process.threadCpuUsage();
    work(run);
    const { user, system } = process.threadCpuUsage(start);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}
