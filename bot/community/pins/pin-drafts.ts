/** What a pinned answer begins as: from the case in hand, from a plain question, or from what a keeper answered to a case. */
import { goals } from "../../../knowledge/index.ts";
import { assess } from "../../conversation/assess.ts";
import type { Case } from "../../conversation/case.ts";
import { verdictBlocks } from "../../conversation/saying/say-answer.ts";
import type { CommunityScene } from "../affair.ts";
import { type HandedOver, knowledgeOfPart } from "../hand-over/handed-over.ts";
import type { Pin, PinScope } from "./pin.ts";

function blankPin({ speaker, at, knowledge }: CommunityScene, text: string, scope: Partial<PinScope>): Pin {
  return {
    text,
    author: speaker.id,
    authorName: speaker.name,
    at,
    scope: {
      handbook: knowledge.handbook.cover.id,
      part: null,
      goal: null,
      built: null,
      models: [],
      trims: [],
      markets: [],
      variants: [],
      question: null,
      ...scope,
    },
    says: [],
    sources: [],
    review: null,
    stands: "standing",
    flagged: null,
  };
}

/** The keeper's words for cases of this part and goal; without words the case's own answer. Undefined: there are neither. */
export function draftFromCase(
  scene: CommunityScene,
  { facts, handbook }: Case,
  words: string | undefined,
): Pin | undefined {
  const scope = { handbook, part: facts.part, goal: facts.goal };
  if (words !== undefined) return blankPin(scene, words, scope);
  const compiled = facts.part === null ? undefined : scene.knowledge.compiled(facts.part);
  const assessed = compiled && assess(compiled, facts);
  const verdict = assessed?.identification.verdict;
  if (assessed === undefined || verdict === null || verdict === undefined || assessed.question !== null)
    return undefined;
  const text = verdictBlocks(assessed)
    .flatMap((block) => (block.kind === "text" ? [block.text] : []))
    .join(" ");
  const isKind = assessed.part.variants.some(({ id }) => id === verdict.class);
  const built = facts.car.built ?? null;
  return { ...blankPin(scene, text, { ...scope, built }), says: isKind ? [verdict.class] : [] };
}

export function draftFromQuestion(scene: CommunityScene, question: string, words: string): Pin {
  return blankPin(scene, words, { question });
}

/** The keeper's last words on it, for its part; undefined while nobody has answered. Without a part it would hold nowhere. */
export function draftFromHandedOver(scene: CommunityScene, record: HandedOver): Pin | "no part" | undefined {
  const answer = record.sayings.at(-1);
  if (record.stands !== "answered" || answer === undefined) return undefined;
  const knowledge = knowledgeOfPart(scene, record);
  if (knowledge === undefined) return "no part";
  const handbook = knowledge.handbook.cover.id;
  return blankPin(scene, answer.words, { handbook, part: record.part, goal: goals[0] });
}
