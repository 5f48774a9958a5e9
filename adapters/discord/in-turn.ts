/** Work of one conversation one after another, so that two who press at once do not both meet the old question; and few at a time. */

/** Runs jobs of the same key in order; `drained` resolves when none is left. */
export interface InTurn {
  run<Outcome>(key: string, job: () => Promise<Outcome>): Promise<Outcome>;
  drained(): Promise<void>;
}

export function inTurn(): InTurn {
  const last = new Map<string, Promise<unknown>>();
  return {
    run(key, job) {
      const before = last.get(key) ?? Promise.resolve();
      const own = before.then(job, job);
      const settled = own.then(
        () => undefined,
        () => undefined,
      );
      last.set(key, settled);
      void settled.then(() => {
        if (last.get(key) === settled) last.delete(key);
      });
      return own;
    },
    async drained() {
      while (last.size > 0) await Promise.all(last.values());
    },
  };
}

/**
 * At most `most` jobs at once, the others wait in order. A turn of the bot holds the processor for some milliseconds; between two of
 * them acknowledgements go out.
 */
export function fewAtOnce(most: number): <Outcome>(job: () => Promise<Outcome>) => Promise<Outcome> {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (job) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    running += 1;
    try {
      await new Promise<void>((resolve) => setImmediate(resolve));
      return await job();
    } finally {
      running -= 1;
      waiting.shift()?.();
    }
  };
}
