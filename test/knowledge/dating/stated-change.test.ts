import { expect, test } from "vitest";
import { statedChange } from "../../../knowledge/dating/stated-change.ts";
import { FittedPeriod } from "../../../knowledge/handbook/variant-schema.ts";

const period = (from: string, to: string, end: "exact" | "about" | "rough" = "about"): FittedPeriod =>
  FittedPeriod.parse({ from, to, start: end, end });

test("two periods that meet give both ends, as sure as they are written", () => {
  expect(statedChange([period("1977", "1979-05", "exact")], [period("1979-07", "1981", "rough")])).toEqual({
    ends: [
      { at: 12 * 1979 + 5, deviation: 1.5 },
      { at: 12 * 1979 + 6, deviation: 8 },
    ],
  });
});
test("an end known to the year only is no surer than four months, to the day surer than one", () => {
  const stated = statedChange([period("1977", "1979", "about")], [period("1980-01-05", "1981", "exact")]);
  expect(stated?.ends.map(({ deviation }) => deviation)).toEqual([4, 1]);
});
test("periods that overlap give the middle and the overlap", () => {
  const stated = statedChange([period("1977", "1979-06")], [period("1979-03", "1981-12")]);
  expect(stated).toEqual({ ends: [{ at: 12 * 1979 + 4, deviation: 3 }], overlap: 4 });
});
test("of several periods the last end and the first start count", () => {
  const stated = statedChange(
    [period("1977", "1978-02"), period("1978-04", "1979-05")],
    [period("1979-08", "1981"), period("1979-07", "1980")],
  );
  expect(stated?.ends.map(({ at }) => at)).toEqual([12 * 1979 + 5, 12 * 1979 + 6]);
});
test("a variant that was never fitted states nothing", () => {
  expect(statedChange([], [period("1979", "1980")])).toBeUndefined();
});
