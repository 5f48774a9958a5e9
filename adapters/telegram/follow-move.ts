/** A group becomes a supergroup: it goes on under another number, what is kept of it stays, and its messages are counted anew. */
import type { Store } from "../../bot/index.ts";
import { oneAtATime } from "./one-at-a-time.ts";
import { conversationOf } from "./places.ts";
import type { Records } from "./records.ts";
import { changeShown } from "./shown.ts";

export type FollowMove = (from: number, to: number) => Promise<void>;

/** Both chats tell of the move, and a refusal may before them: it is followed once. */
export function moveFollower(store: Store, records: Records): FollowMove {
  const inOrder = oneAtATime();
  return (from, to) =>
    inOrder(from, async () => {
      const { now, keepersOf } = await records.chat(from);
      if (now === to) return;
      const keepers = keepersOf === undefined ? {} : { keepersOf };
      await records.changeChat(to, "was a group", { origin: from, ...keepers });
      // The old numbers are other messages now.
      await changeShown(store, conversationOf(from, undefined), "became a supergroup", (shown) => ({
        ...shown,
        boards: shown.boards.map((board) => ({ ...board, messages: [] })),
      }));
      // Last: what was interrupted is followed again.
      await records.changeChat(from, "became a supergroup", { now: to });
    });
}
