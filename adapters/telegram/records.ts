/** Small records of the door's own in the store, one a chat and one a person; the newest is kept and older ones stay as history. */
import { z } from "zod";
import type { Store } from "../../bot/index.ts";

const ChatRecord = z
  .strictObject({
    /** A group that became a supergroup: its number now. */
    now: z.number().optional(),
    /** A supergroup that was a group: the number its memory is kept under. */
    origin: z.number().optional(),
    /** The community whose keepers meet here, when that is not this chat's own. */
    keepersOf: z.string().optional(),
  })
  .readonly();
export type ChatRecord = z.output<typeof ChatRecord>;

const PersonRecord = z.strictObject({ community: z.string() }).readonly();

const chatKind = "telegram-chat";
const personKind = "telegram-person";

export interface Records {
  chat(id: number): Promise<ChatRecord>;
  /** Adds to what is known of a chat. */
  changeChat(id: number, why: string, more: ChatRecord): Promise<void>;
  /** The community somebody spoke in last, in a group; "home" before that. */
  communityOf(person: number): Promise<string>;
  spokeIn(person: number, community: string): Promise<void>;
}

export function recordsIn(store: Store): Records {
  const change = (kind: string, id: number, why: string) => ({
    kind,
    id: `${id}`,
    by: "telegram",
    at: Date.now(),
    why,
  });
  const chat = async (id: number) => readChat(await store.current(chatKind, `${id}`));
  const communityOf = async (person: number) => {
    const read = PersonRecord.safeParse(await store.current(personKind, `${person}`));
    return read.success ? read.data.community : "home";
  };
  return {
    chat,
    communityOf,
    async changeChat(id, why, more) {
      await store.advance(change(chatKind, id, why), (state) => ({
        state: { ...readChat(state), ...more },
        outcome: null,
      }));
    },
    async spokeIn(person, community) {
      if ((await communityOf(person)) === community) return;
      await store.advance(change(personKind, person, "spoke"), () => ({
        state: { community },
        outcome: null,
      }));
    },
  };
}

function readChat(state: unknown): ChatRecord {
  const read = ChatRecord.safeParse(state);
  return read.success ? read.data : {};
}
