// What the handbook says of a changeover, read off the fitted periods of the two variants.
import { parseDateText } from "../calendar/date-text.ts";
import type { FittedPeriod } from "../handbook/schema.ts";
import type { StatedChange } from "./change-priors.ts";

/** Standard deviation of a stated end, in months: to the day, to the month, "about", to the year only, doubtful. */
const DEVIATIONS = { day: 1, month: 1.5, about: 3, year: 4, rough: 8 } as const;

interface StatedEnd {
  readonly at: number;
  readonly deviation: number;
}

/**
 * The stated change from the last end of the old variant's periods and the first start of the new one's; undefined when
 * either has none. Ends that overlap give one date, half-way, and the overlap; else both ends stand for the date.
 */
export function statedChange(
  oldPeriods: readonly FittedPeriod[],
  newPeriods: readonly FittedPeriod[],
): StatedChange | undefined {
  const ends = oldPeriods.flatMap((period) => statedEnd(period.to, period.end, "to") ?? []);
  const starts = newPeriods.flatMap((period) => statedEnd(period.from, period.start, "from") ?? []);
  const last = ends.reduce<StatedEnd | undefined>(
    (most, end) => (most && most.at >= end.at ? most : end),
    undefined,
  );
  const first = starts.reduce<StatedEnd | undefined>(
    (least, start) => (least && least.at <= start.at ? least : start),
    undefined,
  );
  if (!last || !first) return undefined;
  if (first.at >= last.at) return { ends: [last, first] };
  const deviation = Math.max(last.deviation, first.deviation);
  return { ends: [{ at: (last.at + first.at) / 2, deviation }], overlap: last.at - first.at };
}

function statedEnd(text: string, sureness: FittedPeriod["end"], side: "from" | "to"): StatedEnd | undefined {
  const interval = parseDateText(text);
  if (!interval) return undefined;
  const months = interval.to - interval.from;
  const written = months > 1 ? DEVIATIONS.year : months === 1 ? DEVIATIONS.month : DEVIATIONS.day;
  const deviation = sureness === "exact" ? written : Math.max(written, DEVIATIONS[sureness]);
  return { at: interval[side], deviation };
}
