/** The newest message known in each chat, by number: what is sent after it can be looked for. For as long as the process lives. */

export interface NewestMessages {
  saw(chat: number, message: number): void;
  /** 0 where nothing has been seen. */
  in(chat: number): number;
}

const mostChats = 5000;

export function newestMessages(): NewestMessages {
  const newest = new Map<number, number>();
  return {
    saw(chat, message) {
      const known = newest.get(chat) ?? 0;
      newest.delete(chat);
      newest.set(chat, Math.max(known, message));
      const [oldest] = newest.keys();
      if (newest.size > mostChats && oldest !== undefined) newest.delete(oldest);
    },
    in: (chat) => newest.get(chat) ?? 0,
  };
}
