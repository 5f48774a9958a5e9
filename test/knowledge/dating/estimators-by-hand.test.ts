// The estimators of ends and numbers, worked out by hand from their formulas, and at the borders where one is nothing or all.
import { describe, expect, test } from "vitest";
import { shortestRun, spreadQuantile } from "../../../knowledge/dating/credible-run.ts";
import { jaricRobertsEnd } from "../../../knowledge/dating/doubtful-end.ts";
import { solowEnd, straussSadlerEnd } from "../../../knowledge/dating/even-end.ts";
import { numbersBuilt } from "../../../knowledge/dating/serial-numbers.ts";
import { robertsSolowEnd } from "../../../knowledge/dating/thinning-end.ts";
import { UNITS_PER_NAT, wholeCount, wholeLogarithm } from "../../../knowledge/dating/whole-logarithm.ts";
import { granted } from "../../support/granted.ts";

describe("the end of use by Solow 1993", () => {
  // Begun at 2, four sightings up to t = 8 of T = 10, in no order.
  const end = granted(solowEnd({ places: [10, 3, 7, 5], begun: 2, looked: 12, level: 0.9 }));
  test("is t(n + 1)/n beyond the beginning, its limit t·α^(−1/n), the silence (t/T)^n", () => {
    expect(end.sightings).toBe(4);
    expect(end.estimate).toBe(2 + 8 * 1.25);
    expect(end.upper).toBeCloseTo(2 + 8 * 0.1 ** -0.25, 12);
    expect(end.silenceChance).toBeCloseTo(0.8 ** 4, 12);
  });
  test("against use that goes on has a factor of (n − 1)/((T/t)^(n − 1) − 1)", () => {
    const factor = 3 / (1.25 ** 3 - 1);
    expect(end.stillInUseFactor).toBeCloseTo(factor, 12);
    expect(end.stillInUse).toBeCloseTo(factor / (1 + factor), 12);
    expect(end.assumption).toBe(
      "use was constant to its end and every car as likely to be seen (Solow 1993)",
    );
  });
  test("has the first of its sightings for a beginning, whatever the order they are written in", () => {
    expect(solowEnd({ places: [12, 5, 2, 9], looked: 20 })).toEqual(
      solowEnd({ places: [5, 9, 12], begun: 2, looked: 20 }),
    );
    expect(granted(solowEnd({ places: [12, 5, 2, 9], looked: 20 })).upper).toBeCloseTo(
      2 + 10 * 0.05 ** (-1 / 3),
      12,
    );
  });
  test("needs two counted sightings, the last after the beginning and before one stopped looking", () => {
    expect(solowEnd({ places: [5, 9], begun: 2, looked: 20 }).ok).toBe(true);
    expect(solowEnd({ places: [9], begun: 2, looked: 20 })).toMatchObject({
      problem: { message: "it needs two sightings after the beginning of use" },
    });
    expect(solowEnd({ places: [], looked: 20 })).toMatchObject({ problem: { code: "too-few-sightings" } });
    expect(solowEnd({ places: [2, 2], begun: 2, looked: 20 })).toMatchObject({
      problem: { message: "all sightings lie at the beginning of use" },
    });
    expect(solowEnd({ places: [5, 9], begun: 2, looked: 9 })).toMatchObject({
      problem: { message: "nobody has looked beyond the last sighting" },
    });
  });
});

test("the end of use by Strauss & Sadler 1989 is (n·max − min)/(n − 1), its limit by α^(−1/(n − 1))", () => {
  const end = granted(straussSadlerEnd({ places: [10, 2, 4, 8, 12], looked: 99, level: 0.9 }));
  expect(end.sightings).toBe(5);
  expect(end.estimate).toBe((5 * 12 - 2) / 4);
  expect(end.upper).toBeCloseTo(12 + (0.1 ** -0.25 - 1) * 10, 12);
  expect(granted(straussSadlerEnd({ places: [10, 2, 4, 8, 12], looked: 99 })).upper).toBeCloseTo(
    12 + (0.05 ** -0.25 - 1) * 10,
    12,
  );
  expect(straussSadlerEnd({ places: [5, 1, 2], looked: 9 }).ok).toBe(true);
});

