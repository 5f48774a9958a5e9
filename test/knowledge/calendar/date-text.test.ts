import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { civilDayAt, civilFromDays } from "../../../knowledge/calendar/civil-day.ts";
import { formatInterval, parseDateText } from "../../../knowledge/calendar/date-text.ts";
import {
  containsInstant,
  dayInterval,
  intersect,
  midpoint,
  monthInterval,
  monthStart,
  yearInterval,
} from "../../../knowledge/calendar/interval.ts";

describe("intervals in months", () => {
  test("November 1981 begins at 12 × 1981 + 10 and ends where December begins", () => {
    expect(monthStart(1981, 11)).toBe(23782);
    expect(monthInterval(1981, 11)).toEqual({ from: 23782, to: monthStart(1981, 12) });
    expect(yearInterval(1981)).toEqual({ from: 23772, to: 23784 });
  });

  test("the end is excluded and touching intervals share nothing", () => {
    expect(containsInstant(yearInterval(1981), monthStart(1982, 1))).toBe(false);
    expect(containsInstant(yearInterval(1981), monthStart(1981, 1))).toBe(true);
    expect(intersect(yearInterval(1981), yearInterval(1982))).toBeUndefined();
    expect(intersect(yearInterval(1981), monthInterval(1981, 3))).toEqual(monthInterval(1981, 3));
    expect(midpoint(yearInterval(1981))).toBe(23778);
  });

  test("a day ends exactly where the next begins", () => {
    fc.assert(
      fc.property(fc.integer({ min: -44_000, max: 84_000 }), (days) => {
        const one = civilFromDays(days);
        const next = civilFromDays(days + 1);
        const end = dayInterval(one.year, one.month, one.day).to;
        expect(end).toBe(dayInterval(next.year, next.month, next.day).from);
        expect(civilDayAt(dayInterval(one.year, one.month, one.day).from)).toEqual(one);
      }),
      { seed: 7 },
    );
  });
});

describe("strict date texts", () => {
  test.each([
    ["1981", "1981"],
    ["1981-11", "November 1981"],
    ["1981-11-02", "2 November 1981"],
    ["1981-W31", "27 July to 2 August 1981"],
    ["1976-W53", "27 December 1976 to 2 January 1977"],
    ["1981-W33", "10 to 16 August 1981"],
    ["2000-02-29", "29 February 2000"],
  ])("%s reads as %s", (text, words) => {
    const interval = parseDateText(text);
    expect(interval && formatInterval(interval)).toBe(words);
  });

  test.each([
    "1981-13",
    "1981-00",
    "1981-02-31",
    "1900-02-29",
    "1981-01-00",
    "1975-W53",
    "1981-W00",
    "1849",
    "2201",
    "81",
    "1981-1",
    " 1981",
    "1981-11-02T00:00",
    "",
  ])("%j is refused", (text) => {
    expect(parseDateText(text)).toBeUndefined();
  });

  test("the borders of the years are 1850 and 2200", () => {
    expect(parseDateText("1850")).toEqual(yearInterval(1850));
    expect(parseDateText("2200-12")).toEqual(monthInterval(2200, 12));
  });

  test("no text makes the reader throw", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = parseDateText(text);
        expect(read === undefined || read.from < read.to).toBe(true);
      }),
      { seed: 3 },
    );
  });
});

describe("intervals in words", () => {
  test.each([
    [{ from: monthStart(1980, 9), to: monthStart(1981, 4) }, "September 1980 to March 1981"],
    [{ from: monthStart(1980, 9), to: monthStart(1980, 12) }, "September to November 1980"],
    [{ from: monthStart(1971, 1), to: monthStart(1975, 1) }, "1971 to 1974"],
    [{ from: monthStart(1971, 1), to: Number.POSITIVE_INFINITY }, "from 1971"],
    [{ from: dayInterval(1981, 2, 15).from, to: Number.POSITIVE_INFINITY }, "from 15 February 1981"],
    [{ from: Number.NEGATIVE_INFINITY, to: monthStart(1985, 9) }, "before September 1985"],
    [{ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }, "any time"],
    [
      { from: dayInterval(1981, 9, 8).from, to: dayInterval(1981, 12, 20).to },
      "8 September to 20 December 1981",
    ],
    [{ from: dayInterval(1981, 9, 8).from, to: dayInterval(1981, 9, 8).from }, "8 September 1981"],
    [{ from: monthStart(1981, 9) + 0.51, to: monthStart(1981, 9) + 0.52 }, "16 September 1981"],
  ])("%j reads as %s", (interval, words) => {
    expect(formatInterval(interval)).toBe(words);
  });

  test("every day comes back from its own words", () => {
    fc.assert(
      fc.property(fc.integer({ min: -43_000, max: 84_000 }), (days) => {
        const { year, month, day } = civilFromDays(days);
        const pad = (value: number) => String(value).padStart(2, "0");
        const interval = parseDateText(`${year}-${pad(month)}-${pad(day)}`);
        const words = interval === undefined ? "" : formatInterval(interval);
        expect(words).toMatch(new RegExp(`^${day} [A-Z][a-z]+ ${year}$`));
      }),
      { seed: 11 },
    );
  });
});
