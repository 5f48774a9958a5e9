/** Messages in a channel by the bot's own token: written once however often the call is repeated, edited, cleared of buttons. */
import type { Client, Message, SendableChannels } from "discord.js";
import type { Body } from "./payload.ts";
import { insisted, troubleOf } from "./trouble.ts";

export interface Posted {
  readonly channel: string;
  readonly message: string;
}

/** The channel, asked for where it is not known yet; undefined when it is gone or cannot be written to. */
export async function sendableChannel(client: Client, id: string): Promise<SendableChannels | undefined> {
  const known = client.channels.cache.get(id);
  try {
    const channel = known ?? (await insisted(() => client.channels.fetch(id)));
    return channel?.isSendable() === true ? channel : undefined;
  } catch (failure) {
    const trouble = troubleOf(failure);
    if (trouble === "channel gone" || trouble === "lacking permission") return undefined;
    throw failure;
  }
}

/** What was sent in each channel, by its nonce: Discord itself remembers a nonce for a few minutes only. */
const sent = new WeakMap<object, Map<string, Posted>>();
const MOST_REMEMBERED = 50;

/** The nonce makes a repeated call give the message that is there already. */
export async function sendOnce(
  channel: SendableChannels,
  body: Body,
  nonce: string,
  replyTo?: string,
): Promise<Posted> {
  const here = sent.get(channel) ?? new Map<string, Posted>();
  sent.set(channel, here);
  const posted = here.get(nonce) ?? (await send(channel, body, nonce, replyTo));
  here.set(nonce, posted);
  const [oldest] = here.keys();
  if (here.size > MOST_REMEMBERED && oldest !== undefined) here.delete(oldest);
  return posted;
}

async function send(
  channel: SendableChannels,
  body: Body,
  nonce: string,
  replyTo: string | undefined,
): Promise<Posted> {
  const message = await insisted<Message>(() =>
    channel.send({
      ...body(),
      nonce: nonce.slice(-25),
      enforceNonce: true,
      ...(replyTo === undefined ? {} : { reply: { messageReference: replyTo, failIfNotExists: false } }),
    }),
  );
  return { channel: message.channelId, message: message.id };
}

/** False when the message or its channel is gone. */
export async function editMessage(
  client: Client,
  { channel, message }: Posted,
  body: Body,
): Promise<boolean> {
  const place = await sendableChannel(client, channel);
  if (place === undefined) return false;
  try {
    await insisted(() => place.messages.edit(message, body()));
    return true;
  } catch (failure) {
    const trouble = troubleOf(failure);
    if (trouble === "message gone" || trouble === "channel gone") return false;
    throw failure;
  }
}

/** Takes the buttons off a message that shows a case no longer; one that is gone needs none taken off. */
export async function takeButtonsOff(client: Client, { channel, message }: Posted): Promise<void> {
  const place = await sendableChannel(client, channel);
  if (place === undefined) return;
  try {
    await insisted(() => place.messages.edit(message, { components: [], allowedMentions: { parse: [] } }));
  } catch (failure) {
    if (troubleOf(failure) === "other") throw failure;
  }
}