describe("the end of use by Jarić & Roberts 2014", () => {
  // r = .5 + 1 + .8; t_r = 8·.8 + 5·1·.2 + 1·.5·.2·0.
  const sightings = [
    { place: 10, reliability: 0.8 },
    { place: 3, reliability: 0.5 },
    { place: 7, reliability: 1 },
  ];
  const end = granted(jaricRobertsEnd({ sightings, begun: 2, looked: 12, level: 0.9 }));
  const [r, t] = [2.3, 8 * 0.8 + 5 * 0.2];
  test("is Solow's with the number and the last sighting that are to be expected", () => {
    expect(end.sightings).toBeCloseTo(r, 12);
    expect(end.estimate).toBeCloseTo(2 + (t * (r + 1)) / r, 12);
    expect(end.upper).toBeCloseTo(2 + t * 0.1 ** (-1 / r), 12);
    expect(end.silenceChance).toBeCloseTo((t / 10) ** r, 12);
    const factor = (r - 1) / ((10 / t) ** (r - 1) - 1);
    expect(end.stillInUseFactor).toBeCloseTo(factor, 12);
    expect(end.stillInUse).toBeCloseTo(factor / (1 + factor), 12);
    expect(granted(jaricRobertsEnd({ sightings, begun: 2, looked: 12 })).upper).toBeCloseTo(
      2 + t * 0.05 ** (-1 / r),
      12,
    );
  });
  test("is Solow's own, and says so, when every sighting is sure", () => {
    const sure = [10, 3, 7].map((place) => ({ place, reliability: 1 }));
    expect(jaricRobertsEnd({ sightings: sure, begun: 2, looked: 12 })).toEqual(
      solowEnd({ places: [10, 3, 7], begun: 2, looked: 12 }),
    );
    expect(end.assumption).toContain("(Jarić & Roberts 2014)");
  });
  test("has the earliest sighting for a beginning, in whatever order they are written", () => {
    const rest = [
      { place: 20, reliability: 0.9 },
      { place: 14, reliability: 0.9 },
      { place: 9, reliability: 0.9 },
    ];
    expect(jaricRobertsEnd({ sightings: [...rest, { place: 4, reliability: 0.3 }], looked: 40 })).toEqual(
      jaricRobertsEnd({ sightings: rest, begun: 4, looked: 40 }),
    );
  });
  test("is refused when nobody looked beyond the last, just there too", () => {
    const two = [4, 8, 8].map((place) => ({ place, reliability: 0.9 }));
    expect(jaricRobertsEnd({ sightings: two, begun: 0, looked: 7 })).toMatchObject({
      problem: { message: "nobody has looked beyond the last sighting" },
    });
    expect(jaricRobertsEnd({ sightings: [], looked: 7 })).toMatchObject({
      problem: { code: "too-few-sightings" },
    });
  });
});

