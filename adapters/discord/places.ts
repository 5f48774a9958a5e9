/**
 * Which message of Discord shows which case. It is kept in the community's memory, because the buttons on a message outlive the
 * process; the answer itself is not kept twice: the bot gives the first reply again when it hears the same message id.
 */
import { z } from "zod";
import type { Clock, Store } from "../../bot/index.ts";

const Kept = z.strictObject({
  channel: z.string(),
  message: z.string(),
  /** The id of the message the shown reply answered; a button of any other reply is stale. */
  reply: z.string(),
  /** Who said that message, whose case it is, and in which community. */
  from: z.string(),
  asker: z.string(),
  community: z.string(),
  /** The case, when the message shows one; an aside shows none. */
  case: z.string().optional(),
  /** The reply that last said where the case stands, while nothing has changed it since. */
  standing: z.string().optional(),
  /** Words of the adapter that stand first: the pages of a long answer are counted with them. */
  before: z.string().optional(),
  /** Where presses are said, when not where the message stands. */
  speaksIn: z.string().optional(),
  /** What its buttons say, when the reply came as a notice and cannot be asked for again. */
  says: z.array(z.strictObject({ label: z.string(), say: z.string() })).optional(),
});
export type Place = Readonly<z.output<typeof Kept>>;

export interface Places {
  find(conversation: string, key: string): Promise<Place | undefined>;
  keep(conversation: string, key: string, place: Place): Promise<void>;
}

const kind = "discord-place";
const MOST_REMEMBERED = 2000;

export function openPlaces(store: Store, clock: Clock): Places {
  const remembered = new Map<string, Place>();

  function remember(id: string, place: Place): void {
    remembered.delete(id);
    remembered.set(id, place);
    const [oldest] = remembered.keys();
    if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  }

  return {
    async find(conversation, key) {
      const id = recordId(conversation, key);
      const known = remembered.get(id);
      if (known !== undefined) return known;
      const kept = Kept.safeParse(await store.current(kind, id));
      if (!kept.success) return undefined;
      remember(id, kept.data);
      return kept.data;
    },
    async keep(conversation, key, place) {
      const id = recordId(conversation, key);
      const before = remembered.get(id);
      remember(id, place);
      const change = { kind, id, by: place.from, at: clock.milliseconds(), why: "shown" };
      try {
        await store.advance(change, () => ({ state: place, outcome: null }));
      } catch (failure) {
        // Whoever tries again goes by what is kept.
        if (before === undefined) remembered.delete(id);
        else remember(id, before);
        throw failure;
      }
    },
  };
}

/** What is kept as shown of one conversation. */
export async function* placesIn(store: Store, conversation: string): AsyncGenerator<Place> {
  for await (const { state } of store.currents(kind, recordId(conversation, ""))) {
    const kept = Kept.safeParse(state);
    if (kept.success) yield kept.data;
  }
}

function recordId(conversation: string, key: string): string {
  return `${conversation}#${key}`;
}

/** The conversation of a place on Discord; what only one person sees is a conversation of its own. */
export function conversationIn(channel: string, scope: "open" | "private", user: string): string {
  return scope === "open" ? `discord:${channel}` : `discord:${channel}:private:${user}`;
}

/** Who a notice to the keepers is kept as being from. */
export const keepersNotice = "discord:keepers";

export function personOf(user: string): string {
  return `discord:${user}`;
}
