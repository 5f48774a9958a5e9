// What the car alone says: build dates, trims, yearly production, replaced parts, sales and mountings.
import { describe, expect, test } from "vitest";
import { monthInterval, monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { type CompiledPart, compilePart } from "../../../knowledge/identification/compiled-part.ts";
import { pseudoCounts, sharesOf } from "../../../knowledge/identification/frequency-row.ts";
import { replacedShare } from "../../../knowledge/identification/prior.ts";
import { timeGrid } from "../../../knowledge/identification/time-grid.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom } from "../../support/worked-examples.ts";

function prior(compiled: CompiledPart, car: CarDescription): (id: string) => number {
  const { prior: all } = carGround(compiled, car);
  return (id) => all[compiled.space.ids.indexOf(id)] ?? Number.NaN;
}

describe("the instants of a build date", () => {
  test("are quarter months in a month, months in a year, and one in a day", () => {
    expect([...timeGrid(monthInterval(1980, 5)).times]).toEqual(
      [0.125, 0.375, 0.625, 0.875].map((part) => monthStart(1980, 5) + part),
    );
    expect(timeGrid(yearInterval(1980)).times).toHaveLength(12);
    expect(timeGrid({ from: 23_764, to: 23_764.03 }).times).toHaveLength(1);
  });
  test("weigh by the production of their year", () => {
    const span = { from: yearInterval(1979).from, to: yearInterval(1980).to };
    const { weights } = timeGrid(
      span,
      new Map([
        [1979, 100],
        [1980, 300],
      ]),
    );
    expect(weights.slice(0, 12).reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(0.25, 12);
  });
  test("of a year without a figure weigh as the mean year, and evenly where nothing was made", () => {
    const span = { from: yearInterval(1979).from, to: yearInterval(1980).to };
    expect(timeGrid(span, new Map([[1979, 100]])).weights[20]).toBeCloseTo(1 / 24, 12);
    const [known, other] = [
      [1979, 100],
      [1981, 300],
    ] as const;
    expect(timeGrid(span, new Map([known, other])).weights[20]).toBeCloseTo(200 / (12 * 300), 12);
    expect(
      timeGrid(
        span,
        new Map([
          [1979, 0],
          [1980, 0],
        ]),
      ).weights[0],
    ).toBeCloseTo(1 / 24, 12);
  });
});

test("a build date with an open end reaches to the end of production", () => {
  const { built } = carGround(compiledExample(), { built: { from: monthStart(1980, 1), to: Infinity } });
  expect(built).toEqual({ from: monthStart(1980, 1), to: monthStart(1982, 1) });
  const before = carGround(compiledExample(), { built: { from: -Infinity, to: monthStart(1979, 1) } });
  expect(before.built).toEqual({ from: monthStart(1977, 1), to: monthStart(1979, 1) });
  expect(carGround(compiledExample(), { built: { from: -Infinity, to: Infinity } }).built.from).toBeLessThan(
    Infinity,
  );
});

describe("the frequencies of a handbook", () => {
  const shares = (claimed: Record<string, string> | undefined, states = ["p", "q", "r"]): readonly number[] =>
    [...sharesOf(pseudoCounts(states, claimed))].map((share) => Math.round(share * 1e6) / 1e6);
  test("are even where it is silent", () => {
    expect(shares(undefined)).toEqual([0.333333, 0.333333, 0.333333]);
  });
  test("leave the rest of a word to the states not named, each at least .01", () => {
    expect([...pseudoCounts(["p", "q", "r"], { p: "usually" })]).toEqual([7.7, 1.15, 1.15]);
    const always = pseudoCounts(["p", "q", "r", "s"], { p: "always" });
    expect((always[1] ?? 0) / (always[0] ?? 1)).toBeCloseTo(0.01 / 0.98, 12);
  });
  test("take the larger worth of two words in a row", () => {
    const total = pseudoCounts(["p", "q"], { p: "usually", q: "rarely" }).reduce(
      (sum, alpha) => sum + alpha,
      0,
    );
    expect(total).toBeCloseTo(12, 12);
  });
  test("start a count from 1/K, or from the word, and leave the others of it to the rest", () => {
    expect([...pseudoCounts(["p", "q"], { p: "17 of 20" })]).toEqual([17.5, 3.5]);
    expect([...pseudoCounts(["p", "q"], { p: "usually, 17 of 20" })]).toEqual([7.7 + 17, 2.3 + 3]);
    expect([...pseudoCounts(["p", "q", "r"], { p: "3 of 10", q: "5 of 10" })].map((a) => a - 1 / 3)).toEqual([
      3, 5, 2,
    ]);
  });
  test("are never 0 and never 1, whatever was counted", () => {
    const [seen, unseen] = shares({ p: "10000 of 10000" }, ["p", "q"]);
    expect(seen).toBeLessThan(1);
    expect(unseen).toBeGreaterThan(0.004);
  });
});

describe("a part that may have been replaced", () => {
  test.each([
    ["history-unknown", 0.2],
    ["one-owner", 0.0804598],
    ["documented-from-new", 0.0243902],
    ["known-replaced", 0.98],
  ] as const)("of a car %s was replaced with chance %f where r is .2", (grade, expected) => {
    expect(replacedShare(0.2, grade)).toBeCloseTo(expected, 6);
  });
  test("is a service part only while such parts were sold after the car was built", () => {
    const compiled = compiledExample();
    expect(prior(compiled, { built: monthInterval(1981, 6) })("b:service")).toBeGreaterThan(0);
    const late = prior(compiled, { built: monthInterval(1989, 6) });
    expect(late("b:service")).toBe(0);
    expect(late("c:reproduction") / (late("a:used") + late("b:used"))).toBeCloseTo(0.25 / 0.3, 10);
  });
  test("that was only ever a service part is never impossible", () => {
    const compiled = compiledFrom(
      smallHandbook({
        features: [stateFeature("fixing", ["two", "three"])],
        variants: [
          variant("works", { origin: "production", fitted: [{ from: "1977-01", to: "1981-12" }] }),
          variant("counter", { origin: "service", sold: [{ from: "1978", to: "1979" }] }),
        ],
      }),
    );
    expect(prior(compiled, { built: monthInterval(1981, 6) })("counter:service")).toBeGreaterThan(0);
  });
  test("was replaced for certain where the handbook knows no production variant", () => {
    const compiled = compiledFrom(
      smallHandbook({
        features: [stateFeature("fixing", ["two", "three"])],
        variants: [variant("one", { origin: "reproduction" }), variant("other", { origin: "other-maker" })],
      }),
    );
    const { prior: all } = carGround(compiled, {});
    expect(all.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
    expect(prior(compiled, {})("one:reproduction")).toBeCloseTo((0.97 * 0.25) / 0.35, 10);
  });
});

describe("what the works fitted", () => {
  const compiled = compiledFrom(
    smallHandbook({
      features: [stateFeature("fixing", ["two", "three"])],
      variants: [
        variant("plain", {
          origin: "production",
          mounting: "two-hole",
          fitted: [{ from: "1977-01", to: "1981-12", trims: ["base"] }],
        }),
        variant("bright", {
          origin: "production",
          mounting: "three-hole",
          fitted: [{ from: "1977-01", to: "1981-12", trims: ["s"], markets: ["home"] }],
        }),
        variant("copy", { origin: "reproduction", mounting: "two-hole" }),
        variant("adapted", { origin: "reproduction", mounting: "three-hole" }),
      ],
      rest: {
        mountings: ["two-hole", "three-hole"].map((id) => ({ id, name: id, description: id })),
        fits: [{ part: "three-hole", car: "two-hole", fit: "with-work", how: "drill one more hole" }],
      },
    }),
  );
  test("follows the trim and the market, as far as they are known", () => {
    const base = carGround(compiled, { trim: "base" }).mix.average;
    expect(base[0]).toBeCloseTo(0.99, 10);
    expect(carGround(compiled, {}).mix.average[0]).toBeCloseTo(0.5, 10);
    expect(carGround(compiled, { trim: "s", market: "export" }).mix.average[1]).toBeCloseTo(0.5, 10);
  });
  test("decides what a car is drilled for: parts that fit directly are found more often", () => {
    const base = prior(compiled, { trim: "base" });
    // The base car has two holes in .99 of cases: .99·.2 + .01·1 for the three-hole part, .99·1 + .01·.02 for the other.
    expect(base("adapted:reproduction") / base("copy:reproduction")).toBeCloseTo(0.208 / 0.9902, 10);
    const loose = prior(compiled, { trim: "base", isLoosePart: true });
    expect(loose("adapted:reproduction")).toBeCloseTo(loose("copy:reproduction"), 12);
  });
  test("fades over a changeover as surely as its ends are known", () => {
    const at = (sureness: "exact" | "about" | "rough"): number => {
      const changed = compiledFrom(
        smallHandbook({
          features: [stateFeature("fixing", ["two", "three"])],
          variants: [
            variant("early", {
              origin: "production",
              fitted: [{ from: "1977-01", to: "1979-06", end: sureness }],
            }),
            variant("late", {
              origin: "production",
              fitted: [{ from: "1979-07", to: "1981-12", start: sureness }],
            }),
          ],
        }),
      );
      return carGround(changed, { built: monthInterval(1979, 9) }).mix.average[0] ?? 0;
    };
    expect(at("exact")).toBeCloseTo(0.01, 5);
    expect(at("about")).toBeGreaterThan(at("exact"));
    expect(at("rough")).toBeGreaterThan(at("about"));
    expect(at("rough")).toBeLessThan(0.5);
  });
  test("follows what sightings taught of a changeover, whatever the handbook says of its date", () => {
    const shares = { from: monthStart(1977, 1), cell: 12, new: Float64Array.from([0, 0.1, 0.7, 1, 1]) };
    const learnt = [{ part: "foot", old: "a", new: "b", shares }];
    const { handbook } = compiledExample();
    const taught = compilePart(handbook, "foot", [], learnt);
    if (!taught) throw new Error("the small handbook has a part kind named foot");
    const share = (year: number): number =>
      carGround(taught, { built: yearInterval(year) }).mix.average[1] ?? 0;
    expect(share(1978)).toBeCloseTo(0.98 * 0.1 + 0.01, 10);
    expect(share(1979)).toBeCloseTo(0.98 * 0.7 + 0.01, 10);
    expect(share(1985)).toBeCloseTo(0.98 + 0.01, 10);
  });
  test("is not changed by what was taught of another part, or of a trim that never had one of the two", () => {
    const shares = { from: monthStart(1977, 1), cell: 60, new: Float64Array.from([0.9]) };
    const taught = compilePart(
      compiled.handbook,
      "foot",
      [],
      [
        { part: "foot", old: "plain", new: "bright", shares },
        { part: "sill", old: "plain", new: "bright", shares },
      ],
    );
    if (!taught) throw new Error("the small handbook has a part kind named foot");
    expect(carGround(taught, { trim: "base" }).mix.average[0]).toBeCloseTo(0.99, 10);
    expect(carGround(taught, {}).mix.average[0]).toBeCloseTo(0.98 * 0.1 + 0.01, 10);
  });
  test("years after production is what was fitted last, not anything", () => {
    const example = compiledExample();
    const late = carGround(example, { built: monthInterval(1983, 6) }).mix.average;
    expect(late[1]).toBeGreaterThan(0.98);
  });
});
