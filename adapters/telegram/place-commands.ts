/** The few commands that are about places of this platform: where the keepers meet, where the bot reads along. The rest are words for the bot. */
import type { Message } from "grammy/types";
import type { Standing } from "../../bot/index.ts";
import type { Door } from "./door.ts";
import { patiently } from "./patiently.ts";
import {
  chooseInTheGroup,
  chooseKeepersGroup,
  keepersMeetElsewhere,
  keepersMeetHere,
  listensHere,
  listensNoMore,
  listensOnceAllowed,
  onlyKeepersChoose,
} from "./phrases.ts";
import { chatOfCommunity, communityOf, type Place } from "./places.ts";
import { registerKeepersCommands } from "./register-commands.ts";
import { changeTelegramPart, telegramPart } from "./settings.ts";
import type { Speaker } from "./speaker.ts";
import { tellPlainly, tellSentence } from "./tell.ts";

const names = ["keepershere", "keepersgroup", "listen", "listenless"] as const;
type PlaceCommand = (typeof names)[number];

/** What the link to choose a group hands over: the number of the club's chat. */
const handedOver = /^keepers_(-\d+)$/u;

export interface Obeying {
  readonly place: Place;
  readonly speaker: Speaker;
  readonly message: Message;
  readonly command: string;
  readonly rest: string;
}

export function placeCommandIn(command: string | undefined, rest: string): string | undefined {
  if (command === "start" && handedOver.test(rest)) return command;
  return names.find((name) => name === command);
}

export async function obeyPlaceCommand(door: Door, obeying: Obeying): Promise<void> {
  const { place, message, command, rest } = obeying;
  const say = (text: string) => tellSentence(door, place, message, text);
  if (place.isPrivate) return say(chooseInTheGroup);
  const origin = handedOver.exec(rest)?.[1];
  if (command === "start" && origin !== undefined)
    return meetHere(door, obeying, communityOf(Number(origin)));
  if (!(await mayChoose(door, obeying.speaker, place.community))) return say(onlyKeepersChoose);
  switch (command as PlaceCommand) {
    case "keepershere":
      return meetHere(door, obeying, place.community);
    case "keepersgroup": {
      const chat = chatOfCommunity(place.community);
      const url = `https://t.me/${door.me.username}?startgroup=keepers_${chat}`;
      return tellPlainly(door, place, message.message_id, keepersMeetElsewhere, {
        text: chooseKeepersGroup,
        url,
      });
    }
    case "listen":
    case "listenless": {
      const { setAside } = telegramPart(await door.bot.settings(place.community));
      const others = setAside.filter((one) => one !== place.conversation);
      const listens = command === "listen";
      await changeTelegramPart(door.bot, place.community, `telegram:${obeying.speaker.id}`, {
        setAside: listens ? [...others, place.conversation] : others,
      });
      if (!listens) return say(listensNoMore);
      return say((await isShownAll(door, place.chat)) ? listensHere : listensOnceAllowed);
    }
  }
}

async function meetHere(door: Door, { place, speaker, message }: Obeying, community: string): Promise<void> {
  if (!(await mayChoose(door, speaker, community)))
    return tellSentence(door, place, message, onlyKeepersChoose);
  const { chat, topic } = place;
  await changeTelegramPart(door.bot, community, `telegram:${speaker.id}`, {
    keepersPlace: topic === undefined ? { chat } : { chat, topic },
  });
  if (place.community !== community) {
    await door.records.changeChat(chat, "keepers meet here", { keepersOf: community });
  }
  await registerKeepersCommands(door.api, chat);
  await tellSentence(door, place, message, keepersMeetHere);
}

/** Speaking as the group itself counts in that very group only. */
async function mayChoose(door: Door, { id, isGroupItself }: Speaker, community: string): Promise<boolean> {
  if (isGroupItself) return chatOfCommunity(community) === id;
  const settings = telegramPart(await door.bot.settings(community));
  const standing = await door.standings.of(community, id, settings);
  return (["keeper", "owner"] satisfies Standing[] as readonly unknown[]).includes(standing);
}

/** Whether the platform hands over what is not said to the bot: its privacy mode is off, or it administers the chat. */
async function isShownAll({ api, me }: Door, chat: number): Promise<boolean> {
  if (me.can_read_all_group_messages) return true;
  const { status } = await patiently(() => api.getChatMember(chat, me.id));
  return status === "administrator";
}
