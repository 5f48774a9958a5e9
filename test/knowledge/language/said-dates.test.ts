// Dates as people say them, form by form: which months each leaves open. Common usage, no source; weeks are ISO 8601.
import { describe, expect, test } from "vitest";
import { formatInterval } from "../../../knowledge/calendar/date-text.ts";
import { monthInterval, monthStart } from "../../../knowledge/calendar/interval.ts";
import { findDates } from "../../../knowledge/language/date-phrases.ts";
import { type DateEra, fullYear } from "../../../knowledge/language/date-words.ts";
import { partOfDecade, partOfYear } from "../../../knowledge/language/parts-of-year.ts";

const era: DateEra = {
  production: { from: monthStart(1977, 1), to: monthStart(1985, 1) },
  today: monthInterval(2025, 6),
};

/** "June 1981 (month)" for every date of a text, in order. */
function said(text: string): readonly string[] {
  return findDates(text, era).map(({ interval, shape }) => `${formatInterval(interval)} (${shape})`);
}

const forms: readonly (readonly [string, readonly string[]])[] = [
  ["1981-11-02", ["2 November 1981 (day)"]],
  ["2 november 1981", ["2 November 1981 (day)"]],
  ["2nd of november 81", ["2 November 1981 (day)"]],
  ["2nd nov '81", ["2 November 1981 (day)"]],
  ["12-nov-81", ["12 November 1981 (day)"]],
  ["3rd nov, 1981", ["3 November 1981 (day)"]],
  ["november 2, 1981", ["2 November 1981 (day)"]],
  ["nov 22nd 1981", ["22 November 1981 (day)"]],
  ["november 1st '81", ["1 November 1981 (day)"]],
  ["14/3/79", ["14 March 1979 (day)"]],
  ["14.3.1979", ["14 March 1979 (day)"]],
  ["3-14-79", ["14 March 1979 (day)"]],
  ["5/4/79", ["5 April 1979 (day)"]],
  ["31/11/79", []],
  ["14/3-79", []],
  ["1981w31", ["27 July to 2 August 1981 (week)"]],
  ["1981-w31", ["27 July to 2 August 1981 (week)"]],
  ["week 31 81", ["27 July to 2 August 1981 (week)"]],
  ["wk31/81", ["27 July to 2 August 1981 (week)"]],
  ["week no. 31 of 1981", ["27 July to 2 August 1981 (week)"]],
  ["week number 31, year 81", ["27 July to 2 August 1981 (week)"]],
  ["31st week of 1981", ["27 July to 2 August 1981 (week)"]],
  ["32nd week 81", ["3 to 9 August 1981 (week)"]],
  ["week 54 81", ["1981 (short-year)"]],
  ["may to august 1979", ["May to August 1979 (range)"]],
  ["nov 79 to feb 80", ["November 1979 to February 1980 (range)"]],
  ["nov 1979 - feb 1980", ["November 1979 to February 1980 (range)"]],
  ["august through october of 1979", ["August to October 1979 (range)"]],
  ["june or july 79", ["June to July 1979 (range)"]],
  ["june 1981", ["June 1981 (month)"]],
  ["june '81", ["June 1981 (month)"]],
  ["jun. 81", ["June 1981 (month)"]],
  ["june of 81", ["June 1981 (month)"]],
  ["sept 81", ["September 1981 (month)"]],
  ["september, 1981", ["September 1981 (month)"]],
  ["about june 1981", ["May to July 1981 (month)"]],
  ["circa june 1981", ["May to July 1981 (month)"]],
  ["early june 1981", ["June 1981 (month)"]],
  ["1981-06", ["June 1981 (month)"]],
  ["1981/06", ["June 1981 (month)"]],
  ["79 to 81", ["1979 to 1981 (range)"]],
  ["between '79 and '81", ["1979 to 1981 (range)"]],
  ["1979-81", ["1979 to 1981 (range)"]],
  ["79/80", ["1979 to 1980 (range)"]],
  ["late 79 or early 80", ["September 1979 to April 1980 (range)"]],
  ["mid-79 until mid-80", ["May 1979 to August 1980 (range)"]],
  ["11/81", ["November 1981 (pair)"]],
  ["5 / 80", ["May 1980 (pair)"]],
  ["31/81", ["27 July to 2 August 1981 (week)"]],
  ["11/1981", ["November 1981 (pair)"]],
  ["dated 3 80", ["March 1980 (pair)"]],
  ["stamped: 12 80", ["December 1980 (pair)"]],
  ["stamped 7.79", ["July 1979 (pair)"]],
  ["11.79 punched in it", ["November 1979 (pair)"]],
  ["etched in the corner: 12.80", ["December 1980 (pair)"]],
  ["hub stamped 0479", ["April 1979 (pair)"]],
  ["hub face stamped 2280", ["26 May to 1 June 1980 (week)"]],
  ["7.1979", ["July 1979 (pair)"]],
  ["early 1980", ["January to April 1980 (season)"]],
  ["mid 1980", ["May to August 1980 (season)"]],
  ["late '79", ["September to December 1979 (season)"]],
  ["late in 79", ["September to December 1979 (season)"]],
  ["summer of 80", ["June to August 1980 (season)"]],
  ["winter 80", ["November 1980 to February 1981 (season)"]],
  ["the end of 1980", ["September to December 1980 (season)"]],
  ["the first half of 1980", ["January to June 1980 (season)"]],
  ["q3 1980", ["July to September 1980 (season)"]],
  ["early 80s", ["1980 to 1983 (range)"]],
  ["the 1970s", ["1970 to 1979 (range)"]],
  ["late seventies", ["1976 to 1979 (range)"]],
  ["the mid-eighties", ["1983 to 1986 (range)"]],
  ["1980", ["1980 (year)"]],
  ["about 1980", ["1979 to 1981 (year)"]],
  ["an 81", ["1981 (short-year)"]],
  ["'79", ["1979 (short-year)"]],
];

