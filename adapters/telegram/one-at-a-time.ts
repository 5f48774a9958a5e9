/** Tasks of one name run one after another, in the order they came; tasks of different names run beside each other. */

export type OneAtATime = <Value>(name: string | number, task: () => Promise<Value>) => Promise<Value>;

export function oneAtATime(): OneAtATime {
  const last = new Map<string | number, Promise<unknown>>();
  return (name, task) => {
    const before = last.get(name) ?? Promise.resolve();
    const running = before.then(task, task);
    // What fails is told to whoever asked for it, not to the next in the row.
    const settled = running.then(
      () => undefined,
      () => undefined,
    );
    last.set(name, settled);
    void settled.then(() => {
      if (last.get(name) === settled) last.delete(name);
    });
    return running;
  };
}
