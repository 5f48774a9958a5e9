/** A group becomes a supergroup: it goes on under another number, what is kept of it stays, and its messages are counted anew. */
import type { Store } from "../../bot/index.ts";
import { conversationOf } from "./places.ts";
import type { Records } from "./records.ts";
import { changeShown } from "./shown.ts";

export type FollowMove = (from: number, to: number) => Promise<void>;

export function moveFollower(store: Store, records: Records): FollowMove {
  return async (from, to) => {
    if ((await records.chat(from)).now === to) return;
    await records.changeChat(from, "became a supergroup", { now: to });
    await records.changeChat(to, "was a group", { origin: from });
    // The old numbers are other messages now.
    await changeShown(store, conversationOf(from, undefined), "became a supergroup", (shown) => ({
      ...shown,
      boards: shown.boards.map((board) => ({ ...board, messages: [] })),
    }));
  };
}
