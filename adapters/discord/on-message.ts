/** A member's message: if it is spoken to us, a turn of its conversation; the answer goes below it, into its case's message or a thread. */
import type { Message, SendableChannels } from "discord.js";
import { type IncomingMessage, isWorthSaying } from "../../bot/index.ts";
import { sendableChannel, sendOnce } from "./channel-messages.ts";
import { sendDirectly, spokenOutlet } from "./channel-outlets.ts";
import { readCustomId } from "./custom-id.ts";
import type { Desk } from "./desk.ts";
import { escaped } from "./markdown.ts";
import { plainBody } from "./payload.ts";
import { lackingForAnswers, lackingForThreads } from "./permissions.ts";
import { takePhotographs } from "./photographs-taken.ts";
import { trouble as words } from "./phrases.ts";
import { conversationIn, type Place, personOf } from "./places.ts";
import { type Addressed, addressedTo, isHiddenFromUs, wordsOf, wordsOfPost } from "./said.ts";
import type { ServerSettings } from "./server-settings.ts";
import { show } from "./show.ts";
import { threadFrom } from "./threads.ts";
import { troubleOf } from "./trouble.ts";
import { authorOfMessage, communityOf } from "./where.ts";

export async function onMessage(desk: Desk, message: Message): Promise<void> {
  const { client, guildId } = message;
  if (!client.isReady() || message.author.bot) return;
  const settings = await desk.outlast(() =>
    desk.settings.of(guildId === null ? "home" : communityOf(guildId)),
  );
  const addressed = addressedTo(client, message, settings);
  if (addressed === undefined && isHiddenFromUs(client, message)) return sayHidden(desk, message);
  if (addressed === undefined || !desk.isNew(message.id)) return;
  const way = await desk.outlast(() => wayTo(desk, message, settings));
  if (way === undefined) return cannotAnswer(desk, message);
  const conversation = conversationIn(way.channel.id, "open", message.author.id);
  await desk.turns.run(conversation, async () => {
    try {
      await answer(desk, message, { ...way, conversation, addressed });
    } catch (failure) {
      if (troubleOf(failure) !== "lacking permission") throw failure;
      await cannotAnswer(desk, message);
    }
  });
}

/** Once a thread. */
async function sayHidden(desk: Desk, message: Message): Promise<void> {
  const channel = await sendableChannel(desk.client, message.channelId);
  if (channel === undefined) return;
  await sendOnce(channel, plainBody(escaped(words.cannotReadHere)), `h${channel.id}`, message.id);
}

interface Way {
  readonly channel: SendableChannels;
  readonly before: string | undefined;
}

interface Hearing extends Way {
  readonly conversation: string;
  readonly addressed: Addressed;
}

/** Where the answer goes; undefined when nothing can be said there. */
async function wayTo(desk: Desk, message: Message, settings: ServerSettings): Promise<Way | undefined> {
  const own = await sendableChannel(desk.client, message.channelId);
  if (own === undefined) return undefined;
  const thread =
    settings.answers === "thread" && mayBeginThread(own) ? await threadFrom(desk, message) : undefined;
  const before = thread?.lacking === undefined ? undefined : words.noThread(thread.lacking);
  return { channel: thread?.channel ?? own, before };
}

async function answer(desk: Desk, message: Message, hearing: Hearing): Promise<void> {
  const { channel, conversation, addressed } = hearing;
  const author = await authorOfMessage(desk, message);
  const taken = await takePhotographs(desk, message.attachments.values(), author.from);
  const about = await aboutOf(desk, message, conversation);
  const said: IncomingMessage = {
    ...author,
    name: author.name.slice(0, 80),
    conversation,
    id: message.id,
    text: about.text,
    isPrivate: channel.isDMBased(),
    ...(about.place?.case === undefined ? {} : { case: about.place.case }),
    ...(about.quoted === undefined ? {} : { quoted: about.quoted }),
    ...(taken.photographs.length === 0 ? {} : { photographs: [...taken.photographs] }),
  };
  const reply = await desk.receive(said);
  if (addressed === "overheard" && !isWorthSaying(reply)) return;
  const before = [...(hearing.before === undefined ? [] : [hearing.before]), ...taken.remarks];
  await show(
    desk,
    {
      conversation,
      community: author.community,
      scope: "open",
      user: message.author.id,
      from: author.from,
      asker: about.quoted?.from ?? author.from,
      reply,
      replyId: message.id,
      before: before.length === 0 ? undefined : before.map((line) => `-# ${escaped(line)}`).join("\n"),
    },
    spokenOutlet(desk, message, channel),
  );
}

interface About {
  readonly text: string;
  readonly quoted?: IncomingMessage["quoted"];
  readonly place?: Place | undefined;
}

/** A reply to a message of ours speaks of its case; a mention below another member's post asks about that post. */
async function aboutOf(desk: Desk, message: Message, conversation: string): Promise<About> {
  const { client } = message;
  const text = wordsOf(client as Message<true>["client"], message);
  if (message.reference === null) return { text };
  const referenced = await message.fetchReference().catch(() => undefined);
  if (referenced === undefined) return { text };
  if (referenced.author.id === client.user.id) {
    const place = await placeOnMessage(desk, referenced, conversation);
    return { text, place };
  }
  const post = wordsOfPost(client as Message<true>["client"], referenced);
  if (referenced.author.bot || referenced.author.id === message.author.id || post === "") return { text };
  const { author, member } = referenced;
  const name = (member?.displayName ?? author.displayName).slice(0, 80);
  return { text, quoted: { from: personOf(author.id), name, text: post } };
}

/** Our own buttons say which case a message shows. */
export async function placeOnMessage(
  desk: Desk,
  message: Message,
  conversation: string,
): Promise<Place | undefined> {
  for (const row of message.components) {
    if (!("components" in row)) continue;
    for (const component of row.components) {
      const pressed = readCustomId("customId" in component ? (component.customId ?? "") : "");
      if (pressed !== undefined) return desk.places.find(conversation, pressed.caseKey);
    }
  }
  return undefined;
}

function mayBeginThread(channel: SendableChannels): boolean {
  return !channel.isDMBased() && !channel.isThread();
}

/** Says which permissions are missing, to the one who asked; in the channel itself nothing can be said. */
async function cannotAnswer(desk: Desk, message: Message): Promise<void> {
  const channel = message.client.channels.cache.get(message.channelId) ?? null;
  const lacking = [
    ...lackingForAnswers(channel),
    ...(channel?.isThread() === true ? lackingForThreads(channel) : []),
  ];
  desk.log.warn({ channel: message.channelId, lacking }, "answer not given for want of permissions");
  if (lacking.length === 0) return;
  await sendDirectly(
    desk,
    message.author.id,
    plainBody(escaped(words.lacking([...new Set(lacking)]))),
    `l${message.id}`,
  );
}
