// Messages, threads and pins, with the permissions they need; an enforced nonce gives the message that is there already.
import { channelAsSent, messageAsListed } from "./as-sent.ts";
import { againstDescription } from "./published-description.ts";
import {
  type Asked,
  cannotSendToUser,
  invalidForm,
  missingAccess,
  missingPermissions,
  notYours,
  type Route,
  unknownChannel,
  unknownMessage,
} from "./routes-shape.ts";
import type { Channel, Json, Message } from "./wire-shapes.ts";
import { botPermissionsIn } from "./world.ts";
import { checked, edited, written } from "./written-messages.ts";

export const permission = {
  viewChannel: 1n << 10n,
  sendMessages: 1n << 11n,
  attachFiles: 1n << 15n,
  readHistory: 1n << 16n,
  createThreads: 1n << 35n,
  sendInThreads: 1n << 38n,
  pinMessages: 1n << 51n,
} as const;

function channelOf({ world, names }: Asked): Channel {
  const channel = world.channels.get(names[0] ?? "");
  if (channel === undefined) throw unknownChannel();
  return channel;
}

function mayWrite(asked: Asked, channel: Channel): void {
  if (channel.type === 1) {
    // A direct channel whose member does not take messages is marked so.
    if (channel.lacking !== 0n) throw cannotSendToUser();
    return;
  }
  const has = botPermissionsIn(asked.world, channel);
  if ((has & permission.viewChannel) === 0n) throw missingAccess();
  const needed = channel.type === 11 ? permission.sendInThreads : permission.sendMessages;
  if ((has & needed) === 0n) throw missingPermissions();
  if (asked.files.size > 0 && (has & permission.attachFiles) === 0n) throw missingPermissions();
}

function messageIn(asked: Asked): Message {
  const message = asked.world.messages.get(asked.names[1] ?? "");
  if (message === undefined || message.channel_id !== asked.names[0] || message.onlyFor !== undefined)
    throw unknownMessage();
  return message;
}

function create(asked: Asked): Json {
  const { world, body } = asked;
  const channel = channelOf(asked);
  mayWrite(asked, channel);
  checked(asked, "MessageCreateRequestSchema", body, body);
  const nonce = body.nonce;
  if (nonce !== undefined && String(nonce).length > 25) throw invalidForm("nonce");
  if (nonce !== undefined && body.enforce_nonce === true) {
    const made = world.messages.get(world.nonces.get(`${channel.id} ${nonce}`) ?? "");
    if (made !== undefined) return asked.shown(made);
  }
  if (channel.archived === true) channel.archived = false;
  const message = written(asked, body, {
    channel: channel.id,
    ...(channel.guild_id === undefined ? {} : { guild: channel.guild_id }),
  });
  if (nonce !== undefined) world.nonces.set(`${channel.id} ${nonce}`, message.id);
  asked.gateway.send("MESSAGE_CREATE", channel.guild_id, () => asked.shown(message));
  return asked.shown(message);
}

function change(asked: Asked): Json {
  const channel = channelOf(asked);
  mayWrite(asked, channel);
  const message = messageIn(asked);
  if (message.author.id !== asked.world.bot.id) throw notYours();
  checked(asked, "MessageEditRequestPartialSchema", asked.body, asked.body);
  edited(asked, message, asked.body);
  asked.gateway.send("MESSAGE_UPDATE", channel.guild_id, () => asked.shown(message));
  return asked.shown(message);
}

function thread(asked: Asked): Json {
  const { world, body } = asked;
  const parent = channelOf(asked);
  const has = botPermissionsIn(world, parent);
  if ((has & permission.createThreads) === 0n) throw missingPermissions();
  const message = messageIn(asked);
  // discord.js names the type too, which the message decides.
  const { type: _, ...described } = body;
  world.violations.push(...againstDescription("CreateTextThreadWithMessageRequestSchema", described));
  if (message.thread !== undefined) throw invalidForm("A thread has already been created for this message");
  message.thread = message.id;
  const made: Channel = {
    id: message.id,
    type: 11,
    name: String(body.name),
    parent_id: parent.id,
    lacking: 0n,
    ...(parent.guild_id === undefined ? {} : { guild_id: parent.guild_id }),
  };
  world.channels.set(made.id, made);
  asked.gateway.send("THREAD_CREATE", parent.guild_id, () => channelAsSent(world, made));
  return channelAsSent(world, made);
}

const mostListed = 100;

/** The newest first. */
function listed({ world, query, ...asked }: Asked): readonly Json[] {
  const channel = channelOf({ world, query, ...asked });
  const has = botPermissionsIn(world, channel);
  if (channel.type !== 1 && (has & permission.viewChannel) === 0n) throw missingAccess();
  if (channel.type !== 1 && (has & permission.readHistory) === 0n) return [];
  const limit = Number(query.get("limit") ?? 50);
  if (!(limit >= 1 && limit <= mostListed)) throw invalidForm("limit");
  return [...world.messages.values()]
    .filter(({ channel_id, onlyFor }) => channel_id === channel.id && onlyFor === undefined)
    .slice(-limit)
    .toReversed()
    .map((message) => messageAsListed(world, message));
}

export const channelRoutes: readonly Route[] = [
  { method: "GET", path: /^\/channels\/(\d+)\/messages$/u, answer: listed },
  { method: "POST", path: /^\/channels\/(\d+)\/messages$/u, answer: create },
  { method: "PATCH", path: /^\/channels\/(\d+)\/messages\/(\d+)$/u, answer: change },
  {
    method: "GET",
    path: /^\/channels\/(\d+)\/messages\/(\d+)$/u,
    answer: (asked) => {
      const has = botPermissionsIn(asked.world, channelOf(asked));
      if ((has & permission.readHistory) === 0n) throw missingPermissions();
      return asked.shown(messageIn(asked));
    },
  },
  {
    method: "DELETE",
    path: /^\/channels\/(\d+)\/messages\/(\d+)$/u,
    answer: (asked) => {
      const message = messageIn(asked);
      if (message.author.id !== asked.world.bot.id) throw missingPermissions();
      asked.world.messages.delete(message.id);
      return undefined;
    },
  },
  { method: "POST", path: /^\/channels\/(\d+)\/messages\/(\d+)\/threads$/u, answer: thread },
  {
    method: "PUT",
    path: /^\/channels\/(\d+)\/messages\/pins\/(\d+)$/u,
    answer: (asked) => {
      const has = botPermissionsIn(asked.world, channelOf(asked));
      if ((has & permission.pinMessages) === 0n) throw missingPermissions();
      messageIn(asked).pinned = true;
      return undefined;
    },
  },
  { method: "POST", path: /^\/channels\/(\d+)\/typing$/u, answer: () => undefined },
];
