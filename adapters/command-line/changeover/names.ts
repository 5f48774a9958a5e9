/** Variants by the names of the handbook, or by the ids of the list when there is none. */
import { oneLine } from "./one-line.ts";
import type { ChangeoverQuestion } from "./question.ts";

export function nameOf({ part }: ChangeoverQuestion, variant: string): string {
  return part?.variants.find(({ id }) => id === variant)?.name ?? oneLine(variant);
}

/** All variants of one side. */
export function sideName(question: ChangeoverQuestion, side: "old" | "new"): string {
  return question[side].map((variant) => nameOf(question, variant)).join(", ");
}
