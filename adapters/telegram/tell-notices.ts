/** What is to be told where nobody has just spoken: the keepers' queue in the place of their choice, an answer to whoever asked for it. */

import type { Notice, NoticeOutcome } from "../../bot/index.ts";
import type { Door } from "./door.ts";
import { forTheLog } from "./for-the-log.ts";
import { conversationOf, type Place, placeNamed } from "./places.ts";
import { telegramPart } from "./settings.ts";
import { isTold } from "./tell.ts";

const mostAtOnce = 20;

/** Tells what waits, the oldest first; one that fails for now stays for the next time and holds up no other. */
export async function tellNotices(door: Door): Promise<void> {
  for (const notice of await door.bot.notices(mostAtOnce)) {
    try {
      await door.bot.noticeSettled(notice.id, await outcomeOf(door, notice));
    } catch (failure) {
      door.log.warn({ ...forTheLog(failure), notice: notice.id }, "a notice could not be told; it waits");
    }
  }
}

/** Tried in turn: the place, then the person alone. */
async function outcomeOf(door: Door, notice: Notice): Promise<NoticeOutcome> {
  for (const place of await placesFor(door, notice)) {
    const delivery = {
      place,
      message: `notice:${notice.id}`,
      reply: notice.reply,
      person: notice.to.audience === "person" ? personIn(notice.to.person) : null,
      said: { by: "nobody" } as const,
      after: 0,
      ...saidIn(notice, place),
    };
    if (await door.inOrder(place.chat, () => isTold(door, delivery))) return "told";
  }
  return "gone";
}

async function placesFor(
  { bot, records }: Door,
  { to, community, reply }: Notice,
): Promise<readonly Place[]> {
  if (to.audience === "keepers") {
    const { keepersPlace } = telegramPart(await bot.settings(community));
    return keepersPlace === null ? [] : [await keepersMeet(records, keepersPlace, community)];
  }
  const person = personIn(to.person);
  const asked = reply.isPrivate === true ? undefined : await placeNamed(records, to.conversation, community);
  const alone = person === null ? undefined : await placeNamed(records, `telegram:${person}`, community);
  return [asked, alone].filter((place) => place !== undefined);
}

/** The platform's number of a person; null for one of another platform. */
function personIn(id: string): number | null {
  const [, number] = /^telegram:(\d+)$/u.exec(id) ?? [];
  return number === undefined ? null : Number(number);
}

async function keepersMeet(
  records: Door["records"],
  { chat, topic }: { readonly chat: number; readonly topic?: number | undefined },
  community: string,
): Promise<Place> {
  const { origin = chat, now = chat } = await records.chat(chat);
  return {
    chat: now,
    ...(topic === undefined ? {} : { topic }),
    conversation: conversationOf(origin, topic),
    community,
    isPrivate: false,
  };
}

/** Buttons under an answer told elsewhere still belong where it was asked. */
function saidIn({ to, community }: Notice, { conversation }: Place) {
  if (to.audience === "keepers" || to.conversation === conversation) return {};
  return { saidIn: { conversation: to.conversation, community } };
}
