/** What a community has set for its Discord server, under its settings' part for this platform. */
import { z } from "zod";
import type { Bot, Settings } from "../../bot/index.ts";

export const ServerSettings = z.object({
  /** An answer lives in one message that is edited, or in a thread of its own. */
  answers: z.enum(["message", "thread"]).default("message"),
  keepersChannel: z.string().nullable().default(null),
  keeperRoles: z.array(z.string()).readonly().default([]),
  /** Channels in which the bot is spoken to by whatever is said. */
  channels: z.array(z.string()).readonly().default([]),
});
export type ServerSettings = z.output<typeof ServerSettings>;

/** What holds where nothing is set. */
export const noSettings: ServerSettings = ServerSettings.parse({});

export function serverSettings(settings: Settings): ServerSettings {
  const parsed = ServerSettings.safeParse(settings.platforms.discord ?? {});
  return parsed.success ? parsed.data : noSettings;
}

export interface SettingsReader {
  of(community: string): Promise<ServerSettings>;
  change(community: string, by: string, change: (settings: Settings) => Settings): Promise<Settings>;
}

const FRESH_MILLISECONDS = 10_000;
const MOST_REMEMBERED = 1000;

/** Settings are asked for at every message that is seen, so they are remembered for some seconds; a change here shows at once. */
export function settingsReader(bot: Bot, now: () => number): SettingsReader {
  const remembered = new Map<string, { readonly at: number; readonly settings: ServerSettings }>();
  return {
    async of(community) {
      const known = remembered.get(community);
      if (known !== undefined && now() - known.at < FRESH_MILLISECONDS) return known.settings;
      const settings = serverSettings(await bot.settings(community));
      if (remembered.size >= MOST_REMEMBERED) remembered.clear();
      remembered.set(community, { at: now(), settings });
      return settings;
    },
    async change(community, by, change) {
      const before = await bot.settings(community);
      const changed = change(before);
      // Who goes on without choosing has decided nothing that the audit should tell.
      if (JSON.stringify(changed) === JSON.stringify(before)) return before;
      await bot.changeSettings(community, by, changed);
      remembered.delete(community);
      return changed;
    },
  };
}

/** The settings with another part for Discord. */
export function withServer(settings: Settings, change: Partial<ServerSettings>): Settings {
  const server = { ...serverSettings(settings), ...change };
  return {
    ...settings,
    platforms: {
      ...settings.platforms,
      discord: { ...server, keeperRoles: [...server.keeperRoles], channels: [...server.channels] },
    },
  };
}
