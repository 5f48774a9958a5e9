/** Which features tell two or more variants apart, whatever has been said in the case: by information per effort. */
import { type Feature, featureById, type PartKind } from "../../knowledge/index.ts";
import { openTable } from "./assess.ts";
import type { Knowledge } from "./knowledge.ts";
import { betweenClasses, byInformationPerEffort } from "./question-worth.ts";

export interface Tell {
  readonly feature: Feature;
  readonly bits: number;
}

/** Best first; empty when the handbook tells them apart by nothing. */
export function tellsBetween(
  knowledge: Knowledge,
  part: PartKind,
  variants: readonly string[],
): readonly Tell[] {
  const compiled = knowledge.compiled(part.id);
  if (compiled === undefined) return [];
  const table = betweenClasses(openTable(compiled), variants);
  return byInformationPerEffort(table).flatMap(({ question, bits }) => {
    const feature = featureById(part, question.id);
    return feature === undefined ? [] : [{ feature, bits }];
  });
}
