// 49 CFR 574.5(b)(3): "01" is the first full week, Sunday to Saturday; the rule's own example is "0109".
import { describe, expect, test } from "vitest";
import { dayInterval } from "../../../knowledge/calendar/interval.ts";
import { isoWeekInterval } from "../../../knowledge/calendar/iso-week.ts";
import { tyreWeekInterval, tyreWeeksInYear } from "../../../knowledge/calendar/tyre-week.ts";

describe("tyre weeks", () => {
  test("0109 begins on Sunday 4 January 2009, as the rule says", () => {
    expect(tyreWeekInterval(2009, 1)).toEqual({
      from: dayInterval(2009, 1, 4).from,
      to: dayInterval(2009, 1, 10).to,
    });
  });

  test.each([
    [1975, 5],
    [1979, 7],
    [1980, 6],
    [1984, 1],
    [1990, 7],
    [2000, 2],
  ])("tyre week 01 of %i begins on Sunday %i January, within a week of ISO week 1", (year, day) => {
    const week = tyreWeekInterval(year, 1);
    expect(week?.from).toBe(dayInterval(year, 1, day).from);
    const iso = isoWeekInterval(year, 1);
    const apart = Math.abs((week?.from ?? 0) - (iso?.from ?? 99));
    expect(apart).toBeLessThanOrEqual(7 / 31 + 1e-9);
  });

  test("the last week may run into the next year, and the one after it is refused", () => {
    const last = tyreWeekInterval(1983, tyreWeeksInYear(1983));
    expect(last?.to).toBe(dayInterval(1984, 1, 1).from);
    const spilling = tyreWeekInterval(1979, 52);
    expect(spilling?.to).toBe(dayInterval(1980, 1, 6).from);
    expect(tyreWeekInterval(1979, 53)).toBeUndefined();
    expect(tyreWeekInterval(1979, 0)).toBeUndefined();
    expect(tyreWeeksInYear(1978)).toBe(53);
    expect(tyreWeekInterval(1978, 54)).toBeUndefined();
  });
});
