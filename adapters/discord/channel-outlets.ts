/** The ways out into a channel: as a reply to a member's message, or into a thread begun for the case. */
import type { Message, SendableChannels } from "discord.js";
import { editMessage, type Posted, sendOnce } from "./channel-messages.ts";
import type { Desk } from "./desk.ts";
import type { Body } from "./payload.ts";
import { plainBody } from "./payload.ts";
import { trouble as words } from "./phrases.ts";
import type { Outlet } from "./show.ts";
import { troubleOf } from "./trouble.ts";

/**
 * In a channel for all, words edit the message of their case; where two talk alone or in a thread, the answer comes below the words.
 */
export function spokenOutlet(desk: Desk, message: Message, channel: SendableChannels): Outlet {
  const isBelow = channel.isDMBased() || channel.isThread();
  const replyTo = channel.id === message.channelId && !channel.isDMBased() ? message.id : undefined;
  const post = (body: Body) => sendOnce(channel, body, message.id, replyTo);
  return {
    mayEdit: (place) => !isBelow && place.channel === channel.id,
    async edit(place, body) {
      return (await editMessage(desk.client, place, body)) ? place : undefined;
    },
    post,
    aside: post,
    async whisper(body) {
      const posted = await sendDirectly(desk, message.author.id, body, message.id);
      if (posted === undefined)
        await sendOnce(channel, plainBody(words.inPrivate), `p${message.id}`, replyTo);
      return posted;
    },
  };
}

/** Everything goes below what stands there. */
export function threadOutlet(desk: Desk, thread: SendableChannels, user: string, nonce: string): Outlet {
  const post = (body: Body) => sendOnce(thread, body, nonce);
  return {
    mayEdit: () => false,
    edit: async () => undefined,
    post,
    aside: post,
    async whisper(body) {
      const posted = await sendDirectly(desk, user, body, nonce);
      if (posted === undefined) await sendOnce(thread, plainBody(words.inPrivate), `p${nonce}`);
      return posted;
    },
  };
}

/** Undefined when the person takes no direct messages, or is gone. */
export async function sendDirectly(
  desk: Desk,
  user: string,
  body: Body,
  nonce: string,
): Promise<Posted | undefined> {
  try {
    return await sendOnce(await desk.client.users.createDM(user), body, nonce);
  } catch (failure) {
    const trouble = troubleOf(failure);
    if (trouble === "other" || trouble === "unreachable") throw failure;
    return undefined;
  }
}