test.each(forms)("%s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test("a figure with a unit, a sign of a list or a thing counted is no date", () => {
  for (const text of [
    "81 mm",
    "81mm wide",
    "80 cm",
    "1180 mm",
    "1980 grams",
    "79 kg",
    "81 inches",
    '79"',
    "81%",
    "80 screws",
    "80 years ago",
    "81 bhp",
    "#79",
    "a79",
    "79.5",
    "4,79",
    "1979,5",
    "8 by 79",
    "4 x 79",
    "7/16 inch",
    "1/79 inch",
    "a 13",
    "in 2031 mm",
  ]) {
    expect([text, said(text)]).toEqual([text, []]);
  }
});

test("two dates of one text are told apart and stand in order", () => {
  expect(said("built november 1981, glass week 31 81, sold in 1995")).toEqual([
    "November 1981 (month)",
    "27 July to 2 August 1981 (week)",
    "1995 (year)",
  ]);
  const [first] = findDates("built november 1981", era);
  expect(first).toMatchObject({ start: 6, end: 19, text: "november 1981" });
});

test("no text has more than forty dates of one form looked at", () => {
  expect(findDates("1981 ".repeat(90), era)).toHaveLength(40);
  expect(findDates("1981 ".repeat(40), era)).toHaveLength(40);
});

describe("a year of two figures", () => {
  test("is the one nearest to the cars' years, never one to come", () => {
    expect(
      ["81", "'81", "05", "24", "26", "30", "99", "00"].map((figures) => fullYear(figures, era)),
    ).toEqual([1981, 1981, 2005, 2024, 1926, 1930, 1999, 2000]);
    expect(
      fullYear("31", { ...era, production: { from: monthStart(2010, 1), to: monthStart(2020, 1) } }),
    ).toBe(1931);
    expect(fullYear("1979", era)).toBe(1979);
  });
  test("that is this year's may be", () => {
    const lately = {
      production: { from: monthStart(2015, 1), to: monthStart(2024, 1) },
      today: monthInterval(2025, 6),
    };
    expect([fullYear("25", lately), fullYear("26", lately)]).toEqual([2025, 1926]);
  });
  test("by itself is one of about the cars' years, within twenty years of them", () => {
    expect(["a 58", "a 57", "a 56", "a 04", "a 05", "a 06"].map((text) => said(text).length)).toEqual([
      1, 1, 1, 1, 1, 0,
    ]);
  });
});

describe("parts of a year", () => {
  const months = (piece: string): readonly [number, number] => {
    const interval = partOfYear(piece, 1980);
    return [(interval?.from ?? 0) - monthStart(1980, 1) + 1, (interval?.to ?? 0) - monthStart(1980, 1)];
  };
  test.each([
    ["very early", 1, 3],
    ["q1", 1, 3],
    ["first quarter of", 1, 3],
    ["very late", 10, 12],
    ["q4", 10, 12],
    ["last quarter of", 10, 12],
    ["fourth quarter of", 10, 12],
    ["early to mid", 1, 6],
    ["the first half of", 1, 6],
    ["mid to late", 7, 12],
    ["the second half of", 7, 12],
    ["early", 1, 4],
    ["the beginning of", 1, 4],
    ["start of", 1, 4],
    ["middle of", 5, 8],
    ["late", 9, 12],
    ["the end of", 9, 12],
    ["q2", 4, 6],
    ["second quarter of", 4, 6],
    ["q3", 7, 9],
    ["third quarter of", 7, 9],
    ["spring", 3, 5],
    ["easter", 3, 5],
    ["summer", 6, 8],
    ["autumn", 9, 11],
    ["fall", 9, 11],
    ["winter", 11, 14],
    ["christmas", 12, 12],
    ["sometime", 1, 12],
  ] as const)("%s: months %i to %i", (piece, first, last) => {
    expect(months(piece)).toEqual([first, last]);
  });
  test("of a decade overlap by a year or so, because people do", () => {
    const years = (piece: string | undefined) => {
      const interval = partOfDecade(piece, 1970);
      return [(interval?.from ?? 0) / 12, (interval?.to ?? 0) / 12];
    };
    expect(["early", "mid", "late", undefined].map(years)).toEqual([
      [1970, 1974],
      [1973, 1977],
      [1976, 1980],
      [1970, 1980],
    ]);
  });
});
