/**
 * What was said while nobody listened: a session that could not be resumed, a process that died, tell nothing of it. It is read from the
 * channels then, and heard as if it had just come. Presses and commands leave no trace there; Discord itself says that they failed.
 */
import { setTimeout as pause } from "node:timers/promises";
import type { Channel, Message, SendableChannels } from "discord.js";
import { conversationKind, type Version } from "../../bot/index.ts";
import type { Desk } from "./desk.ts";
import { isLater } from "./newest-seen.ts";
import { lackingForAnswers } from "./permissions.ts";
import { conversationIn, placesIn } from "./places.ts";
import { insisted, troubleOf } from "./trouble.ts";

/** So many of the newest messages of a channel are looked through. */
const MOST_MESSAGES = 50;
/** A reply that is brought to somebody later than this is no answer any more. */
const LATE_MILLISECONDS = 15 * 60_000;
/** Between two channels, so that what is said now does not wait. */
const BETWEEN_MILLISECONDS = 50;

export interface Missed {
  /** Whose channels are looked into; undefined: all. */
  readonly shard?: number;
  /** The newest message that was seen before; undefined after a start, when only channels are looked into where the bot was spoken to before. */
  readonly since: string | undefined;
  readonly hear: (message: Message) => void;
  /** Once it is aborted, no further channel is looked into. */
  readonly closing: AbortSignal;
}

/** Gives `hear` every message that nobody has heard yet, or that was taken in and not answered. */
export async function catchUp(desk: Desk, { shard, since, hear, closing }: Missed): Promise<void> {
  for (const channel of [...desk.client.channels.cache.values()]) {
    if (closing.aborted) return;
    if ((shard !== undefined && shardOf(channel) !== shard) || !mayBeReadIn(channel)) continue;
    try {
      const missed = await desk.outlast(() => missedIn(desk, channel, since));
      for (const message of missed) hear(message);
    } catch (failure) {
      desk.log.warn(
        { trouble: troubleOf(failure), channel: channel.id },
        "what was missed could not be read",
      );
    }
  }
}

/** Direct messages come by the first shard. */
function shardOf(channel: Channel): number {
  return channel.isDMBased() ? 0 : channel.guild.shardId;
}

function mayBeReadIn(channel: Channel): channel is Channel & SendableChannels {
  return channel.isSendable() && lackingForAnswers(channel).length === 0;
}

async function missedIn(
  desk: Desk,
  channel: SendableChannels,
  since: string | undefined,
): Promise<readonly Message[]> {
  const conversation = conversationIn(channel.id, "open", "");
  const history = since === undefined ? await desk.store.history(conversationKind, conversation) : [];
  const last = history.findLast(({ message }) => message !== undefined);
  const taken = since ?? laterOf(last?.message, newestThread(channel));
  if (taken === undefined || !mayHaveMore(channel, taken)) return [];
  await pause(BETWEEN_MILLISECONDS);
  const read = await insisted(() => channel.messages.fetch({ limit: MOST_MESSAGES, cache: false }));
  const messages = [...read.values()].sort((one, other) => (isLater(one.id, other.id) ? 1 : -1));
  const missed: Message[] = [];
  for (const message of messages) {
    const { id, author } = message;
    if (author.bot || desk.isKnown(id) || isAnswered(messages, id)) continue;
    const isUnshown = id === last?.message && !(await isShown(desk, conversation, last));
    if (isUnshown || isLater(id, taken)) missed.push(await withMember(message));
  }
  return missed;
}

/** A thread that we began has the id of the message it was begun from; where answers live in threads, the channel itself keeps none. */
function newestThread(channel: SendableChannels): string | undefined {
  if (!("threads" in channel)) return undefined;
  return [...channel.threads.cache.values()]
    .filter(({ ownerId, client }) => ownerId === client.user.id)
    .reduce<string | undefined>((newest, { id }) => laterOf(newest, id), undefined);
}

function laterOf(one: string | undefined, other: string | undefined): string | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return isLater(one, other) ? one : other;
}

/** What a direct channel's last message is, is told to nobody but who asks. */
function mayHaveMore(channel: SendableChannels, taken: string): boolean {
  const { lastMessageId: last } = channel;
  return channel.isDMBased() || (typeof last === "string" && !isLater(taken, last));
}

/** Below it stands what we wrote in reply, be it that it was lost. */
function isAnswered(messages: readonly Message[], id: string): boolean {
  return messages.some(
    ({ author, client, reference }) => author.id === client.user.id && reference?.messageId === id,
  );
}

/** Noted as shown, in a message of its own or in that of its case. What was taken in long ago counts as shown, wherever that was. */
async function isShown(desk: Desk, conversation: string, { message, at }: Version): Promise<boolean> {
  if (desk.clock.milliseconds() - at > LATE_MILLISECONDS) return true;
  for await (const { reply } of placesIn(desk.store, conversation)) if (reply === message) return true;
  return false;
}

/** What is read from a channel does not say what its author may do. */
async function withMember(message: Message): Promise<Message> {
  try {
    await message.guild?.members.fetch(message.author.id);
  } catch (failure) {
    // Somebody who has left is answered like anybody else.
    if (troubleOf(failure) === "other") throw failure;
  }
  return message;
}
