/** The bot for one door: what it hears goes through `receiver`, and the rest is read from and kept in the community's memory. */
import type { Bot, NoticeOutcome } from "./bot.ts";
import { ledgerStep } from "./community/ledger.ts";
import { noticesKind, WaitingNotices } from "./community/notices/notices.ts";
import { inTurn, waitingOn } from "./community/notices/waiting-on.ts";
import { whySettled } from "./community/phrases/keepers.ts";
import { servingIn, settingsId, settingsIn, settingsKind } from "./community/settings-record.ts";
import { suggestions } from "./community/suggestions.ts";
import { receiver, type Surroundings } from "./receive.ts";

export function openBot(surroundings: Surroundings): Bot {
  const { store, clock, memories, platform } = surroundings;
  const nextOf = inTurn();
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
      const { toTell, toNobody } = await waitingOn(store, platform);
      for (const id of toNobody) await settle(id, "gone");
      return nextOf(toTell, limit);
    },
    noticeSettled: settle,
  };

  async function settle(id: string, outcome: NoticeOutcome): Promise<void> {
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
  }
}
