/** How long parts of a kind usually lay before they were fitted, as documented cars teach it, mark by mark. */
import { type LearntLead, learnLead, type PartKind } from "../../../knowledge/index.ts";
import type { PartTally } from "./observations-view.ts";

/** Fewer cars than these leave the handbook's own lead as it is (common practice, no source). */
const leastCars = 3;

/** The last mark before the car, of parts that the works made; the handbook's lead is where the learning begins. */
export function learntLeads(part: PartKind, { marks }: PartTally): readonly LearntLead[] {
  if (marks.size < leastCars) return [];
  const fromWorks = new Set(
    part.variants.filter(({ origin }) => origin === "production").map(({ id }) => id),
  );
  const seen = [...marks.values()].flat().filter(({ variant }) => fromWorks.has(variant));
  return part.features.flatMap((feature): readonly LearntLead[] => {
    if (feature.kind !== "date" || feature.before !== undefined) return [];
    const pairs = seen.filter((one) => one.feature === feature.id);
    if (pairs.length < leastCars) return [];
    const { lead, pairs: cars } = learnLead(pairs, feature.lead ?? part.lead);
    return [{ part: part.id, feature: feature.id, lead, cars }];
  });
}
