/** The bot for one door: what it hears goes through `receiver`, and the rest is read from and kept in the community's memory. */
import type { Bot } from "./bot.ts";
import { Settings } from "./bot.ts";
import { receiver, type Surroundings } from "./receive.ts";

/** The kind under which a community's settings are kept, one record a community. */
const settingsKind = "settings";

/** The settings of a community that has set nothing. */
export const noSettings: Settings = {
  handbooks: null,
  units: "metric",
  retentionMonths: null,
  platforms: {},
};

export function openBot(surroundings: Surroundings): Bot {
  const { store, clock } = surroundings;
  return {
    receive: receiver(surroundings),
    async settings(community) {
      const kept = await store.current(settingsKind, community);
      return kept === undefined ? noSettings : Settings.parse(kept);
    },
    async changeSettings(community, by, settings) {
      const change = { kind: settingsKind, id: community, by, at: clock.milliseconds(), why: "set" };
      await store.advance(change, () => ({ state: settings, outcome: null }));
    },
    async suggest() {
      return [];
    },
    async notices() {
      return [];
    },
    async noticeSettled() {},
  };
}
