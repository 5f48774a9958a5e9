// Weeks by ISO 8601: they begin on Monday, and week 1 is the one that holds 4 January (ISO 8601:2000, 5.2.3).
// Late December can belong to the next year's week 1, early January to the last year's week 52 or 53.
import { civilFromDays, daysFromCivil, isoWeekday } from "./civil-day.ts";
import { dayStart, type Interval } from "./interval.ts";

/** A day named by ISO year, week and weekday (Monday 1 to Sunday 7). */
export interface IsoWeekDay {
  readonly year: number;
  readonly week: number;
  readonly weekday: number;
}

function firstMonday(isoYear: number): number {
  const fourth = daysFromCivil(isoYear, 1, 4);
  return fourth - isoWeekday(fourth) + 1;
}

/** 52 or 53: how many ISO weeks the year has. */
export function weeksInIsoYear(isoYear: number): number {
  return (firstMonday(isoYear + 1) - firstMonday(isoYear)) / 7;
}

/** Seven days from a day number, as an interval in months. */
export function weekFrom(days: number): Interval {
  const first = civilFromDays(days);
  const next = civilFromDays(days + 7);
  return {
    from: dayStart(first.year, first.month, first.day),
    to: dayStart(next.year, next.month, next.day),
  };
}

/** Monday to Sunday of an ISO week; undefined when that year has no such week (1975-W53, week 0). */
export function isoWeekInterval(isoYear: number, week: number): Interval | undefined {
  if (!Number.isInteger(week) || week < 1 || week > weeksInIsoYear(isoYear)) return undefined;
  return weekFrom(firstMonday(isoYear) + 7 * (week - 1));
}

/** The ISO week in which a calendar day lies; 1985, 4, 12 gives 1985-W15-5. */
export function isoWeekOf(year: number, month: number, day: number): IsoWeekDay {
  const days = daysFromCivil(year, month, day);
  const candidates = [year + 1, year, year - 1];
  const isoYear = candidates.find((candidate) => firstMonday(candidate) <= days) ?? year;
  return {
    year: isoYear,
    week: Math.floor((days - firstMonday(isoYear)) / 7) + 1,
    weekday: isoWeekday(days),
  };
}
