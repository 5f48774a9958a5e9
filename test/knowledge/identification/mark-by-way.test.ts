// What one date mark says of each way in which the part can have come to the car, by the formulas of the identification method, section 5.
import { expect, test } from "vitest";
import {
  type Interval,
  monthInterval,
  monthStart,
  yearInterval,
} from "../../../knowledge/calendar/interval.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { dateLikelihood, marksAmong } from "../../../knowledge/identification/date-likelihood.ts";
import { leadAtMost } from "../../../knowledge/identification/lead-time.ts";
import { dateFeature, smallHandbook, variant } from "../../support/small-handbook.ts";
import { compiledFrom, reads } from "../../support/worked-examples.ts";

const compiled = compiledFrom(
  smallHandbook({
    features: [dateFeature("cast")],
    variants: [
      variant("first", {
        origin: "production",
        fitted: [{ from: "1977-01", to: "1981-12" }],
        sold: [{ from: "1979", to: "1988" }],
      }),
      variant("old-stock", { origin: "service", sold: [{ from: "1977", to: "1978" }] }),
      variant("copy", {
        origin: "reproduction",
        sold: [
          { from: "1996", to: "1996" },
          { from: "2001", to: "2003" },
        ],
      }),
      variant("stranger", { origin: "other-maker", sold: [{ from: "1985", to: "1986" }] }),
    ],
  }),
);
const built = monthInterval(1980, 3);
const ground = carGround(compiled, { built });
const era = { from: monthStart(1975, 1), to: monthStart(2021, 1) };
const lead = { median: 2, sigma: 0.7 };

/** How much of a span of months a reading takes, a billionth at least. */
function share({ from, to }: Interval, span: Interval): number {
  return Math.max(1e-9, (Math.min(to, span.to) - Math.max(from, span.from)) / (span.to - span.from));
}
function over(interval: Interval, spans: readonly Interval[]): number {
  const whole = spans.reduce((sum, span) => sum + span.to - span.from, 0);
  return spans.reduce((sum, span) => sum + ((span.to - span.from) / whole) * share(interval, span), 0);
}
/** The lead before cars built evenly over these months, quarter by quarter of a month or month by month. */
function beforeCar(interval: Interval, cars: Interval, step: number): number {
  const times = Array.from(
    { length: Math.round((cars.to - cars.from) / step) },
    (_, index) => cars.from + (index + 0.5) * step,
  );
  const into = times.map(
    (time) => leadAtMost(lead, time - interval.from) - leadAtMost(lead, time - interval.to),
  );
  return into.reduce((sum, chance) => sum + chance, 0) / times.length;
}
const years = (from: number, to: number): Interval => ({
  from: monthStart(from, 1),
  to: monthStart(to + 1, 1),
});
const middle = (built.from + built.to) / 2;

const ways: readonly (readonly [string, (interval: Interval) => number])[] = [
  ["first:works", (interval) => beforeCar(interval, built, 0.25)],
  ["first:used", (interval) => beforeCar(interval, years(1977, 1981), 1)],
  ["first:service", (interval) => over(interval, [{ from: middle - 3, to: monthStart(1989, 1) }])],
  // Its sale was over: whatever was left on the shelf was marked while it lasted.
  [
    "old-stock:service",
    (interval) => over(interval, [{ from: monthStart(1977, 1) - 3, to: monthStart(1979, 1) }]),
  ],
  ["copy:reproduction", (interval) => over(interval, [years(1996, 1996), years(2001, 2003)])],
  ["stranger:other-maker", (interval) => over(interval, [years(1985, 1986)])],
  ["kin-of:first", (interval) => share(interval, era)],
  ["kin-of:copy", (interval) => share(interval, era)],
  ["kin-of-nothing", (interval) => share(interval, era)],
];

test.each([
  ["just before the car was built", monthInterval(1980, 1)],
  ["long before it", monthInterval(1977, 5)],
  ["while the service part was sold", yearInterval(1985)],
  ["while the copy was sold", yearInterval(2002)],
])(
  "a mark of %s weighs for each way what was made for it then: right 96 times of 100, else anywhere in the era",
  (_, interval) => {
    const marks = marksAmong(
      compiled,
      beliefOf(compiled, { built }, [reads("cast", interval.from, interval.to)]).facts,
    );
    if (!marks) throw new Error("the mark was read");
    const likelihood = dateLikelihood(compiled, ground, marks);
    for (const [id, chance] of ways) {
      const expected = 0.96 * chance(interval) + 0.04 * share(interval, era);
      const found = likelihood[compiled.space.ids.indexOf(id)] ?? Number.NaN;
      expect([id, found / expected]).toEqual([id, expect.closeTo(1, 6)]);
    }
  },
);

test("a mark of no year that anything was made in leaves a trace of chance to every way, never none", () => {
  const far = { from: monthStart(2400, 1), to: monthStart(2400, 2) };
  const marks = marksAmong(compiled, beliefOf(compiled, { built }, [reads("cast", far.from, far.to)]).facts);
  if (!marks) throw new Error("the mark was read");
  for (const chance of dateLikelihood(compiled, ground, marks)) expect(chance).toBeGreaterThanOrEqual(1e-12);
  expect(marksAmong(compiled, [])).toBeUndefined();
});
