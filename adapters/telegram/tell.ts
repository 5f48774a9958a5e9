/** A reply to where it belongs: the place it was asked in, or the asker alone. Places where nothing can be said are noted, not tried again. */
import type { Message } from "grammy/types";
import type { Delivery } from "./deliver.ts";
import { deliver } from "./deliver.ts";
import type { Door } from "./door.ts";
import { escapeHtml } from "./html.ts";
import { onlyInPrivate, onlyToAPerson, openPrivateChat } from "./phrases.ts";
import { type Place, privatePlace } from "./places.ts";
import { troubleOf } from "./trouble.ts";

export type Telling = Delivery & { readonly person: number };

/** Brings a reply to its place, or to the asker alone. */
export async function tellReply(door: Door, telling: Telling): Promise<void> {
  const { place, reply: said, person, message } = telling;
  if (said.isPrivate !== true || place.isPrivate) {
    if (!(await isTold(door, telling)))
      door.log.info({ place: place.conversation }, "nothing can be said there");
    return;
  }
  const { conversation, community } = place;
  const asked = telling.said.by === "writing" ? telling.said.message : undefined;
  // An administrator who speaks as the group: that number is everybody's.
  if (person < 0) return tellPlainly(door, place, asked, onlyToAPerson);
  const alone: Delivery = {
    place: await privatePlace(door.records, person),
    message: `${conversation} ${message}`,
    reply: said,
    person,
    said: { by: "nobody" },
    after: 0,
    saidIn: { conversation, community },
  };
  if (await isTold(door, alone)) return;
  const url = `https://t.me/${door.me.username}?start=here`;
  await tellPlainly(door, place, asked, onlyInPrivate, { text: openPrivateChat, url });
}

/** False when the place cannot be written to; other failures are thrown. */
export async function isTold(door: Door, delivery: Delivery): Promise<boolean> {
  try {
    await deliver(door.delivering, delivery);
    return true;
  } catch (failure) {
    const { kind } = troubleOf(failure);
    if (kind === "gone" || kind === "silenced") return false;
    throw failure;
  }
}

/** One of the platform's own sentences, in answer to a message. */
export async function tellSentence(door: Door, place: Place, message: Message, text: string): Promise<void> {
  await tellPlainly(door, place, message.message_id, text);
}

export async function tellPlainly(
  door: Door,
  place: Place,
  replyTo: number | undefined,
  text: string,
  button?: { readonly text: string; readonly url: string },
): Promise<void> {
  const keyboard = button === undefined ? {} : { keyboard: { inline_keyboard: [[button]] } };
  const answered = replyTo === undefined || place.isPrivate ? {} : { replyTo };
  try {
    await door.post.send(
      place,
      { kind: "text", html: escapeHtml(text), ...keyboard },
      { after: replyTo ?? 0, known: new Set(), isSuspect: false, ...answered },
    );
  } catch (failure) {
    const { kind } = troubleOf(failure);
    if (kind !== "gone" && kind !== "silenced") throw failure;
  }
}
