/** A message, or an album as one message, to the bot and its reply back to the place. */
import type { Message } from "grammy/types";
import type { IncomingMessage } from "../../bot/index.ts";
import { wordsOfCommand } from "./commands.ts";
import type { Door } from "./door.ts";
import { type Heard, heardIn } from "./heard.ts";
import { photographsIn } from "./photographs-in.ts";
import { obeyPlaceCommand, placeCommandIn } from "./place-commands.ts";
import { type Place, placeOf } from "./places.ts";
import { telegramPart } from "./settings.ts";
import { shownIn } from "./shown.ts";
import { nameOf, type Speaker, saidBy, speakerOf } from "./speaker.ts";
import { tellReply, tellSentence } from "./tell.ts";

/** Messages that belong together, the first one first; silent when the bot was not spoken to. */
export async function hearMessages(door: Door, messages: readonly Message[]): Promise<void> {
  const [message] = messages;
  if (message?.from === undefined) return;
  const speaker = speakerOf(message.from, message.sender_chat);
  const place = await placeOf(door.records, message, speaker.id);
  const { setAside } = telegramPart(await door.bot.settings(place.community));
  const isSetAside = setAside.includes(place.conversation);
  const each = messages.flatMap((one) => heardIn(one, door.me, isSetAside) ?? []);
  // The words of an album stand under any one of its photographs.
  const heard = each.find(({ text }) => text !== "") ?? each[0];
  if (heard === undefined) return;
  if (!place.isPrivate) await door.records.spokeIn(speaker.id, place.community);
  const command = placeCommandIn(heard.command, heard.text);
  if (command !== undefined)
    return obeyPlaceCommand(door, { place, speaker, message, command, rest: heard.text });
  const text = wordsSaid(heard, place);
  const photographs = await photographsIn(door, messages, heard.quoted?.post, `telegram:${speaker.id}`);
  if (photographs.problem !== undefined) return tellSentence(door, place, message, photographs.problem);
  if (text === undefined || (text === "" && photographs.ids.length === 0 && heard.quoted === undefined))
    return;
  const said = await incoming(door, { place, speaker, message, heard, text, photographs: photographs.ids });
  const reply = await door.bot.receive(said);
  await tellReply(door, {
    place,
    person: speaker.id,
    message: said.id ?? "",
    reply,
    after: Math.max(...messages.map(({ message_id }) => message_id)),
    said: {
      by: "writing",
      message: message.message_id,
      ...(heard.inAnswerTo === undefined ? {} : { inAnswerTo: heard.inAnswerTo }),
    },
  });
}

/** The bot's name alone asks for help; so does a command nobody knows, in private or said to the bot by name. */
function wordsSaid({ text, command, quoted }: Heard, { isPrivate }: Place): string | undefined {
  if (command === undefined) return text === "" && quoted === undefined && !isPrivate ? "help" : text;
  const words = wordsOfCommand(command, text);
  if (words === undefined) return isPrivate ? "help" : undefined;
  if (words === "" && quoted === undefined) return "help";
  // "/pin" in answer to a post means the words of that post.
  return words.endsWith(":") && quoted !== undefined ? `${words} ${quoted.text}` : words;
}

interface Saying {
  readonly place: Place;
  readonly speaker: Speaker;
  readonly message: Message;
  readonly heard: Heard;
  readonly text: string;
  readonly photographs: readonly string[];
}

async function incoming(door: Door, saying: Saying): Promise<IncomingMessage> {
  const { place, speaker, message, heard, text, photographs } = saying;
  const { boards } = await shownIn(door.store, place.conversation);
  const { inAnswerTo, quoted } = heard;
  const board =
    inAnswerTo === undefined ? undefined : boards.find(({ messages }) => messages.includes(inAnswerTo));
  return {
    ...(await saidBy(door, place, speaker)),
    ...board?.saidIn,
    id: `${message.chat.id}:${message.message_id}`,
    text,
    ...(board === undefined ? {} : { case: board.case }),
    ...(quoted === undefined
      ? {}
      : { quoted: { from: `telegram:${quoted.from.id}`, name: nameOf(quoted.from), text: quoted.text } }),
    ...(photographs.length === 0 ? {} : { photographs: [...photographs] }),
  };
}