describe("the end of use by Roberts & Solow 2003", () => {
  const places = [1, 4, 9, 10, 12];
  const end = granted(robertsSolowEnd({ places: [9, 1, 12, 4, 10], looked: 20, level: 0.9 }));
  const shape = (Math.log(11 / 2) + Math.log(11 / 3) + Math.log(11 / 8)) / 4;
  const limit = (chance: number): number => 12 + 11 / ((-Math.log(chance) / 5) ** -shape - 1);
  test("has the shape of its gaps, and limits by it", () => {
    expect(end.shape).toBeCloseTo(shape, 12);
    expect(end.upper).toBeCloseTo(limit(0.1), 9);
    expect(end.lower).toBeCloseTo(limit(0.975), 9);
    expect(end.twoSidedUpper).toBeCloseTo(limit(0.025), 9);
    expect(granted(robertsSolowEnd({ places, looked: 20 })).upper).toBeCloseTo(limit(0.05), 9);
    expect(end.silenceChance).toBeCloseTo(Math.exp(-5 * (8 / 19) ** (1 / shape)), 12);
  });
  test("is the mean of the latest ten by weights that sum to one", () => {
    expect(end.sightings).toBe(5);
    expect(end.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    const latest = places.toReversed();
    expect(end.estimate).toBeCloseTo(
      end.weights.reduce((sum, weight, index) => sum + weight * (latest[index] ?? 0), 0),
      9,
    );
    const many = Array.from({ length: 14 }, (_, at) => at * at);
    expect(granted(robertsSolowEnd({ places: many, looked: 400 }))).toEqual(
      granted(robertsSolowEnd({ places: many.slice(4), looked: 400 })),
    );
    expect(granted(robertsSolowEnd({ places: many, looked: 400 })).sightings).toBe(10);
  });
  test("has no silence where one stopped looking at the last sighting", () => {
    expect(granted(robertsSolowEnd({ places, looked: 12 })).silenceChance).toBe(1);
    expect(granted(robertsSolowEnd({ places, looked: 11 })).silenceChance).toBe(1);
  });
});

describe("how many were built", () => {
  // k = 5 serials up to m = 20; C(19, 4) = 3876.
  const built = granted(numbersBuilt([3, 20, 8, 11, 17, 8]));
  test("by Goodman 1952: m + m/k − 1, mean (m−1)(k−1)/(k−2), variance (m−1)(m−k+1)(k−1)/((k−3)(k−2)²)", () => {
    expect([built.seen, built.highest, built.unbiased]).toEqual([5, 20, 23]);
    expect(granted(built.mean)).toBeCloseTo((19 * 4) / 3, 12);
    expect(granted(built.deviation)).toBeCloseTo(Math.sqrt((19 * 16 * 4) / (2 * 9)), 12);
  });
  test("is more than x with the chance C(m−1, k−1)/C(x, k−1), and n with (k−1)/k·C(m−1, k−1)/C(n, k)", () => {
    // C(24, 4) = 10626, C(25, 5) = 53130.
    expect(built.chanceAbove(24)).toBeCloseTo(3876 / 10_626, 10);
    expect(built.chanceOf(25)).toBeCloseTo((0.8 * 3876) / 53_130, 10);
    expect([built.chanceAbove(19), built.chanceAbove(9), built.chanceOf(9)]).toEqual([1, 1, 0]);
    expect(built.chanceAbove(20)).toBeCloseTo(3876 / 4845, 10);
  });
  test("from three serials has a mean and from four a deviation, from two a limit", () => {
    const oks = [[4], [4, 9], [4, 9, 12], [4, 9, 12, 15]].map((serials) => {
      const { mean, deviation, quantile } = granted(numbersBuilt(serials));
      return [quantile(0.5).ok, mean.ok, deviation.ok];
    });
    expect(oks).toEqual([
      [false, false, false],
      [true, false, false],
      [true, true, false],
      [true, true, true],
    ]);
    const pair = granted(numbersBuilt([4, 9]));
    // P(N > x) = 8/x.
    expect(pair.chanceAbove(16)).toBeCloseTo(0.5, 10);
    expect(granted(pair.quantile(0.89))).toBe(73);
    expect(pair.chanceOf(10)).toBeCloseTo((0.5 * 8) / 45, 10);
  });
  test("counts from the first number, and takes no serial of more than nine figures", () => {
    expect(granted(numbersBuilt([103, 120], 101))).toMatchObject({ highest: 20, seen: 2 });
    expect(numbersBuilt([999_999_999]).ok).toBe(true);
    expect(numbersBuilt([1_000_000_000])).toEqual({
      ok: false,
      problem: { code: "out-of-range", message: "a serial has no more than nine figures" },
    });
  });
});

describe("runs and quantiles of weights on borders", () => {
  test("are none of no weight", () => {
    expect(shortestRun([0, 0], 0.9).chance).toBe(0);
    expect(spreadQuantile([0, 0, 0], 0.5)).toBe(2.5);
    expect(spreadQuantile([], 0.5)).toBe(-0.5);
  });
  test("of one border are that border", () => {
    expect(shortestRun([7], 0.9)).toEqual({ first: 0, last: 0, chance: 1 });
    expect(spreadQuantile([7], 0.25)).toBe(-0.25);
  });
  test("may be all the borders, and take the earlier of two as short", () => {
    expect(shortestRun([1, 1, 1], 0.9)).toEqual({ first: 0, last: 2, chance: 1 });
    expect(shortestRun([1, 3, 1, 3, 1], 0.3)).toEqual({ first: 1, last: 1, chance: 3 / 9 });
    expect(shortestRun([1, 2, 2, 1, 2, 2], 0.4)).toEqual({ first: 1, last: 2, chance: 0.4 });
  });
});

test("a chance of nothing is as bad as e⁻⁷⁰⁰, one of less too, and counts are whole in 4096 parts", () => {
  expect(wholeLogarithm(0)).toBe(-700 * 2 ** 21);
  expect(wholeLogarithm(-0.1)).toBe(-700 * 2 ** 21);
  expect(wholeLogarithm(1e-320)).toBe(-700 * 2 ** 21);
  expect(wholeLogarithm(0.5)).toBe(Math.round(Math.log(0.5) * 2 ** 21));
  expect([wholeLogarithm(1), wholeCount(3, 0.5), UNITS_PER_NAT]).toEqual([0, 6144, 2 ** 33]);
});
