// Weeks of a tyre's date code: Sunday to Saturday, "01" being the first full calendar week of the year; the
// last week may run up to six days into the next year (49 CFR 574.5(b)(3)). It is not the ISO week: the two
// lie up to seven days apart, which is why tyres do not share iso-week.ts.
import { daysFromCivil, isoWeekday } from "./civil-day.ts";
import type { Interval } from "./interval.ts";
import { weekFrom } from "./iso-week.ts";

function firstSunday(year: number): number {
  const newYear = daysFromCivil(year, 1, 1);
  return newYear + (7 - isoWeekday(newYear));
}

/** 52 or 53: how many tyre weeks begin in the year. */
export function tyreWeeksInYear(year: number): number {
  return (firstSunday(year + 1) - firstSunday(year)) / 7;
}

/** Sunday to Saturday of a tyre week; undefined when the year has no such week. 2009, 1 begins 4 January 2009. */
export function tyreWeekInterval(year: number, week: number): Interval | undefined {
  if (!Number.isInteger(week) || week < 1 || week > tyreWeeksInYear(year)) return undefined;
  return weekFrom(firstSunday(year) + 7 * (week - 1));
}
