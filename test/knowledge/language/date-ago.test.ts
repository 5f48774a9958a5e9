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
])("On 2 March 2026 “%s” is %s", (words, expected) => {
  const interval = dateAgo(words, inMarch);
  expect(interval === undefined ? undefined : formatInterval(interval)).toBe(expected);
});

test("A week is no one day: last week is any of the thirteen days before yesterday's end, a week ago within three days", () => {
  const day = (month: number, date: number) => dayInterval(2026, month, date);
  expect(dateAgo("last week", inMarch)).toEqual({ from: day(2, 17).from, to: day(3, 1).to });
  expect(dateAgo("one week ago", inMarch)).toEqual({ from: day(2, 20).from, to: day(2, 26).to });
});

test("A winter that has begun ends today, for nobody saw anything after it", () => {
  expect(dateAgo("this winter", dayInterval(2026, 12, 24))).toEqual({
    from: 12 * 2026 + 11 - 1,
    to: dayInterval(2026, 12, 24).to,
  });
});

test.each([
  ["a few years ago"],
  ["a couple of months ago"],
  ["ages ago"],
  ["100 years ago"],
  ["0 days ago"],
  ["once upon a time"],
])("“%s” is not guessed at", (words) => {
  expect(dateAgo(words, inMarch)).toBeUndefined();
});
