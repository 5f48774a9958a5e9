/**
 * What waits to be told on one platform in one community, oldest first. It is kept in the commit of the turn that made it, so that neither a
 * crash nor a network that is down can swallow a keeper's answer.
 */
import { z } from "zod";
import type { Notice, Settings } from "../../bot.ts";
import type { Block } from "../../reply.ts";
import type { Telling } from "../affair.ts";
import { keptRecord, type RecordChange } from "../record-change.ts";
import { recordId } from "../record-id.ts";
import { summaryBeside } from "../summary-beside.ts";
import { homeCommunity } from "../take-turn.ts";

/** A block that was made here and only waited; its shape is not asked again. */
const Blocks = z.array(z.custom<Block>((value) => typeof value === "object" && value !== null)).readonly();

const WaitingNotice = z.strictObject({
  id: z.string(),
  to: z.discriminatedUnion("audience", [
    z.strictObject({ audience: z.literal("keepers") }),
    z.strictObject({ audience: z.literal("person"), conversation: z.string(), person: z.string() }),
  ]),
  blocks: Blocks,
});

export const WaitingNotices = z.strictObject({ waiting: z.array(WaitingNotice).readonly() }).readonly();
export type WaitingNotices = z.output<typeof WaitingNotices>;

export const noticesKind = { kind: "notices", shape: WaitingNotices } as const;

/** A platform whose door has been shut for so long tells the newest ones only. */
const mostWaiting = 500;

/** The changes that put tellings where their platforms find them; `keepersMeet`: the platforms on which keepers have a place. */
export function noticeChanges(
  community: string,
  tellings: readonly Telling[],
  settings: Settings,
  source: string,
): readonly RecordChange[] {
  const byPlatform = new Map<string, z.output<typeof WaitingNotice>[]>();
  tellings.forEach((telling, at) => {
    for (const platform of platformsOf(community, telling, settings)) {
      const { blocks, ...to } = telling;
      const id = `${community}/${platform}/${recordId(source, String(at), platform)}`;
      const known = byPlatform.get(platform) ?? [];
      byPlatform.set(platform, [...known, { id, to, blocks }]);
    }
  });
  return [...byPlatform].map(([platform, notices]) => ({
    ...keptRecord(noticesKind, platform, "to be told", (before) => ({
      waiting: [...(before?.waiting ?? []), ...notices].slice(-mostWaiting),
    })),
    isAside: true,
  }));
}

/** Whoever sits at the terminal owns what is kept at home, and needs no setting to be told. */
function platformsOf(community: string, telling: Telling, { platforms }: Settings): readonly string[] {
  if (telling.audience === "keepers") {
    const places = [...Object.keys(platforms), ...(community === homeCommunity ? ["terminal"] : [])];
    return [...new Set(places)].sort();
  }
  return [platformOf(telling.conversation)];
}

/** "discord:123" belongs to discord; the terminal's one conversation is called by the platform's name. */
export function platformOf(conversation: string): string {
  return conversation.split(":", 1)[0] ?? conversation;
}

/** A notice as a door is given it. */
export function noticeOf(community: string, waiting: WaitingNotices["waiting"][number]): Notice {
  const { id, to, blocks } = waiting;
  return { id, community, to, reply: { blocks, summary: summaryBeside(undefined) } };
}
