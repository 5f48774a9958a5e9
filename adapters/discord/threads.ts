/** A thread for a case, begun from the message that asks; where it may not be begun, the answer stays in the channel and says so. */
import { ChannelType, type Message, type SendableChannels } from "discord.js";
import type { Desk } from "./desk.ts";
import { fitted } from "./markdown.ts";
import { lackingForThreads } from "./permissions.ts";
import { wordsOf } from "./said.ts";
import { insisted, troubleOf } from "./trouble.ts";

export interface ThreadBegun {
  readonly channel?: SendableChannels;
  /** The permissions for want of which there is none. */
  readonly lacking?: readonly string[];
}

const LONGEST_NAME = 90;
const DAY_IN_MINUTES = 1440;

export async function threadFrom(desk: Desk, message: Message, title?: string): Promise<ThreadBegun> {
  const { channel } = message;
  if (channel.type !== ChannelType.GuildText && channel.type !== ChannelType.GuildAnnouncement) return {};
  const lacking = lackingForThreads(channel);
  if (lacking.length > 0) return { lacking };
  const words = title ?? wordsOf(message.client, message);
  const name = fitted(words === "" ? message.author.displayName : words, LONGEST_NAME);
  try {
    if (message.thread !== null) return { channel: message.thread };
    return {
      channel: await insisted(() => message.startThread({ name, autoArchiveDuration: DAY_IN_MINUTES })),
    };
  } catch (failure) {
    const trouble = troubleOf(failure);
    desk.log.warn({ trouble }, "no thread begun");
    if (trouble === "unreachable") throw failure;
    return trouble === "lacking permission" ? { lacking: lackingForThreads(channel) } : {};
  }
}
