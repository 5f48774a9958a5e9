// What every reader of date marks gives back, and how years are completed: a mark often holds only the last one
// or two figures of a year, and the decade comes from the era of the car.
import { type Interval, intersect, monthInterval, yearInterval } from "../../calendar/interval.ts";
import { isoWeekInterval } from "../../calendar/iso-week.ts";

/** Forms of date marks; tables/date-mark-formats.ts shows an example of each. */
export const dateMarkForms = [
  "tyre",
  "glass-dots",
  "month-year",
  "week-year",
  "year-week",
  "day-of-year",
  "month-letter",
  "quarter",
  "day-month-year",
  "year",
  "clock",
  "dot-grid",
] as const;
export type DateMarkForm = (typeof dateMarkForms)[number];

/** One reading of a date mark: when, in which form, why. `basis` cites a source or says there is none. */
export interface DateMarkReading {
  readonly interval: Interval;
  readonly form: DateMarkForm;
  readonly why: string;
  readonly basis: string;
}

/** A reader gives all readings inside the era; it need not look at today, the front door does. */
export type DateMarkReader = (text: string, era: Interval) => readonly DateMarkReading[];

const FIRST_YEAR = 1850;
const LAST_YEAR = 2200;

/**
 * The years of the era whose last figures are `figures`: "1" gives 1971, 1981 …, "81" 1981, "1981" itself. An
 * open era is cut to 1850 to 2200.
 */
export function yearsEnding(figures: string, era: Interval): readonly number[] {
  if (!/^\d{1,4}$/.test(figures)) return [];
  const modulus = 10 ** figures.length;
  const first = Math.max(FIRST_YEAR, Math.floor(era.from / 12));
  const last = Math.min(LAST_YEAR, Math.ceil(era.to / 12));
  const years: number[] = [];
  for (let year = first; year <= last; year += 1) {
    if (year % modulus === Number(figures) && intersect(yearInterval(year), era) !== undefined)
      years.push(year);
  }
  return years;
}

/** A month of a year, or undefined when there is no such month. */
function findMonth(year: number, month: number): Interval | undefined {
  return month >= 1 && month <= 12 ? monthInterval(year, month) : undefined;
}

/** Readings of one month and the last figures of a year, one for each year of the era that fits. */
export function monthReadings(
  month: number,
  yearFigures: string,
  era: Interval,
  told: Omit<DateMarkReading, "interval">,
): readonly DateMarkReading[] {
  return yearsEnding(yearFigures, era).flatMap((year) => {
    const interval = findMonth(year, month);
    return interval === undefined ? [] : [{ ...told, interval }];
  });
}

/** Readings of one ISO week and the last figures of a year; a week the year has not is dropped. */
export function weekReadings(
  week: number,
  yearFigures: string,
  era: Interval,
  told: Omit<DateMarkReading, "interval">,
): readonly DateMarkReading[] {
  return yearsEnding(yearFigures, era).flatMap((year) => {
    const interval = isoWeekInterval(year, week);
    return interval === undefined ? [] : [{ ...told, interval }];
  });
}
