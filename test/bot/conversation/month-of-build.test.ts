// A month of build that is said without its year.
import { expect, test } from "vitest";
import { withMonthOfBuild } from "../../../bot/conversation/month-of-build.ts";
import { type CarFinding, monthInterval, parseDateText } from "../../../knowledge/index.ts";

const inYear = (year: number): CarFinding => ({
  about: "built",
  interval: { from: 12 * year, to: 12 * year + 12 },
  words: String(year),
});
const month = (text: string) => {
  const interval = parseDateText(text);
  if (interval === undefined) throw new Error(`${text} is no date`);
  return interval;
};
const builtIn = (findings: readonly CarFinding[]) =>
  findings.flatMap((one) => (one.about === "built" ? [one.interval] : []))[0];

test.each([
  ["it's a 77, I think built in March", "1977-03"],
  ["1977 car, finished sometime in may", "1977-05"],
  ["a 77, left the works about sept.", "1977-09"],
])("%s: the month belongs to the year told beside it", (text, expected) => {
  expect(builtIn(withMonthOfBuild(text, [inYear(1977)], undefined))).toEqual(month(expected));
});

test.each([["actually it was march"], ["March, I think"], ["built in march"]])(
  "%s: the month belongs to the year told before, and corrects the month told before",
  (text) => {
    expect(builtIn(withMonthOfBuild(text, [], month("1977")))).toEqual(monthInterval(1977, 3));
    expect(builtIn(withMonthOfBuild(text, [], month("1977-07")))).toEqual(monthInterval(1977, 3));
  },
);

test.each([
  ["it may be"],
  ["not built in march"],
  ["we march on"],
  ["built in march 78"],
  ["painted in march"],
])("%s: no month of the build is said without its year", (text) => {
  expect(withMonthOfBuild(text, [], month("1977"))).toEqual([]);
});

test("A month that two years could hold, or that no year is known for, is left alone", () => {
  expect(withMonthOfBuild("built in march", [], { from: 12 * 1977, to: 12 * 1979 })).toEqual([]);
  expect(withMonthOfBuild("built in march", [], { from: 12 * 1970, to: 12 * 1980 })).toEqual([]);
  expect(withMonthOfBuild("built in march", [], undefined)).toEqual([]);
});

test("Of a model year, which begins in August before, a month of spring is told and a month of autumn is not", () => {
  const modelYear: CarFinding = {
    about: "model-year",
    year: 1980,
    interval: { from: 12 * 1979 + 7, to: 12 * 1981 },
    words: "1980 model",
  };
  expect(builtIn(withMonthOfBuild("1980 model, built in march", [modelYear], undefined))).toEqual(
    monthInterval(1980, 3),
  );
  expect(withMonthOfBuild("1980 model, built in october", [modelYear], undefined)).toEqual([modelYear]);
});
