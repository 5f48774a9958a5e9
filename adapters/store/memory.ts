/** Conversations in memory: for the chat in a terminal, for pipes without --store, and for tests. */
import type { Store } from "../../bot/index.ts";

/** An empty store. States are kept as text, so that nobody can change a kept state through a shared reference. */
export function memoryStore(): Store {
  const states = new Map<string, string>();
  return {
    async read(conversation) {
      const text = states.get(conversation);
      return text === undefined ? undefined : JSON.parse(text);
    },
    async write(conversation, state) {
      states.set(conversation, JSON.stringify(state));
    },
  };
}
