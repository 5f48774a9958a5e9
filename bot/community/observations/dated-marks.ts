/**
 * Date marks seen on parts: the pairs from which the usual lead of a mark is learnt. To the car from cars of which build date and history
 * are known; from one mark to the next from any part that carries both, for those two were made in the same works.
 */
import type { Interval } from "../../../knowledge/index.ts";
import type { Observation } from "./observation.ts";

export interface DatedMark {
  /** Id of the feature read, and of the likeliest kind of the part. */
  readonly feature: string;
  readonly variant: string;
  readonly mark: Interval;
  /** When the car was built, where it teaches how long before it the mark was made. */
  readonly built?: Interval;
}

/** A mark or a build date known no closer than a year teaches next to nothing of months, and costs much. */
const widestMonths = 12;

/** All marks of one part; none where they teach nothing: a single one without a documented car. */
export function datedMarks(observation: Observation): readonly DatedMark[] {
  const { saw, kinds } = observation;
  const [first] = kinds;
  if (first === undefined) return [];
  const built = teachingBuilt(observation);
  const marks = new Map<string, DatedMark>();
  for (const { feature, value } of saw.reports) {
    // A later report of the same mark corrects the earlier one; a mark that can be read in two ways tells no lead.
    marks.delete(feature);
    if (value.kind !== "date" || value.readings.length !== 1) continue;
    const [mark] = value.readings.map(({ interval }) => interval);
    if (mark === undefined || !isClose(mark)) continue;
    const known = built === undefined ? {} : { built };
    marks.set(feature, { feature, variant: first.variant, mark, ...known });
  }
  return built === undefined && marks.size < 2 ? [] : [...marks.values()];
}

/** The build date of a car documented from new or with one owner, or of one whose part a keeper has ruled to be as built. */
function teachingBuilt({ saw, isRuledAsBuilt }: Observation): Interval | undefined {
  const { built, isLoosePart } = saw.car;
  const isKnown = isRuledAsBuilt || saw.grade === "documented-from-new" || saw.grade === "one-owner";
  return isKnown && isLoosePart !== true && built !== undefined && isClose(built) ? built : undefined;
}

function isClose({ from, to }: Interval): boolean {
  return to > from && to - from <= widestMonths;
}
