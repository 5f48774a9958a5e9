/**
 * The bot says where a case stands when that has changed. In a message that is edited, what was said before is gone: so the standing
 * is carried along for as long as the ranking is the same.
 */
import type { Block, Reply } from "../../bot/index.ts";

/** The reply with the standing of an earlier one, where it asks on and the ranking has not changed since. */
export function withStandingOf(earlier: Reply, reply: Reply): Reply {
  const standing = earlier.blocks.find(({ kind }) => kind === "standing");
  if (standing === undefined || !mayCarry(earlier, reply)) return reply;
  const at = reply.blocks.findIndex(({ kind }) => kind === "cautions" || kind === "question");
  const blocks: readonly Block[] = [...reply.blocks.slice(0, at), standing, ...reply.blocks.slice(at)];
  return { ...reply, blocks };
}

/** Whether a reply says itself where its case stands. */
export function saysStanding({ blocks }: Reply): boolean {
  return blocks.some(({ kind }) => kind === "standing");
}

export function mayCarry(earlier: Reply, reply: Reply): boolean {
  const asksOn = reply.blocks.some(({ kind }) => kind === "question") && !saysStanding(reply);
  return asksOn && JSON.stringify(earlier.summary.ranking) === JSON.stringify(reply.summary.ranking);
}
