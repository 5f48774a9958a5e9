/** How long parts of a kind usually lay, mark by mark: from the last one to the car, and from each earlier one to the next. */
import {
  type DocumentedPair,
  type LearntLead,
  learnLead,
  nextMark,
  type PartKind,
} from "../../../knowledge/index.ts";
import type { DatedMark } from "./dated-marks.ts";
import type { PartTally } from "./observations-view.ts";

/** Fewer parts than these leave the handbook's own lead as it is (common practice, no source). */
const leastParts = 3;

/** Of parts that the works made; the handbook's lead, or the trade's where it has none, is where the learning begins. */
export function learntLeads(part: PartKind, { marks }: PartTally): readonly LearntLead[] {
  if (marks.size < leastParts) return [];
  const fromWorks = new Set(
    part.variants.filter(({ origin }) => origin === "production").map(({ id }) => id),
  );
  const seen = [...marks.values()].map((own) => own.filter(({ variant }) => fromWorks.has(variant)));
  return part.features.flatMap((feature): readonly LearntLead[] => {
    if (feature.kind !== "date") return [];
    const next = nextMark(part, feature);
    const pairs = seen.flatMap((own) => pairOf(own, feature.id, next));
    if (pairs.length < leastParts) return [];
    const { lead, pairs: cars } = learnLead(pairs, feature.lead ?? part.lead);
    return [{ part: part.id, feature: feature.id, lead, cars }];
  });
}

/** The mark and what was made next: the other mark of the same part, or the car. */
function pairOf(
  own: readonly DatedMark[],
  feature: string,
  next: string | undefined,
): readonly DocumentedPair[] {
  const first = own.find((one) => one.feature === feature);
  const built = next === undefined ? first?.built : own.find((one) => one.feature === next)?.mark;
  return first === undefined || built === undefined ? [] : [{ mark: first.mark, built }];
}
