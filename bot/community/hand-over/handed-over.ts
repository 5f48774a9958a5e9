/** A case that could not be decided, as it went to the keepers, with what they made of it. */
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
    case: z.string(),
    part: z.string().nullable(),
    /** The handbook that the part stands in; left out of those handed over before it was kept. */
    handbook: z.string().exactOptional(),
    /** Who asked, and shall hear the answer. */
    asker: z.string(),
    askerName: z.string(),
    at: z.number(),
    /** The notes of the case as they stood then. */
    notes: z.string(),
    stands: z.enum(["waiting", "asked-back", "answered", "closed"]),
    /** What keepers and the asker said about it, oldest first. */
    sayings: z.array(Saying).readonly(),
  })
  .readonly();
export type HandedOver = z.output<typeof HandedOver>;

/** The handbook of its part as it is known here; undefined: it names none, or none that serves. */
export function knowledgeOfPart(
  { loaded }: CommunityScene,
  { part, handbook }: Pick<HandedOver, "part" | "handbook">,
): Knowledge | undefined {
  return loaded.find(
    (one) =>
      findPart(one, part) !== undefined && (handbook ?? one.handbook.cover.id) === one.handbook.cover.id,
  );
}

export const handedOverKind: RecordKind<HandedOver, Map<string, HandedOver>> = {
  kind: "handed-over",
  shape: HandedOver,
  ...byId<HandedOver>(),
};
