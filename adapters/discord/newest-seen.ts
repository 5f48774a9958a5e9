/**
 * The newest message that each shard has seen, as it stood when its session broke: what a new session tells first is newer than what was
 * missed, and another shard that went on listening has missed nothing.
 */
export interface NewestSeen {
  saw(shard: number, message: string): void;
  /** The session broke; what is seen from now on counts for later. */
  broke(shard: number): void;
  /** The session goes on, and everything missed is told by it. */
  resumed(shard: number): void;
  /** For a session that is new: the newest message before it. Undefined when none was seen. */
  renewed(shard: number): string | undefined;
}

export function newestSeen(): NewestSeen {
  const newest = new Map<number, string>();
  const atBreak = new Map<number, string | undefined>();
  return {
    saw(shard, message) {
      const before = newest.get(shard);
      if (before === undefined || isLater(message, before)) newest.set(shard, message);
    },
    broke(shard) {
      if (!atBreak.has(shard)) atBreak.set(shard, newest.get(shard));
    },
    resumed(shard) {
      atBreak.delete(shard);
    },
    renewed(shard) {
      const since = atBreak.has(shard) ? atBreak.get(shard) : newest.get(shard);
      atBreak.delete(shard);
      return since;
    },
  };
}

/** Of two ids of Discord, which grow with time. */
export function isLater(one: string, other: string): boolean {
  return one.length === other.length ? one > other : one.length > other.length;
}
