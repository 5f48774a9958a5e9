/** The bot for one door: what it hears goes through `receiver`, and the rest is read from and kept in the community's memory. */
import type { Bot, Notice } from "./bot.ts";
import { ledgerStep } from "./community/ledger.ts";
import { noticeOf, noticesKind, WaitingNotices } from "./community/notices/notices.ts";
import { whySettled } from "./community/phrases/keepers.ts";
import { servingIn, settingsId, settingsIn, settingsKind } from "./community/settings-record.ts";
import { suggestions } from "./community/suggestions.ts";
import { receiver, type Surroundings } from "./receive.ts";

export function openBot(surroundings: Surroundings): Bot {
  const { store, clock, memories, platform } = surroundings;
  /** How often each that still waits was given out. */
  let givenOut: ReadonlyMap<string, number> = new Map();
  return {
    receive: receiver(surroundings),
    async settings(community) {
      return settingsIn((await memories.upToDate(community)).settings);
    },
    async changeSettings(community, by, settings) {
      const at = clock.milliseconds();
      const why = whySettled(platform);
      const change = { kind: settingsKind.kind, id: `${community}/${settingsId}`, by, at, why };
      const changed = [{ kind: settingsKind.kind, id: settingsId }];
      await store.advance(change, () => ({
        state: settings,
        outcome: null,
        alongside: [ledgerStep(community, changed, by, at, why)],
      }));
    },
    async suggest(community, typed) {
      const memory = await memories.upToDate(community);
      return suggestions(servingIn(settingsIn(memory.settings), surroundings.knowledge()), memory, typed);
    },
    async notices(limit) {
      const found: Notice[] = [];
      for await (const { id, state } of store.currents(noticesKind.kind, "")) {
        if (state === null || !id.endsWith(`/${platform}`)) continue;
        const community = id.slice(0, -platform.length - 1);
        found.push(...WaitingNotices.parse(state).waiting.map((one) => noticeOf(community, one)));
      }
      if (found.length <= limit) return found;
      const times = new Map(found.map(({ id }) => [id, givenOut.get(id) ?? 0]));
      const timesOf = ({ id }: Notice) => times.get(id) ?? 0;
      // One that cannot be told comes again after those that have not been tried so often.
      const next = found.toSorted((one, other) => timesOf(one) - timesOf(other)).slice(0, limit);
      for (const one of next) times.set(one.id, timesOf(one) + 1);
      givenOut = times;
      return next;
    },
    async noticeSettled(id, outcome) {
      // "COMMUNITY/PLATFORM/NOTICE": the record is the first two.
      const record = id.slice(0, id.lastIndexOf("/"));
      const change = {
        kind: noticesKind.kind,
        id: record,
        by: platform,
        at: clock.milliseconds(),
        why: outcome,
      };
      await store.advance(change, (state) => {
        const { waiting } =
          state === undefined || state === null ? { waiting: [] } : WaitingNotices.parse(state);
        return { state: { waiting: waiting.filter((one) => one.id !== id) }, outcome: null };
      });
    },
  };
}
