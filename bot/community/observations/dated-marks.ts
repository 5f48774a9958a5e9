/** Date marks seen on cars of which build date and history are known: the pairs from which the usual lead of a mark is learnt. */
import type { DocumentedPair, Interval } from "../../../knowledge/index.ts";
import type { Observation } from "./observation.ts";

export interface DatedMark extends DocumentedPair {
  /** Id of the feature read, and of the likeliest kind of the part. */
  readonly feature: string;
  readonly variant: string;
}

/** A mark or a build date known no closer than a year teaches next to nothing of months, and costs much. */
const widestMonths = 12;

/** Of a car documented from new or with one owner, or a part that a keeper has ruled to be as built; of others none. */
export function datedMarks({ saw, kinds, isRuledAsBuilt }: Observation): readonly DatedMark[] {
  const { built, isLoosePart } = saw.car;
  const [first] = kinds;
  const isKnown = isRuledAsBuilt || saw.grade === "documented-from-new" || saw.grade === "one-owner";
  if (!isKnown || isLoosePart === true || first === undefined || built === undefined || !isClose(built))
    return [];
  const marks = new Map<string, DatedMark>();
  for (const { feature, value } of saw.reports) {
    // A later report of the same mark corrects the earlier one; a mark that can be read in two ways tells no lead.
    marks.delete(feature);
    if (value.kind !== "date" || value.readings.length !== 1) continue;
    const [mark] = value.readings.map(({ interval }) => interval);
    if (mark !== undefined && isClose(mark))
      marks.set(feature, { feature, variant: first.variant, mark, built });
  }
  return [...marks.values()];
}

function isClose({ from, to }: Interval): boolean {
  return to > from && to - from <= widestMonths;
}
