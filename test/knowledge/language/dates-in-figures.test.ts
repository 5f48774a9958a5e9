// Dates in the many ways they are written, and what is none though it looks like one: what may stand round them, and what may not. Common usage,
// no source; weeks are ISO 8601.
import { describe, expect, test } from "vitest";
import { formatInterval } from "../../../knowledge/calendar/date-text.ts";
import { monthInterval, monthStart } from "../../../knowledge/calendar/interval.ts";
import { findDates } from "../../../knowledge/language/date-phrases.ts";
import { type DateEra, fullYear } from "../../../knowledge/language/date-words.ts";
import { wordings } from "../../support/wordings.ts";

const era: DateEra = {
  production: { from: monthStart(1977, 1), to: monthStart(1985, 1) },
  today: monthInterval(2025, 6),
};

/** "June 1981 (month)" for every date of a text, in order. */
function said(text: string): readonly string[] {
  return findDates(text, era).map(({ interval, shape }) => `${formatInterval(interval)} (${shape})`);
}

test.each([
  ["14 March 1979 (day)", "on {14/3/79,14-3-79,14.3.79}{, it, 2 of,-ish,. so}"],
  ["June 1981 (month)", "in {1981-06,1981/06,june 81,june of 81,jun. 81}{, it, 2 of,-ish}"],
  ["October 1981 (month)", "in 1981-10"],
  ["December 1981 (month)", "in 1981-12"],
  ["November 1981 (pair)", "{,on }11/81{, it, 2 of,-ish,. so,; it, in the metal}"],
  ["March 1980 (pair)", "{date,dated,stamp,stamped,dial,says} {,in ,on the hub ,on my }3 80{, it}"],
  [
    "July 1979 (pair)",
    `{date,dated,stamp,stamped,says,reads,marked,wrote,written,pencil,pencilled}{ , in ,: ,: in }{7.79,07.79}{, it, 2 of,-ish,. so}
    {etched,punched,inked} {,on the back }7.79{, it, 2 of,-ish,. so}
    the {7.79,07.79} {,is ,was }{punched,stamped} in it
    on {7.1979,7/1979}{, it, 2 of,-ish,. so}`,
  ],
  ["October 1979 (pair)", "{says,etched,on the hub is written} 10.79"],
  ["December 1979 (pair)", "{says 12.79,etched 12.79,12.79 is stamped,12.1979}"],
  [
    "26 May to 1 June 1980 (week)",
    "{stamp,stamped,date code,punched}{ , is ,: , on the hub }2280{, it, 2 of,. so}",
  ],
  [
    "1980 to 1983 (range)",
    "{early-80s,early 80s,early to mid 80s,early to-mid 80s,early eighties,the early eighties}",
  ],
  ["1980 to 1989 (range)", "{80s,the 80s,80's,1980s,the eighties,eighties}"],
  ["1950 to 1959 (range)", "{the 50s,fifties}"],
  ["1960 to 1969 (range)", "{the 60s,sixties}"],
  ["1970 to 1979 (range)", "{the 70s,seventies}"],
  ["1990 to 1999 (range)", "{the 90s,nineties}"],
  ["1979 (short-year)", "a {79,79-ish,'79}"],
  ["January 1981 (pair)", "1/81"],
  ["December 1981 (pair)", "12/81"],
  ["23 to 29 March 1981 (week)", "13/81"],
  ["1931 to 1950 (range)", "1931 to 1950"],
  ["1940 to 1979 (range)", "1940 to 1979"],
  ["1979 to 1982 (range)", "{79/82,79-82,79 to 82}"],
  ["1979 to 1983 (range)", "{1979/83,79-83,79 to 83}"],
  ["July 1980 (month)", "july {1980,of 80}"],
  ["1981 (short-year)", "a {separate,octopus,novel,febrile,marchy,decent,augmented} 81"],
] as const)("%s", (date, table) => {
  expect(wordings(table).filter((text) => said(text).join() !== date)).toEqual([]);
});

test.each([
  ["two years that are no range", "1940 to 1980", ["1940 (year)", "1980 (year)"]],
  ["two years that are no range", "1930 to 1950", ["1930 (year)", "1950 (year)"]],
  ["two years that are no range", "1979 to 1979", ["1979 (year)", "1979 (year)"]],
  ["two years that are no range", "81 to 79", ["1981 (short-year)", "1979 (short-year)"]],
  ["months that go backwards", "june 1979 to may 1979", ["June 1979 (month)", "May 1979 (month)"]],
  ["months that go backwards", "august to may 1979", ["May 1979 (month)"]],
] as const)("%s: %s", (_, text, expected) => {
  expect(said(text)).toEqual(expected);
});

test("nothing where a figure goes on, a unit follows or things are counted", () => {
  const none = `on {14/3/79,14-3-79}{-3,.5,/2}
    {1/,2.,3-}14/3/79
    in {1981-06,1981/06}/2
    {7/16,5/32,9/64}" bolt
    7/16{inch, inch}
    {11/81,31/81}{/2,.5,-3}
    dated 3 80 mm
    it is 7.79
    {says,etched} 7.79{5,/8,.3,mm, mm,cm, kg,lb, lb,lbs, lbs,inch, inch,inches, inches}
    {stamp,stamped} 2280{/2,.5,x}
    7.1979{/2,.5}
    0/81
    79/83
    a 79 {mm,cm,kg,g,in,inch,inches,lb,lbs,oz,ft,thou,mil,bhp,mph,quid,pounds,euro,euros,screw,screws,stud,studs,bolt,bolts,of,year,years,yr,yrs,hole,holes,percent}`;
  expect(
    wordings(none)
      .filter((text) => said(text).length > 0)
      .map((text) => [text, said(text)]),
  ).toEqual([]);
});

describe("a year of two figures is completed", () => {
  const within = (from: number, to: number, today: number): DateEra => ({
    production: { from: monthStart(from, 1), to: monthStart(to, 1) },
    today: monthInterval(today, 12),
  });
  test("to the century that lies nearer to the middle of the cars' years, the earlier of two as near", () => {
    expect(fullYear("24", within(1925, 1935, 2025))).toBe(1924);
    expect(fullYear("10", within(1955, 1965, 2025))).toBe(1910);
    expect(fullYear("09", within(1955, 1965, 2025))).toBe(2009);
  });
  test("to none that has not begun", () => {
    expect(fullYear("25", within(2015, 2024, 2024))).toBe(1925);
    expect(fullYear("81", within(1930, 1940, 1950))).toBe(1981);
  });
});
