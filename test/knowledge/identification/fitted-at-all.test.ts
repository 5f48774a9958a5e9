// A part kind that came in mid-production and to one trim only: what is said of the cars that left the works without it.
import { describe, expect, test } from "vitest";
import { monthInterval, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import type { Goal } from "../../../knowledge/evidence/goal.ts";
import { fittedSpans } from "../../../knowledge/identification/as-built-mix.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { isFittedAtAll } from "../../../knowledge/identification/fitted-at-all.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { planQuestions } from "../../../knowledge/identification/plan-questions.ts";
import { timeGrid } from "../../../knowledge/identification/time-grid.ts";
import { nextQuestion } from "../../../knowledge/questions/next-question.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledFrom, sees } from "../../support/worked-examples.ts";

const handbook = smallHandbook({
  features: [stateFeature("edge", ["square", "round"])],
  variants: [
    variant("first", {
      origin: "production",
      fitted: [{ from: "1979-05", to: "1980-03", start: "about", end: "exact", trims: ["s"] }],
      tells: { edge: { square: "always" } },
    }),
    variant("second", {
      origin: "production",
      fitted: [{ from: "1980-04", to: "1981-12", start: "exact", end: "exact", trims: ["s"] }],
      tells: { edge: { round: "always" } },
    }),
    variant("copy", { origin: "reproduction", sold: [{ from: "1990", to: "2010" }] }),
  ],
  cars: {
    trims: ["s", "plain"].map((id) => ({
      id,
      name: id,
      also: [],
      from: "1977-01",
      to: "1981-12",
      models: ["shrike"],
    })),
  },
});
const compiled = compiledFrom(handbook);
const asked = (goal: Goal, car: CarDescription, reports = [sees("edge", "square")]) =>
  identify(compiled, { car, goal, reports });
const before = { built: monthInterval(1977, 6), trim: "s" };
const within = { built: monthInterval(1979, 11), trim: "s" };
const plain = { built: monthInterval(1979, 11), trim: "plain" };

describe("a car from before the first period, or of a trim that never had the part", () => {
  test.each([
    ["before", before],
    ["plain", plain],
  ])("should have none of them, and nothing is asked to find out which (%s)", (_, car) => {
    expect(asked("what-should-it-have", car)).toMatchObject({ ranking: [], classes: [], verdict: null });
    const { table } = planQuestions(compiled, { car, goal: "what-should-it-have", reports: [] });
    expect(nextQuestion(table).question).toBeNull();
  });
  test.each([
    ["before", before],
    ["plain", plain],
  ])("has no works part that is right for it, whatever is seen (%s)", (_, car) => {
    const { classes, kindItWasBuiltWith } = asked("right-for-car", car);
    expect(classes.map((one) => one.class)).not.toContain("as-built");
    expect(classes.map((one) => one.class)).not.toContain("right-kind-replaced");
    expect(kindItWasBuiltWith).toBe(0);
    expect(classes[0]?.class).toBe("other-year-or-model");
    expect(classes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
  });
});

test("a car from within the periods is answered as ever", () => {
  expect(asked("what-should-it-have", within).verdict?.class).toBe("first");
  expect(asked("right-for-car", within).kindItWasBuiltWith).toBeGreaterThan(0.8);
});

test("a car whose trim or date is not known may have had it, and a loose part has no car", () => {
  expect(asked("what-should-it-have", { built: within.built }).classes).not.toEqual([]);
  expect(asked("what-should-it-have", {}).classes).not.toEqual([]);
  expect(carGround(compiled, { isLoosePart: true }).isFitted).toBe(true);
});

test("the border lies where one car in twenty had it by the dates: three months before a start known about, a week into an exact end", () => {
  // Φ(−1.6449) = .05: 1.6449 deviations of 2 months, of half a month.
  const spans = fittedSpans(compiled.part);
  const at = (instant: number) => isFittedAtAll(timeGrid({ from: instant, to: instant }), spans);
  const [start, end] = [yearInterval(1979).from + 4, yearInterval(1982).from];
  expect([at(start - 3.3), at(start - 3.28)]).toEqual([false, true]);
  expect([at(end + 0.81), at(end + 0.83)]).toEqual([true, false]);
});

test("of a year half of which lies within the periods half the cars may have had it", () => {
  expect(carGround(compiled, { built: yearInterval(1979), trim: "s" }).isFitted).toBe(true);
  expect(carGround(compiled, { built: yearInterval(1978), trim: "s" }).isFitted).toBe(false);
});
