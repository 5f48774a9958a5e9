/** What a community chooses for its places on this platform: its part of the settings, under "telegram". */
import { z } from "zod";
import type { Bot, Settings } from "../../bot/index.ts";

const TelegramSettings = z
  .object({
    /** Who keeps: the chat's administrators, or only the people named. */
    keepers: z.enum(["administrators", "named"]).default("administrators"),
    /** Ids of people who are keepers beside. */
    keeperIds: z.array(z.number().int()).readonly().default([]),
    /** Where what is for the keepers goes; null: nowhere. */
    keepersPlace: z
      .object({ chat: z.number().int(), topic: z.number().int().optional() })
      .readonly()
      .nullable()
      .default(null),
    /** Conversations in which everything that is written is for the bot. */
    setAside: z.array(z.string()).readonly().default([]),
  })
  .readonly();
export type TelegramSettings = z.output<typeof TelegramSettings>;

/** This platform's part; what does not parse counts as not set. */
export function telegramPart({ platforms }: Settings): TelegramSettings {
  const read = TelegramSettings.safeParse(platforms.telegram ?? {});
  return read.success ? read.data : TelegramSettings.parse({});
}

export async function changeTelegramPart(
  bot: Bot,
  community: string,
  by: string,
  change: Partial<TelegramSettings>,
): Promise<void> {
  const settings = await bot.settings(community);
  const telegram = z.json().parse({ ...telegramPart(settings), ...change });
  await bot.changeSettings(community, by, { ...settings, platforms: { ...settings.platforms, telegram } });
}
