/** A case that could not be decided, or a question, as it went to the keepers, with what they made of it. */
import { z } from "zod";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import type { CommunityScene } from "../affair.ts";
import { byId, type RecordKind } from "../record-kind.ts";

const Saying = z.strictObject({
  by: z.string(),
  name: z.string(),
  at: z.number(),
  words: z.string(),
});

export const HandedOver = z
  .strictObject({
    conversation: z.string(),
    /** null: a question in words of its own, about no case. */
    case: z.string().nullable(),
    /** Of the case; those of earlier versions of this program do not say. */
    handbook: z.string().exactOptional(),
    part: z.string().nullable(),
    /** Who asked, and shall hear the answer. */
    asker: z.string(),
    askerName: z.string(),
    at: z.number(),
    /** The notes of the case as they stood then, or the question. */
    notes: z.string(),
    stands: z.enum(["waiting", "asked-back", "answered", "closed"]),
    /** What keepers and the asker said about it, oldest first. */
    sayings: z.array(Saying).readonly(),
  })
  .readonly();
export type HandedOver = z.output<typeof HandedOver>;

export const handedOverKind: RecordKind<HandedOver, Map<string, HandedOver>> = {
  kind: "handed-over",
  shape: HandedOver,
  ...byId<HandedOver>(),
};

/** The handbook that its part is of; undefined when none that answers here has it, or no part was named. */
export function knowledgeOfPart(
  { knowledge, loaded }: Pick<CommunityScene, "knowledge" | "loaded">,
  { handbook, part }: Pick<HandedOver, "handbook" | "part">,
): Knowledge | undefined {
  return [knowledge, ...loaded].find(
    (one) =>
      (handbook === undefined || one.handbook.cover.id === handbook) && findPart(one, part) !== undefined,
  );
}

/** Whether keepers may still say something to it. */
export function isOpen({ stands }: HandedOver): boolean {
  return stands === "waiting" || stands === "asked-back";
}
