/** Whether a message is spoken to us, and what it says. Else we are silent: members talk to each other here. */
import { type Client, GatewayIntentBits, type Message, MessageType } from "discord.js";
import type { ServerSettings } from "./server-settings.ts";

/** How a message came to be for us; undefined when it is not. */
export type Addressed = "directly" | "overheard";

export function addressedTo(
  client: Client<true>,
  message: Message,
  settings: ServerSettings,
): Addressed | undefined {
  const { author, mentions } = message;
  // Undefined when it was deleted meanwhile.
  const channel = client.channels.cache.get(message.channelId);
  const isWords = message.type === MessageType.Default || message.type === MessageType.Reply;
  if (channel === undefined || author.bot || message.webhookId !== null || !isWords) return undefined;
  if (channel.isDMBased()) return "directly";
  if (isNamed(client, message) || mentions.repliedUser?.id === client.user.id) return "directly";
  if (message.content.trim() === "" && message.attachments.size === 0) return undefined;
  const isToOthers =
    mentions.users.size > 0 || mentions.roles.size > 0 || mentions.everyone || message.reference !== null;
  if (isToOthers) return undefined;
  if (channel.isThread() && channel.ownerId === client.user.id) return "directly";
  const isListenedTo = settings.channels.includes(channel.id) && /[\p{L}\p{N}]/u.test(message.content);
  return isListenedTo ? "overheard" : undefined;
}

/** Named in the words themselves: a reply mentions its author too, and may be none to us. */
function isNamed(client: Client<true>, message: Message): boolean {
  return new RegExp(`<@!?${client.user.id}>`, "u").test(message.content);
}

/** The words without our name; other members and channels by the names people see. */
export function wordsOf(client: Client<true>, message: Message): string {
  return namesIn(client, message, message.content);
}

function namesIn(client: Client<true>, message: Message, text: string): string {
  return text
    .replaceAll(new RegExp(`<@!?${client.user.id}>[,:]?`, "gu"), " ")
    .replaceAll(/<@!?(\d+)>/gu, (whole, id: string) => message.mentions.users.get(id)?.displayName ?? whole)
    .replaceAll(/<#(\d+)>/gu, (_, id: string) => nameOfChannel(client, id))
    .replaceAll(/<a?:(\w+):\d+>/gu, "")
    .trim();
}

function nameOfChannel(client: Client, id: string): string {
  const channel = client.channels.cache.get(id);
  return channel !== undefined && "name" in channel ? `#${channel.name ?? ""}` : "";
}

/** What another's post says, for a question about it. */
export function wordsOfPost(client: Client<true>, message: Message): string {
  return namesIn(client, message, message.content);
}

/**
 * Written where we answer, and not shown to us: without the privileged intent Discord empties what is not said to us by name. Whoever writes
 * in a thread of ours does not know that.
 */
export function isHiddenFromUs(client: Client<true>, message: Message): boolean {
  const { author, content, attachments, mentions, webhookId } = message;
  const channel = client.channels.cache.get(message.channelId);
  const isOurs = channel?.isThread() === true && channel.ownerId === client.user.id;
  const isWords = message.type === MessageType.Default && !author.bot && webhookId === null;
  const isEmpty = content === "" && attachments.size === 0 && mentions.users.size === 0;
  return isOurs && isWords && isEmpty && !client.options.intents.has(GatewayIntentBits.MessageContent);
}
