/** Who is looking at a conversation right now, so that what is said elsewhere in it, or to its asker, arrives without asking. */
import { mostStreams, mostStreamsOfOne } from "./limits.ts";

/** Undefined: the program ends, nothing more will come. */
type Listener = (turn: string | undefined) => void;

export interface LiveTurns {
  /** Calls `listener` with the HTML of each new turn, until what it returns is called; undefined when too many listen already. */
  listen(conversation: string, listener: Listener): (() => void) | undefined;
  tell(conversation: string, turn: string): void;
  /** Tells everybody that nothing more will come. */
  end(): void;
  /** How many listen. */
  count(): number;
}

export function liveTurns(): LiveTurns {
  const listeners = new Map<string, Set<Listener>>();
  let total = 0;
  return {
    listen(conversation, listener) {
      const own = listeners.get(conversation) ?? new Set();
      if (total >= mostStreams || own.size >= mostStreamsOfOne) return undefined;
      listeners.set(conversation, own.add(listener));
      total += 1;
      return () => {
        if (!own.delete(listener)) return;
        total -= 1;
        if (own.size === 0) listeners.delete(conversation);
      };
    },
    tell(conversation, turn) {
      for (const listener of listeners.get(conversation) ?? []) listener(turn);
    },
    end() {
      for (const own of listeners.values()) for (const listener of own) listener(undefined);
    },
    count: () => total,
  };
}
