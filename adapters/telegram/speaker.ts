/** Who speaks, as the bot is told: an id with the platform's name before it, the name that is shown, what the platform vouches for. */
import type { Chat, User } from "grammy/types";
import type { IncomingMessage } from "../../bot/index.ts";
import type { Door } from "./door.ts";
import type { Place } from "./places.ts";
import { telegramPart } from "./settings.ts";

export interface Speaker {
  readonly id: number;
  readonly name: string;
  /** An administrator who speaks as the group. */
  readonly isGroupItself: boolean;
}

export function speakerOf(from: User, sender: Chat | undefined): Speaker {
  if (sender !== undefined)
    return { id: sender.id, name: sender.title ?? from.first_name, isGroupItself: true };
  return { id: from.id, name: nameOf(from), isGroupItself: false };
}

export function nameOf({ first_name, last_name }: User): string {
  return [first_name, last_name]
    .filter((part) => part !== undefined && part !== "")
    .join(" ")
    .slice(0, 80);
}

/** Everything a message says of its speaker and place. */
export async function saidBy(
  { bot, standings }: Door,
  place: Place,
  { id, name, isGroupItself }: Speaker,
): Promise<Pick<IncomingMessage, "conversation" | "from" | "community" | "isPrivate" | "standing" | "name">> {
  const settings = telegramPart(await bot.settings(place.community));
  const standing = isGroupItself ? "keeper" : await standings.of(place.community, id, settings);
  return {
    conversation: place.conversation,
    from: `telegram:${id}`,
    community: place.community,
    isPrivate: place.isPrivate,
    name,
    ...(standing === undefined ? {} : { standing }),
  };
}
