// The estimators at their borders: when they are refused and why, what is said where counts run out, and laws that hold
// whatever was seen. The figures inside are checked against their papers in test/published.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shortestRun, spreadQuantile } from "../../../knowledge/dating/credible-run.ts";
import { jaricRobertsEnd } from "../../../knowledge/dating/doubtful-end.ts";
import { solowEnd, straussSadlerEnd } from "../../../knowledge/dating/even-end.ts";
import { firstSighting, lastSighting } from "../../../knowledge/dating/last-sighting.ts";
import { leadPlausibility } from "../../../knowledge/dating/lead-plausibility.ts";
import {
  doubledShare,
  doubledWhole,
  overlapProfile,
  profileName,
} from "../../../knowledge/dating/overlap-profile.ts";
import { numbersBuilt } from "../../../knowledge/dating/serial-numbers.ts";
import { shareOfVariant, trueShare } from "../../../knowledge/dating/share-of-variant.ts";
import { robertsSolowEnd } from "../../../knowledge/dating/thinning-end.ts";
import { granted } from "../../support/granted.ts";

/** "code: message" of a refusal, or nothing. */
function refusal(result: {
  readonly ok: boolean;
  readonly problem?: { readonly code: string; readonly message: string };
}) {
  return result.ok ? "" : `${result.problem?.code}: ${result.problem?.message}`;
}

describe("the shortest run of borders that holds a share of the weight", () => {
  test("is the narrowest, the first of equals, and holds what was asked", () => {
    expect(shortestRun([1, 5, 3, 1], 0.8)).toEqual({ first: 1, last: 2, chance: 0.8 });
    expect(shortestRun([1, 5, 3, 1], 0.81)).toEqual({ first: 0, last: 2, chance: 0.9 });
    expect(shortestRun([2, 0, 2], 0.5)).toEqual({ first: 0, last: 0, chance: 0.5 });
    expect(shortestRun([0, 0, 4, 0], 0.9)).toEqual({ first: 2, last: 2, chance: 1 });
  });
  test("is narrower than no other, whatever the weights", () => {
    const weights = fc
      .array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 12 })
      .filter((all) => all.some((one) => one > 0));
    fc.assert(
      fc.property(weights, fc.constantFrom(0.3, 0.5, 0.9), (all, level) => {
        const total = all.reduce((sum, one) => sum + one, 0);
        const held = (first: number, last: number) =>
          all.slice(first, last + 1).reduce((sum, one) => sum + one, 0);
        const run = shortestRun(all, level);
        expect(run.chance).toBeCloseTo(held(run.first, run.last) / total, 12);
        expect(held(run.first, run.last)).toBeGreaterThanOrEqual(level * total - 1e-9);
        for (let first = 0; first < all.length; first += 1) {
          for (let last = first; last < first + run.last - run.first && last < all.length; last += 1) {
            expect(held(first, last)).toBeLessThan(level * total + 1e-9);
          }
        }
      }),
      { seed: 51 },
    );
  });
  test("has its quantiles within the borders, each spread half a step either way", () => {
    expect(spreadQuantile([2, 2], 0.5)).toBe(0.5);
    expect(spreadQuantile([2, 2], 0.25)).toBe(0);
    expect(spreadQuantile([0, 4, 0], 0.5)).toBe(1);
    expect(spreadQuantile([1, 0, 3], 0.25)).toBe(0.5);
    expect(spreadQuantile([1, 0, 3], 0.5)).toBeCloseTo(1.5 + 1 / 3, 12);
  });
});

