// Numbers built from serials: L. A. Goodman, "Serial number analysis", J. Am. Stat. Assoc. 47, 1952; the two examples
// as worked in encyclopedia articles on the German tank problem. Tolerance 1e-6.
import { expect, test } from "vitest";
import { numbersBuilt } from "../../knowledge/dating/serial-numbers.ts";
import { granted } from "../support/granted.ts";

test("2, 6, 7 and 14", () => {
  const built = granted(numbersBuilt([2, 6, 7, 14]));
  expect(built.unbiased).toBeCloseTo(16.5, 6);
  expect(granted(built.mean)).toBeCloseTo(19.5, 6);
  expect(granted(built.deviation)).toBeCloseTo(10.35615759, 6);
  expect([14, 15, 16, 17].map(built.chanceOf).map((p) => p.toFixed(6))).toEqual([
    "0.214286",
    "0.157143",
    "0.117857",
    "0.090126",
  ]);
  expect(built.chanceAbove(20)).toBeCloseTo(0.250877, 6);
  expect(built.chanceAbove(30)).toBeCloseTo(0.070443, 6);
});
test("19, 40, 42 and 60", () => {
  const built = granted(numbersBuilt([19, 40, 42, 60]));
  expect(built.unbiased).toBeCloseTo(74, 6);
  expect(granted(built.mean)).toBeCloseTo(88.5, 6);
  expect(granted(built.deviation)).toBeCloseTo(50.22200713, 6);
  expect(built.chanceOf(60)).toBeCloseTo(0.05, 9);
  expect(built.chanceAbove(100)).toBeCloseTo(0.201045, 6);
  expect(built.chanceAbove(200)).toBeCloseTo(0.024752, 6);
  expect(granted(built.quantile(0.5))).toBe(75);
});
test("the chances of all numbers sum to one", () => {
  const built = granted(numbersBuilt([19, 40, 42, 60]));
  let sum = 0;
  for (let n = 60; n <= 5000; n += 1) sum += built.chanceOf(n);
  expect(sum + built.chanceAbove(5000)).toBeCloseTo(1, 9);
});
test("serials of eight figures are estimated as those of two, a million times as large", () => {
  // m + m/k − 1, and the limit with P(N > x) = C(m−1, 3)/C(x, 3) = .05, which for large numbers is m · 20^(1/3).
  const built = granted(numbersBuilt([19e6, 40e6, 42e6, 60e6]));
  expect(built.unbiased).toBeCloseTo(75e6 - 1, 3);
  expect(granted(built.quantile(0.95)) / (60e6 * 20 ** (1 / 3))).toBeCloseTo(1, 5);
});
test("plates that begin at 101 count from there, and a serial seen twice counts once", () => {
  const built = granted(numbersBuilt([102, 106, 107, 114, 114], 101));
  expect(built.unbiased).toBeCloseTo(16.5, 6);
  expect(built.seen).toBe(4);
});
test("a mean needs three serials, a deviation four, a limit two", () => {
  const three = granted(numbersBuilt([4, 9, 12]));
  expect(three.mean.ok).toBe(true);
  expect(three.deviation).toMatchObject({ ok: false, problem: { code: "too-few-sightings" } });
  expect(granted(numbersBuilt([4, 9])).mean).toMatchObject({ ok: false });
  expect(granted(numbersBuilt([9])).quantile(0.9)).toMatchObject({ ok: false });
  expect(numbersBuilt([])).toMatchObject({ ok: false });
  expect(numbersBuilt([99], 101)).toMatchObject({ ok: false, problem: { code: "out-of-range" } });
  expect(numbersBuilt([4, 1_000_000_000])).toMatchObject({ ok: false, problem: { code: "out-of-range" } });
});
