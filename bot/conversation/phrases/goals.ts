/** What a goal and the classes of its answer are called in a sentence. */
import type { Goal } from "../../../knowledge/index.ts";

/** Completes "you want to know …". */
export const goalWords: Readonly<Record<Goal, string>> = {
  "which-variant": "which kind it is",
  "right-for-car": "whether it is right for the car",
  genuine: "whether it is genuine",
  "what-should-it-have": "what the car should have",
};

export const notInHandbookWords = "something not in the handbook";

/** Our own class for the sum of "as built" and "right kind, replaced". */
export const kindItWasBuiltWithClass = "kind-it-was-built-with";
/** A part that came later is of a kind that was fitted then, which need not be the kind this one car had. */
const kindItWasBuiltWithWords = "a kind that such cars left the works with";

const classWords: Readonly<Record<string, string>> = {
  [kindItWasBuiltWithClass]: kindItWasBuiltWithWords,
  "as-built": "the one the car left the works with",
  "right-kind-replaced": "the right kind but fitted later",
  "other-year-or-model": "a works part of another year or model",
  "service-part": "a service part sold later over the counter",
  genuine: "a genuine part",
  reproduction: "a reproduction",
  "other-maker": "another maker's part",
  "not-in-the-handbook": notInHandbookWords,
};

/** The words for a class that is not a variant; undefined for a variant's id. */
export function wordsOfClass(id: string): string | undefined {
  return Object.hasOwn(classWords, id) ? classWords[id] : undefined;
}