describe("how much of a stretch falls after a changeover", () => {
  test("is all, none, or a share that rises evenly over the overlap", () => {
    expect([-1, 0].map((cells) => doubledShare(cells, 0))).toEqual([0, 2]);
    expect([-3, -2, -1, 0, 1, 2].map((cells) => doubledShare(cells, 3))).toEqual([0, 0, 2, 4, 6, 6]);
    expect([-3, -2, -1, 0, 1, 2].map((cells) => doubledShare(cells, 4))).toEqual([0, 1, 3, 5, 7, 8]);
    expect([doubledWhole(0), doubledWhole(3)]).toEqual([2, 6]);
  });
  test("is summed over its cells by how many cars each has", () => {
    const cars = Float64Array.from([1, 2, 3, 4]);
    for (const width of [0, 1, 2, 3, 5]) {
      const { first, parts, whole } = overlapProfile(cars, 1, 4, width);
      expect(whole).toBe(9 * doubledWhole(width));
      const summed = (border: number) =>
        [1, 2, 3].reduce((sum, cell) => sum + (cars[cell] ?? 0) * doubledShare(cell - border, width), 0);
      parts.forEach((part, index) => {
        expect(part).toBe(summed(1 + first + index));
        expect(part).toBeGreaterThan(0);
        expect(part).toBeLessThan(whole);
      });
      expect(summed(first)).toBe(whole);
      expect(summed(1 + first + parts.length)).toBe(0);
    }
  });
  test("has one name for stretches as long as each other where production was even", () => {
    const cars = Float64Array.from([5, 5, 5, 5, 7, 7]);
    expect([profileName(cars, 0, 2), profileName(cars, 1, 3), profileName(cars, 4, 6)]).toEqual([
      "2",
      "2",
      "2",
    ]);
    expect([profileName(cars, 3, 5), profileName(cars, 3, 6)]).toEqual(["3-5", "3-6"]);
  });
});

describe("how many were built", () => {
  const built = granted(numbersBuilt([2, 6, 7, 14]));
  test("is refused without serials, or with one that is none", () => {
    expect(refusal(numbersBuilt([]))).toBe("too-few-sightings: it needs a serial");
    expect(refusal(numbersBuilt([3.5]))).toBe("out-of-range: serials are whole numbers from 1 on");
    expect(refusal(numbersBuilt([100, 105], 101))).toBe(
      "out-of-range: serials are whole numbers from 101 on",
    );
    expect(numbersBuilt([0]).ok).toBe(false);
    expect(numbersBuilt([1]).ok).toBe(true);
  });
  test("is at least the highest seen, and a whole number", () => {
    expect([built.highest, built.chanceAbove(13), built.chanceAbove(13.9)]).toEqual([14, 1, 1]);
    expect(built.chanceAbove(15.9)).toBe(built.chanceAbove(15));
    expect([built.chanceOf(13), built.chanceOf(15.5)]).toEqual([0, 0]);
    expect(built.chanceOf(14)).toBeCloseTo(1 - built.chanceAbove(14), 12);
  });
  test("has for a limit the smallest number that holds the chance", () => {
    for (const chance of [0.1, 0.5, 0.9, 0.95, 0.999]) {
      const limit = granted(built.quantile(chance));
      expect(1 - built.chanceAbove(limit)).toBeGreaterThanOrEqual(chance);
      expect(1 - built.chanceAbove(limit - 1)).toBeLessThan(chance);
    }
    expect(granted(built.quantile(0.2))).toBe(14);
    expect([0, 1, Number.NaN].map((chance) => refusal(built.quantile(chance)))).toEqual(
      Array.from({ length: 3 }, () => "out-of-range: a chance lies between 0 and 1"),
    );
  });
  test("is anything above a lone serial, which has neither mean nor limit", () => {
    const lone = granted(numbersBuilt([9]));
    expect([lone.unbiased, lone.chanceAbove(1e6), lone.chanceAbove(8), lone.chanceOf(9)]).toEqual([
      17, 1, 1, 0,
    ]);
    expect(refusal(lone.quantile(0.5))).toBe("too-few-sightings: a limit needs two serials");
    expect(refusal(lone.mean)).toBe("too-few-sightings: a mean needs three serials");
    expect(refusal(lone.deviation)).toBe("too-few-sightings: a deviation needs four serials");
    expect(granted(numbersBuilt([4, 9, 12])).deviation.ok).toBe(false);
    expect(granted(numbersBuilt([4, 9])).quantile(0.5).ok).toBe(true);
  });
});

