import { describe, expect, test } from "vitest";
import { normalBetween, normalDistribution } from "../../../knowledge/numbers/normal-distribution.ts";

/** G. Marsaglia, "Evaluating the normal distribution", Journal of Statistical Software 11(4), 2004: the series. */
function bySeries(x: number): number {
  let term = x;
  let sum = x;
  for (let k = 3; Math.abs(term) > 1e-19; k += 2) {
    term *= (x * x) / k;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}

describe("the normal distribution", () => {
  // R 4.2.2 pnorm; .025 quantile of jstat 1.9.6.
  test.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [1.96, 0.97500210485178],
    [-1.959963984540054, 0.025],
    [-3, 0.00134989803163009],
  ])("at %f is %f", (x, expected) => {
    expect(Math.abs(normalDistribution(x) - expected)).toBeLessThan(1e-14);
  });
  test("agrees with Marsaglia's series between −6 and 6 to 1e-14", () => {
    for (let x = -6; x <= 6; x += 0.01) {
      expect(Math.abs(normalDistribution(x) - bySeries(x))).toBeLessThan(1e-14);
    }
  });
  // R 4.2.2: pnorm(-10) = 7.61985302416053e-24, pnorm(-20) = 2.75362411860623e-89.
  test("keeps its relative accuracy in the far tail", () => {
    expect(normalDistribution(-10) / 7.61985302416053e-24).toBeCloseTo(1, 8);
    expect(normalDistribution(-20) / 2.75362411860623e-89).toBeCloseTo(1, 8);
  });
  test("is 0 and 1 at the ends of the line", () => {
    expect(normalDistribution(-Infinity)).toBe(0);
    expect(normalDistribution(Infinity)).toBe(1);
  });
});

describe("the chance between two values", () => {
  test("does not cancel on the upper side", () => {
    expect(normalBetween(10, 11) / normalBetween(-11, -10)).toBeCloseTo(1, 12);
    expect(normalBetween(10, 11)).toBeGreaterThan(0);
  });
  test("is nothing when the values are in the wrong order", () => {
    expect(normalBetween(1, 1)).toBe(0);
    expect(normalBetween(2, 1)).toBe(0);
  });
  test("over the whole line is one", () => {
    expect(normalBetween(-Infinity, Infinity)).toBe(1);
  });
});
