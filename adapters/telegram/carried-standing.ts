/**
 * The bot says where a case stands when that has changed. In a message that is edited, what was said before is gone: so the standing is kept
 * with the message, and carried along for as long as the ranking is the same.
 */
import { createHash } from "node:crypto";
import { z } from "zod";
import type { Block, Reply } from "../../bot/index.ts";

export const StandingSaid = z
  .strictObject({
    /** Names the ranking it was said of. */
    ranking: z.string(),
    lead: z.string(),
    items: z
      .array(z.strictObject({ name: z.string(), probability: z.number(), words: z.string() }).readonly())
      .readonly(),
  })
  .readonly();
export type StandingSaid = z.output<typeof StandingSaid>;

/** Where the case stands as it is shown with this reply, said now or carried along; undefined when it is not. */
export function standingSaid(reply: Reply, earlier: StandingSaid | undefined): StandingSaid | undefined {
  const said = reply.blocks.find((block) => block.kind === "standing");
  if (said === undefined) return mayCarry(reply, earlier) ? earlier : undefined;
  return { ranking: nameOfRanking(reply), lead: said.lead, items: said.items };
}

/** The reply with the standing that was said before, where it asks on and the ranking has not changed since. */
export function withStanding(reply: Reply, earlier: StandingSaid | undefined): Reply {
  if (earlier === undefined || !mayCarry(reply, earlier)) return reply;
  const { lead, items } = earlier;
  const at = reply.blocks.findIndex(({ kind }) => kind === "cautions" || kind === "question");
  const standing: Block = { kind: "standing", lead, items };
  return { ...reply, blocks: [...reply.blocks.slice(0, at), standing, ...reply.blocks.slice(at)] };
}

function mayCarry(reply: Reply, earlier: StandingSaid | undefined): boolean {
  const kinds = new Set(reply.blocks.map(({ kind }) => kind));
  return kinds.has("question") && !kinds.has("standing") && earlier?.ranking === nameOfRanking(reply);
}

function nameOfRanking({ summary }: Reply): string {
  const ranking = JSON.stringify([summary.case, summary.ranking]);
  return createHash("sha256").update(ranking).digest("base64url").slice(0, 11);
}