describe("the share of a variant", () => {
  test("is refused for counts that are none", () => {
    const wrong = "out-of-range: counts are whole and no more are seen than looked at";
    for (const [seen, looked] of [
      [2.5, 5],
      [2, 5.5],
      [-1, 5],
      [6, 5],
    ] as const) {
      expect(refusal(shareOfVariant(seen, looked))).toBe(wrong);
    }
    expect(refusal(shareOfVariant(0, 0))).toBe("too-few-sightings: no car was looked at");
  });
  test("reaches to nought where none was seen and to one where all were, and is narrower at a lower level", () => {
    expect(granted(shareOfVariant(0, 20)).jeffreys.low).toBe(0);
    expect(granted(shareOfVariant(20, 20)).jeffreys.high).toBe(1);
    const [wide, narrow] = [granted(shareOfVariant(5, 20)), granted(shareOfVariant(5, 20, 0.8))];
    expect(wide.share).toBe(0.25);
    for (const kind of ["wilson", "jeffreys"] as const) {
      expect(narrow[kind].low).toBeGreaterThan(wide[kind].low);
      expect(narrow[kind].high).toBeLessThan(wide[kind].high);
    }
    const mirrored = granted(shareOfVariant(15, 20));
    expect(mirrored.jeffreys.high).toBeCloseTo(1 - wide.jeffreys.low, 9);
  });
  test("behind labels is refused for shares that are none, and where labels tell nothing", () => {
    const wrong: readonly (readonly [number, number, number])[] = [
      [1.1, 0.9, 0.9],
      [0.5, 1.1, 0.9],
      [0.5, 0.9, 1.1],
      [-0.1, 0.9, 0.9],
      [0.5, -0.1, 0.9],
    ];
    for (const shares of wrong) {
      expect(refusal(trueShare(...shares))).toBe("out-of-range: shares lie between 0 and 1");
    }
    const useless = "out-of-range: labels that are right no more than by chance tell nothing";
    expect([refusal(trueShare(0.5, 0.5, 0.5)), refusal(trueShare(0.5, 0.2, 0.3))]).toEqual([
      useless,
      useless,
    ]);
    expect(granted(trueShare(1, 1, 1))).toEqual({ share: 1, raw: 1, isClipped: false });
    expect(granted(trueShare(0, 1, 1))).toEqual({ share: 0, raw: 0, isClipped: false });
    expect(granted(trueShare(1, 0.9, 0.9))).toMatchObject({ share: 1, isClipped: true });
  });
});

