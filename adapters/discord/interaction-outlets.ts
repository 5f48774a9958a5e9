/**
 * The ways out over an interaction. Its token lasts fifteen minutes; when it is gone, what all may read goes out by the bot's own
 * token, and what only one person sees cannot go out at all.
 */
import {
  type ChatInputCommandInteraction,
  type MessageComponentInteraction,
  type MessageContextMenuCommandInteraction,
  MessageFlags,
  type ModalSubmitInteraction,
} from "discord.js";
import { editMessage, type Posted, sendableChannel, sendOnce, takeButtonsOff } from "./channel-messages.ts";
import type { Desk } from "./desk.ts";
import type { Body } from "./payload.ts";
import type { Outlet } from "./show.ts";
import { insisted, troubleOf } from "./trouble.ts";

type Commanded = ChatInputCommandInteraction | MessageContextMenuCommandInteraction | ModalSubmitInteraction;
type PressedOrFilled = MessageComponentInteraction | ModalSubmitInteraction;

/** Nobody can be told any more: what was said is kept, and the next press shows it. */
export class NoWayOutError extends Error {}

/** Where a reply was deferred, it is the message. */
export function deferredOutlet(desk: Desk, interaction: Commanded, scope: "open" | "private"): Outlet {
  async function post(body: Body): Promise<Posted> {
    try {
      const message = await insisted(() => interaction.editReply(body()));
      return { channel: interaction.channelId ?? message.channelId, message: message.id };
    } catch (failure) {
      return byOwnToken(desk, interaction, scope, body, failure);
    }
  }
  return {
    mayEdit: () => false,
    edit: async () => undefined,
    post,
    aside: post,
    async whisper(body) {
      if (interaction.ephemeral === true) return post(body);
      await insisted(() => interaction.deleteReply()).catch((failure: unknown) => {
        if (troubleOf(failure) === "other") throw failure;
      });
      return followPrivately(interaction, body);
    },
  };
}

/** Where a button was pressed, its message is edited. */
export function pressedOutlet(
  desk: Desk,
  interaction: PressedOrFilled,
  scope: "open" | "private",
  pressedKey: string,
): Outlet {
  const { message, channelId } = interaction;
  const own: Posted | undefined =
    message === null ? undefined : { channel: channelId ?? "", message: message.id };
  const isCopy = message?.flags.has(MessageFlags.Ephemeral) === true && scope === "open";

  async function editOwn(body: Body): Promise<Posted | undefined> {
    if (own === undefined) return undefined;
    try {
      await insisted(() => interaction.editReply(body()));
      return own;
    } catch (failure) {
      const trouble = troubleOf(failure);
      if (trouble === "message gone") return undefined;
      if (scope === "private" || (trouble !== "token gone" && trouble !== "lacking permission"))
        throw failure;
      return (await editMessage(desk.client, own, body)) ? own : undefined;
    }
  }

  return {
    mayEdit: (_, key) => key === pressedKey,
    async edit(place, body) {
      if (scope === "private" || own === undefined || place.message === own.message) return editOwn(body);
      const isThere = await editMessage(desk.client, place, body);
      await clearAway(desk, interaction, own, isCopy);
      return isThere ? { channel: place.channel, message: place.message } : undefined;
    },
    async post(body) {
      if (scope === "private") return followPrivately(interaction, body);
      return byOwnToken(desk, interaction, scope, body, undefined);
    },
    aside: (body) => followPrivately(interaction, body),
    whisper: (body) => followPrivately(interaction, body),
  };
}

/** A copy that only one person saw has done its work; an older message of the case loses its buttons. */
async function clearAway(
  desk: Desk,
  interaction: PressedOrFilled,
  own: Posted,
  isCopy: boolean,
): Promise<void> {
  if (!isCopy) return takeButtonsOff(desk.client, own);
  try {
    await insisted(() => interaction.deleteReply());
  } catch (failure) {
    if (troubleOf(failure) === "other") throw failure;
  }
}

/** What has followed an interaction, by its words: an interaction's own messages have no nonce, and a turn may be tried again. */
const followed = new WeakMap<object, Map<string, Posted>>();

export function followPrivately(interaction: Commanded | PressedOrFilled, body: Body): Promise<Posted> {
  return followOnce(interaction, () => ({
    ...body(),
    flags: MessageFlags.Ephemeral | MessageFlags.SuppressEmbeds,
  }));
}

function followOpenly(interaction: Commanded | PressedOrFilled, body: Body): Promise<Posted> {
  return followOnce(interaction, body);
}

async function followOnce(
  interaction: Commanded | PressedOrFilled,
  body: () => Parameters<(Commanded | PressedOrFilled)["followUp"]>[0] & { readonly content: string },
): Promise<Posted> {
  const already = followed.get(interaction) ?? new Map<string, Posted>();
  followed.set(interaction, already);
  const { content } = body();
  const before = already.get(content);
  if (before !== undefined) return before;
  const message = await insisted(() => interaction.followUp(body()));
  const posted = { channel: interaction.channelId ?? message.channelId, message: message.id };
  already.set(content, posted);
  return posted;
}

/** By the bot's own token; `failure` is why the interaction's was not used, and is thrown when there is no other way. */
async function byOwnToken(
  desk: Desk,
  interaction: Commanded | PressedOrFilled,
  scope: "open" | "private",
  body: Body,
  failure: unknown,
): Promise<Posted> {
  const trouble = failure === undefined ? undefined : troubleOf(failure);
  const isTokenAtFault = trouble === undefined || trouble === "token gone" || trouble === "message gone";
  if (!isTokenAtFault) throw failure;
  if (scope === "private") throw new NoWayOutError("the interaction's token is gone");
  const channel = await sendableChannel(desk.client, interaction.channelId ?? "");
  if (channel === undefined) {
    if (trouble === undefined) return followOpenly(interaction, body);
    throw new NoWayOutError("the channel is gone");
  }
  try {
    return await sendOnce(channel, body, interaction.id);
  } catch (refused) {
    if (trouble === undefined && troubleOf(refused) === "lacking permission")
      return followOpenly(interaction, body);
    throw refused;
  }
}
