import { expect, test } from "vitest";
import { systemClock } from "../../adapters/clock.ts";

function dayOf(text: string) {
  return systemClock(() => Date.parse(text)).today();
}

test("a day is its fraction of the month, in months since year 0", () => {
  const { from, to } = dayOf("1981-11-02T15:00:00Z");
  expect(from).toBeCloseTo(12 * 1981 + 10 + 1 / 30, 12);
  expect(to).toBeCloseTo(12 * 1981 + 10 + 2 / 30, 12);
});

test("the last day of a leap February ends where March begins", () => {
  expect(dayOf("2024-02-29T23:59:59Z").to).toBeCloseTo(12 * 2024 + 2, 12);
});