describe("the end of use", () => {
  test("is refused with the reason, each method by its own needs", () => {
    expect(refusal(solowEnd({ places: [1, 2], looked: 9 }))).toMatch(/^too-few-sightings: /);
    expect(refusal(solowEnd({ places: [5, 5, 5], begun: 5, looked: 9 }))).toMatch(/^sightings-tied: /);
    expect(refusal(solowEnd({ places: [1, 2, 9], begun: 0, looked: 9 }))).toMatch(/^after-the-end: /);
    expect(refusal(straussSadlerEnd({ places: [1, 2], looked: 9 }))).toBe(
      "too-few-sightings: it needs three sightings",
    );
    expect(refusal(straussSadlerEnd({ places: [4, 4, 4], looked: 9 }))).toBe(
      "sightings-tied: all sightings lie at one place",
    );
    expect(refusal(robertsSolowEnd({ places: [1, 2, 3, 4], looked: 9 }))).toBe(
      "too-few-sightings: it needs five sightings",
    );
    expect(refusal(robertsSolowEnd({ places: [1, 2, 3, 4, 4], looked: 9 }))).toBe(
      "sightings-tied: the last two sightings lie at one place",
    );
    expect(refusal(robertsSolowEnd({ places: [3, 3, 3, 3, 4], looked: 9 }))).toBe(
      "sightings-tied: all sightings but the last lie at one place",
    );
    const doubtful = (places: readonly number[], reliability: number, looked: number, begun?: number) =>
      jaricRobertsEnd({
        sightings: places.map((place) => ({ place, reliability })),
        looked,
        ...(begun === undefined ? {} : { begun }),
      });
    expect(refusal(doubtful([1, 2, 3], 0.6, 9, 0))).toBe(
      "too-few-sightings: fewer than two sightings can be relied on",
    );
    expect(doubtful([1, 2, 3, 4], 0.5, 9, 0).ok).toBe(true);
    expect(refusal(doubtful([5, 5, 5, 5], 0.9, 9, 5))).toBe(
      "sightings-tied: all sightings lie at the beginning of use",
    );
    expect(refusal(doubtful([1, 2, 9, 9.5], 0.9, 5, 0))).toBe(
      "after-the-end: nobody has looked beyond the last sighting",
    );
  });
  test("has a limit that is further off the surer it has to be, whatever the method", () => {
    const record = { places: [1, 3, 4, 6, 7.5, 8], looked: 20, begun: 0 };
    const doubted = {
      sightings: record.places.map((place) => ({ place, reliability: 0.9 })),
      looked: 20,
      begun: 0,
    };
    for (const upper of [
      (level: number) => granted(solowEnd({ ...record, level })).upper,
      (level: number) => granted(straussSadlerEnd({ ...record, level })).upper,
      (level: number) => granted(robertsSolowEnd({ ...record, level })).upper,
      (level: number) => granted(jaricRobertsEnd({ ...doubted, level })).upper,
    ]) {
      expect(upper(0.99)).toBeGreaterThan(upper(0.95));
      expect(upper(0.95)).toBeGreaterThan(upper(0.8));
      expect(upper(0.8)).toBeGreaterThan(8);
    }
  });
  test("without a known beginning leaves the first sighting out of the count, doubtful or not", () => {
    const places = [2, 4, 5, 7, 8];
    expect(granted(solowEnd({ places, looked: 20 }))).toEqual(
      granted(solowEnd({ places: places.slice(1), begun: 2, looked: 20 })),
    );
    const sightings = places.map((place) => ({ place, reliability: 0.9 }));
    expect(granted(jaricRobertsEnd({ sightings, looked: 20 }))).toEqual(
      granted(jaricRobertsEnd({ sightings: sightings.slice(1), begun: 2, looked: 20 })),
    );
    expect(granted(jaricRobertsEnd({ sightings: sightings.toReversed(), looked: 20 }))).toEqual(
      granted(jaricRobertsEnd({ sightings, looked: 20 })),
    );
  });
  test("is shifted with its record, and scales with it", () => {
    const places = [1, 3, 4, 6, 7.5, 8];
    const at = (shift: number, scale: number) => {
      const moved = places.map((place) => shift + scale * place);
      return [solowEnd, straussSadlerEnd, robertsSolowEnd].map(
        (end) => granted(end({ places: moved, looked: shift + 20 * scale })).upper,
      );
    };
    const plain = at(0, 1);
    at(100, 3).forEach((upper, index) => {
      expect(upper).toBeCloseTo(100 + 3 * (plain[index] ?? Number.NaN), 9);
    });
  });
  test("by cars counts a sighting on either border of the window, and the last by the beginning of its dates", () => {
    const window = { from: 0, to: 36 };
    const seen = (month: number) => ({ built: { from: month, to: month }, asBuilt: 1 });
    expect(granted(lastSighting({ window }, [seen(0), seen(36)])).atLeast).toBe(36);
    expect(granted(firstSighting({ window }, [seen(0), seen(36)])).atLeast).toBe(0);
    expect(granted(lastSighting({ window }, [{ built: { from: 10, to: 20 }, asBuilt: 0.9 }])).atLeast).toBe(
      10,
    );
    const early = { built: { from: -4, to: 6 }, asBuilt: 1 };
    expect(granted(lastSighting({ window }, [early])).atLeast).toBe(0);
    expect(
      granted(lastSighting({ window }, [{ built: { from: 10, to: 20 }, asBuilt: 0.89 }])),
    ).not.toHaveProperty("atLeast");
    expect(refusal(lastSighting({ window: { from: 1, to: 1 } }, []))).toBe(
      "no-window: the window of build dates is empty or longer than a century",
    );
  });
});

describe("a lead that two dates allow", () => {
  const usual = { median: 2, sigma: 0.7 };
  test("is named by its shortest and longest, and a mark that begins where the build date ends is later", () => {
    const built = { from: 100, to: 101 };
    expect(leadPlausibility(usual, { from: 90, to: 91 }, built)).toMatchObject({ shortest: 9, longest: 11 });
    expect(leadPlausibility(usual, { from: 101, to: 102 }, built)).toMatchObject({
      verdict: "dated-after-built",
      longest: 0,
    });
    expect(leadPlausibility(usual, { from: 100.5, to: 101.5 }, built).verdict).not.toBe("dated-after-built");
    const { atMostLongest, atLeastShortest } = leadPlausibility(usual, { from: 98, to: 99 }, built);
    expect(atMostLongest).toBeGreaterThan(0.5);
    expect(atLeastShortest).toBeGreaterThan(0.8);
  });
});
