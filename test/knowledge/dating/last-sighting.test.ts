import { describe, expect, test } from "vitest";
import { firstSighting, lastSighting } from "../../../knowledge/dating/last-sighting.ts";
import { productionScale } from "../../../knowledge/dating/production-scale.ts";
import { granted } from "../../support/granted.ts";

const production = new Map([
  [0, 10],
  [1, 30],
  [2, 20],
]);
const window = { from: 0, to: 36 };
const at = (month: number, asBuilt = 1): { built: { from: number; to: number }; asBuilt: number } => ({
  built: { from: month, to: month + 1 },
  asBuilt,
});

describe("the scale of cars built", () => {
  const scale = productionScale(window, production);
  test("counts cars, not months", () => {
    expect(scale?.builtBy(0)).toBe(0);
    expect(scale?.builtBy(12)).toBeCloseTo(10 / 60, 4);
    expect(scale?.builtBy(18)).toBeCloseTo(25 / 60, 4);
    expect(scale?.builtBy(36)).toBe(1);
  });
  test("is undone by its inverse", () => {
    for (const month of [0, 3.3, 12, 17.9, 30, 36])
      expect(scale?.instantAt(scale.builtBy(month))).toBeCloseTo(month, 9);
  });
  test("ends where the window ends", () => {
    expect(scale?.builtBy(99)).toBe(1);
    expect(scale?.instantAt(1.7)).toBeCloseTo(36, 9);
    expect(productionScale({ from: 3, to: 3 })).toBeUndefined();
  });
});

describe("a variant whose successor nobody has reported", () => {
  const seen = [2, 5, 8, 11, 13, 15, 16, 18].map((month) => at(month));
  const setting = { window, production, otherEnd: 0 };
  const end = granted(lastSighting(setting, seen));
  test("was in use at least until its last trusted sighting", () => {
    expect(end.atLeast).toBe(18);
    expect(granted(lastSighting(setting, [...seen, at(30, 0.4)])).atLeast).toBe(18);
  });
  test("is proved in use no longer than from the first to the last day that are sure: a year alone proves its ends only", () => {
    const year = { built: { from: 12, to: 24 }, asBuilt: 1 };
    expect(granted(lastSighting(setting, [at(3), at(7), year])).atLeast).toBe(12);
    expect(granted(lastSighting(setting, [at(3), at(14), year])).atLeast).toBe(14);
    expect(granted(lastSighting(setting, [at(3), year])).atLeastBuilt).toEqual(year.built);
    expect(granted(lastSighting(setting, [at(3), year, at(12)])).atLeastBuilt).toEqual({ from: 12, to: 13 });
    expect(granted(firstSighting(setting, [year, at(23)])).atLeastBuilt).toEqual({ from: 23, to: 24 });
    expect(granted(firstSighting(setting, [at(30), year])).atLeast).toBeCloseTo(24, 4);
    expect(granted(firstSighting(setting, [at(30), year])).atLeast).toBeLessThan(24);
  });
  test("is not told anything by cars built before the window or after it", () => {
    expect(granted(lastSighting(setting, [...seen, at(-3), at(36), at(90)]))).toEqual(end);
  });
  test("is told as much by the sighting that just reaches the trust asked for as by a sure one", () => {
    expect(granted(lastSighting(setting, [...seen, at(24, 0.9)])).atLeast).toBe(24);
  });
  test("has a limit beyond it by every method, and every method says what it assumes", () => {
    for (const limit of [end.solow, end.straussSadler, end.robertsSolow, end.jaricRoberts]) {
      const { limit: month, estimate, assumption } = granted(limit);
      expect(month).toBeGreaterThan(18.5);
      expect(estimate).toBeGreaterThan(18.5);
      expect(assumption).toMatch(/\d{4}\)$/);
    }
  });
  test("Solow's limit by hand: cars built by the last sighting, times α to the minus one eighth", () => {
    const scale = productionScale(window, production);
    const cars = (scale?.builtBy(18.5) ?? 0) * 0.05 ** (-1 / 8);
    expect(granted(end.solow).limit).toBeCloseTo(scale?.instantAt(cars) ?? 0, 9);
    expect(granted(end.solow).isOpen).toBe(false);
  });
  test("may have stayed in use to the end when it was seen late", () => {
    const late = granted(lastSighting(setting, [at(12), at(20), at(28), at(33)]));
    expect(granted(late.solow)).toMatchObject({ isOpen: true, limit: 36 });
  });
  test("a doubtful late sighting moves only the method that weighs it", () => {
    const doubted = granted(lastSighting(setting, [...seen, at(28, 0.5)]));
    expect(granted(doubted.solow)).toEqual(granted(end.solow));
    expect(granted(doubted.jaricRoberts).estimate).toBeGreaterThan(granted(end.jaricRoberts).estimate);
  });
});

test("a first sighting is a last one with time running backwards", () => {
  const mirrored = new Map([
    [0, 20],
    [1, 30],
    [2, 10],
  ]);
  const months = [20, 23, 26, 27, 29, 34];
  const first = granted(
    firstSighting(
      { window, production, otherEnd: 36 },
      months.map((month) => at(month)),
    ),
  );
  const last = granted(
    lastSighting(
      { window, production: mirrored, otherEnd: 0 },
      months.map((month) => at(35 - month)),
    ),
  );
  expect(first.atLeast).toBeCloseTo(21, 4);
  expect(first.atLeast).toBeLessThan(21);
  for (const method of ["solow", "straussSadler", "robertsSolow", "jaricRoberts"] as const) {
    expect(granted(first[method]).limit).toBeCloseTo(36 - granted(last[method]).limit, 9);
  }
});

test("one sighting is refused by every method, and nothing at all has no least use", () => {
  const one = granted(lastSighting({ window }, [at(4)]));
  expect([one.solow, one.straussSadler, one.robertsSolow, one.jaricRoberts].every(({ ok }) => !ok)).toBe(
    true,
  );
  expect(granted(lastSighting({ window }, [])).atLeast).toBeUndefined();
  expect(lastSighting({ window: { from: 1, to: 1 } }, [])).toMatchObject({ ok: false });
});
