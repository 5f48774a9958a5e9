/** A message, or an album as one message, to the bot and its reply back to the place. */
import type { Message } from "grammy/types";
import { type IncomingMessage, isWorthSaying, type Reply } from "../../bot/index.ts";
import { exampleOfCommand, wordsOfCommand } from "./commands.ts";
import type { Door } from "./door.ts";
import { type Heard, heardIn } from "./heard.ts";
import { photographsIn } from "./photographs-in.ts";
import { onlyWords, saidTogether } from "./phrases.ts";
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
  const example = exampleLacking(heard);
  if (example !== undefined) return tellSentence(door, place, message, saidTogether(example));
  const text = wordsSaid(heard, place);
  if (text !== undefined) await say(door, messages, { place, speaker, message, heard, text });
}

/** To the bot, and its reply to the place; what it could not be told is told instead. */
async function say(
  door: Door,
  messages: readonly Message[],
  hearing: Omit<Saying, "photographs">,
): Promise<void> {
  const { place, speaker, message, heard, text } = hearing;
  const { ids, problem } = await photographsIn(door, messages, heard.quoted?.post, `telegram:${speaker.id}`);
  if (text === "" && ids.length === 0 && heard.quoted === undefined) {
    const why = problem ?? (place.isPrivate && hasOther(message) ? onlyWords : undefined);
    return why === undefined ? undefined : tellSentence(door, place, message, why);
  }
  const said = await incoming(door, { ...hearing, photographs: ids });
  const reply = await door.bot.receive(said);
  if (heard.isOverheard === true && !isWorthSaying(reply)) return;
  await tellReply(door, {
    place,
    person: speaker.id,
    message: said.id ?? "",
    reply: withRemark(reply, problem),
    after: Math.max(...messages.map(({ message_id }) => message_id)),
    said: {
      by: "writing",
      message: message.message_id,
      ...(heard.inAnswerTo === undefined ? {} : { inAnswerTo: heard.inAnswerTo }),
    },
  });
}

/** What became of a photograph stands before what was made of the words. */
function withRemark(reply: Reply, remark: string | undefined): Reply {
  if (remark === undefined) return reply;
  return { ...reply, blocks: [{ kind: "text", tone: "aside", text: remark }, ...reply.blocks] };
}

/** What people send and the bot cannot take in; not what the platform itself tells. */
function hasOther(message: Message): boolean {
  const { voice, audio, video, video_note, animation, sticker, document, location, contact, poll } = message;
  return [voice, audio, video, video_note, animation, sticker, document, location, contact, poll].some(
    (one) => one !== undefined,
  );
}

/** The bot's name alone asks for help; so does a command nobody knows, in private or said to the bot by name. */
function wordsSaid({ text, command, isNamed, quoted }: Heard, { isPrivate }: Place): string | undefined {
  if (command === undefined) return text === "" && quoted === undefined && !isPrivate ? "help" : text;
  const words = wordsOfCommand(command, text);
  if (words === undefined) return isPrivate || isNamed === true ? "help" : undefined;
  if (words === "" && quoted === undefined) return "help";
  // "/pin" in answer to a post means the words of that post.
  return words.endsWith(":") && quoted !== undefined ? `${words} ${quoted.text}` : words;
}

/** "/answer" alone says nothing; "/pin" alone in answer to a post does. */
function exampleLacking({ text, command, quoted }: Heard): string | undefined {
  if (command === undefined || text !== "" || (quoted !== undefined && command === "pin")) return undefined;
  return exampleOfCommand(command);
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
