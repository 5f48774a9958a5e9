/** The permissions this door needs, the link that asks for exactly them, and the words for what is missing. */
import {
  type Channel,
  type Client,
  OAuth2Scopes,
  PermissionFlagsBits,
  PermissionsBitField,
} from "discord.js";
import { permissionWords } from "./phrases.ts";

const needed = [
  "ViewChannel",
  "SendMessages",
  "SendMessagesInThreads",
  "CreatePublicThreads",
  "AttachFiles",
  "ReadMessageHistory",
  "PinMessages",
] as const;
type Needed = (typeof needed)[number];

/** The link with which whoever manages a server invites the bot. */
export function inviteLink(client: Client<true>): string {
  return client.generateInvite({
    scopes: [OAuth2Scopes.Bot, OAuth2Scopes.ApplicationsCommands],
    permissions: needed.map((name) => PermissionFlagsBits[name]),
  });
}

const forThreads: readonly Needed[] = ["CreatePublicThreads", "SendMessagesInThreads"];
const forAnswers: readonly Needed[] = ["ViewChannel", "SendMessages", "AttachFiles", "ReadMessageHistory"];
const forThreadAnswers: readonly Needed[] = [
  "ViewChannel",
  "SendMessagesInThreads",
  "AttachFiles",
  "ReadMessageHistory",
];

/** Names of what is missing for answering in a channel, as Discord's settings page has them. */
export function lackingForAnswers(channel: Channel | null): readonly string[] {
  return lackingOf(channel, channel?.isThread() === true ? forThreadAnswers : forAnswers);
}

export function lackingForThreads(channel: Channel | null): readonly string[] {
  return lackingOf(channel, forThreads);
}

export function lackingForPins(channel: Channel | null): readonly string[] {
  return lackingOf(channel, ["PinMessages"]);
}

function lackingOf(channel: Channel | null, names: readonly Needed[]): readonly string[] {
  if (channel === null || channel.isDMBased()) return [];
  const { me } = channel.guild.members;
  const has = me === null ? new PermissionsBitField() : channel.permissionsFor(me);
  return names
    .filter((name) => !has.has(PermissionFlagsBits[name]))
    .map((name) => permissionWords[name] ?? name);
}
