/** Which part, and which of its kinds, a question about time is about: named in it, or that of the case in hand. */
import { type PartKind, readMessage } from "../../../knowledge/index.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import type { CommunityScene } from "../affair.ts";
import { emptyTally, type PartTally, tallyKey } from "../observations/observations-view.ts";

export interface PartAsked {
  readonly part: PartKind;
  /** Kinds named; empty: all. */
  readonly variants: readonly string[];
}

export function partAsked(scene: CommunityScene, about: string): PartAsked | undefined {
  const { knowledge, today, conversation, speaker } = scene;
  const inHand = caseInHand(conversation, speaker.id)?.facts.part ?? null;
  const read = readMessage(about, knowledge.lexicon, { today, ...(inHand === null ? {} : { part: inHand }) });
  const named = read.variants.map(({ variant, part }) => ({ variant, part }));
  const lower = about.toLowerCase().replace(/^(?:the|a|an) /u, "");
  const byName = knowledge.handbook.parts.flatMap((part) =>
    part.variants
      .filter(({ name }) => name.toLowerCase() === lower)
      .map(({ id }) => ({ variant: id, part: part.id })),
  );
  const variants = byName.length > 0 ? byName : named;
  const part = findPart(knowledge, variants[0]?.part ?? read.parts[0]?.part ?? inHand);
  if (part === undefined) return undefined;
  return { part, variants: variants.filter((one) => one.part === part.id).map(({ variant }) => variant) };
}

export function tallyOfPart({ memory }: CommunityScene, { handbook }: Knowledge, part: PartKind): PartTally {
  const key = tallyKey({ handbook: handbook.cover.id, part: part.id });
  return memory.observations.parts.get(key) ?? emptyTally();
}
