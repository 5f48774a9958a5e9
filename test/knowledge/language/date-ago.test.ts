// When something was seen, in the words people use for it.
import { expect, test } from "vitest";
import { formatInterval } from "../../../knowledge/calendar/date-text.ts";
import { dayInterval } from "../../../knowledge/calendar/interval.ts";
import { dateAgo } from "../../../knowledge/language/date-ago.ts";

const inMarch = dayInterval(2026, 3, 2);

test.each([
  ["i saw it today", "2 March 2026"],
  ["yesterday", "1 March 2026"],
  ["two days ago", "28 February 2026"],
  ["at a meet last month", "February 2026"],
  ["a month ago", "February 2026"],
  ["four months ago", "November 2025"],
  ["this year", "2026"],
  ["last year", "2025"],
  ["3 years ago", "2023"],
  ["last summer", "June to August 2025"],
  ["last winter", "November 2025 to February 2026"],
  ["this summer", "June to August 2025"],
  ["this month", "March 2026"],
  ["12 days ago", "18 February 2026"],
  ["an hour or a day ago", "1 March 2026"],
  ["ten years ago", "2016"],
  ["60 years ago", "1966"],
])("On 2 March 2026 “%s” is %s", (words, expected) => {
  const interval = dateAgo(words, inMarch);
  expect(interval === undefined ? undefined : formatInterval(interval)).toBe(expected);
});

test("A week is no one day: last week is any of the thirteen days before yesterday's end, a week ago within three days", () => {
  const day = (month: number, date: number) => dayInterval(2026, month, date);
  expect(dateAgo("last week", inMarch)).toEqual({ from: day(2, 17).from, to: day(3, 1).to });
  expect(dateAgo("one week ago", inMarch)).toEqual({ from: day(2, 20).from, to: day(2, 26).to });
  expect(dateAgo("two weeks ago", inMarch)).toEqual({ from: day(2, 13).from, to: day(2, 19).to });
  for (const words of ["last weekend", "the other day", "the other week"])
    expect(dateAgo(words, inMarch)).toEqual({ from: day(2, 17).from, to: day(3, 1).to });
  for (const words of ["this week", "this weekend"])
    expect(dateAgo(words, inMarch)).toEqual({ from: day(2, 24).from, to: day(3, 2).to });
});

test("A winter that has begun ends today, for nobody saw anything after it", () => {
  expect(dateAgo("this winter", dayInterval(2026, 12, 24))).toEqual({
    from: 12 * 2026 + 11 - 1,
    to: dayInterval(2026, 12, 24).to,
  });
  const firstOfJune = dayInterval(2026, 6, 1);
  expect(dateAgo("this summer", firstOfJune)).toEqual(firstOfJune);
});

test.each([
  ["a few years ago"],
  ["a couple of months ago"],
  ["ages ago"],
  ["61 years ago"],
  ["some years ago"],
  ["100 years ago"],
  ["0 days ago"],
  ["once upon a time"],
])("“%s” is not guessed at", (words) => {
  expect(dateAgo(words, inMarch)).toBeUndefined();
});
