// Published week dates: ISO 8601:2000 5.2.3 and days on which Python, R ISOweek, coreutils and luxon agree.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { civilFromDays, daysFromCivil, isCivilDay } from "../../../knowledge/calendar/civil-day.ts";
import { dayInterval } from "../../../knowledge/calendar/interval.ts";
import { isoWeekInterval, isoWeekOf, weeksInIsoYear } from "../../../knowledge/calendar/iso-week.ts";

const PUBLISHED: readonly (readonly [string, string])[] = [
  ["1985-04-12", "1985-15-5"], // the example of ISO 8601:2000, 5.2.3
  ["2006-12-31", "2006-52-7"],
  ["2012-12-31", "2013-1-1"],
  ["2013-12-30", "2014-1-1"],
  ["2014-12-29", "2015-1-1"],
  ["2000-01-02", "1999-52-7"],
  ["1995-01-21", "1995-3-6"],
  ["1968-12-30", "1969-1-1"],
  ["1971-01-03", "1970-53-7"],
  ["1976-12-31", "1976-53-5"],
  ["1977-01-01", "1976-53-6"],
  ["1977-01-03", "1977-1-1"],
  ["1978-01-01", "1977-52-7"],
  ["1979-12-31", "1980-1-1"],
  ["1982-01-03", "1981-53-7"],
  ["1985-09-01", "1985-35-7"],
  ["2005-01-01", "2004-53-6"],
  ["2008-12-29", "2009-1-1"],
  ["2010-01-03", "2009-53-7"],
];

function parts(text: string): [number, number, number] {
  const [year, month, day] = text.split("-").map(Number);
  return [year ?? 0, month ?? 0, day ?? 0];
}

describe("ISO weeks", () => {
  test.each(PUBLISHED)("%s is the ISO week day %s", (day, week) => {
    const found = isoWeekOf(...parts(day));
    expect(`${found.year}-${found.week}-${found.weekday}`).toBe(week);
  });

  test("the years of 1950 to 2000 with 53 weeks are the nine that three libraries list", () => {
    const long = Array.from({ length: 51 }, (_, index) => 1950 + index).filter(
      (year) => weeksInIsoYear(year) === 53,
    );
    expect(long).toEqual([1953, 1959, 1964, 1970, 1976, 1981, 1987, 1992, 1998]);
    expect(weeksInIsoYear(2015)).toBe(53);
  });

  test("a week that its year has not is refused, on both sides of the range", () => {
    expect(isoWeekInterval(1975, 53)).toBeUndefined();
    expect(isoWeekInterval(1976, 53)).toBeDefined();
    expect(isoWeekInterval(1976, 54)).toBeUndefined();
    expect(isoWeekInterval(1976, 0)).toBeUndefined();
    expect(isoWeekInterval(1976, 1.5)).toBeUndefined();
  });

  test("week 31 of 1981 runs from 27 July to 2 August", () => {
    expect(isoWeekInterval(1981, 31)).toEqual({
      from: dayInterval(1981, 7, 27).from,
      to: dayInterval(1981, 8, 2).to,
    });
  });

  test("every day lies in the week that is named for it", () => {
    fc.assert(
      fc.property(fc.integer({ min: -44_000, max: 84_000 }), (days) => {
        const { year, month, day } = civilFromDays(days);
        const named = isoWeekOf(year, month, day);
        const week = isoWeekInterval(named.year, named.week);
        const single = dayInterval(year, month, day);
        expect(week).toBeDefined();
        expect(week?.from).toBeLessThanOrEqual(single.from);
        expect(week?.to).toBeGreaterThanOrEqual(single.to);
      }),
      { seed: 1981 },
    );
  });
});

describe("counting days", () => {
  test("a day number and its calendar day are inverse, and the day exists", () => {
    fc.assert(
      fc.property(fc.integer({ min: -800_000, max: 800_000 }), (days) => {
        const { year, month, day } = civilFromDays(days);
        expect(isCivilDay(year, month, day)).toBe(true);
        expect(daysFromCivil(year, month, day)).toBe(days);
      }),
      { seed: 1970 },
    );
  });

  test("the epoch is day 0 and 29 February exists in 2000 but not in 1900", () => {
    expect(daysFromCivil(1970, 1, 1)).toBe(0);
    expect(isCivilDay(2000, 2, 29)).toBe(true);
    expect(isCivilDay(1900, 2, 29)).toBe(false);
  });
});
