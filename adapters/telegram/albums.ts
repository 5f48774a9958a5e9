/** An album arrives as single messages with one name; they are put together again before the bot is told, in the album's place in the row. */
import { setTimeout as pause } from "node:timers/promises";
import type { Message } from "grammy/types";

/** Called in the order in which messages came; `whole` gives the messages that belong together, the first one first. */
export type HearWhole = (first: Message, whole: () => Promise<readonly Message[]>) => Promise<void>;

/** The parts of an album follow each other at once; after this long without one more it is whole. */
const STILL_MILLISECONDS = 700;

/** A way to hear messages one by one: those of an album settle together, once the album was heard. */
export function albums(
  hear: HearWhole,
  still: number = STILL_MILLISECONDS,
): (message: Message) => Promise<void> {
  const open = new Map<string, { readonly messages: Map<number, Message>; readonly heard: Promise<void> }>();

  async function gathered(name: string, messages: ReadonlyMap<number, Message>): Promise<readonly Message[]> {
    for (let before = -1; before < messages.size; ) {
      before = messages.size;
      await pause(still);
    }
    open.delete(name);
    return [...messages.values()].sort((one, other) => one.message_id - other.message_id);
  }

  return (message) => {
    if (message.media_group_id === undefined) return hear(message, async () => [message]);
    const name = `${message.chat.id}:${message.media_group_id}`;
    const begun = open.get(name);
    if (begun !== undefined) {
      begun.messages.set(message.message_id, message);
      return begun.heard;
    }
    const messages = new Map([[message.message_id, message]]);
    const whole = gathered(name, messages);
    const heard = hear(message, () => whole);
    open.set(name, { messages, heard });
    return heard;
  };
}
