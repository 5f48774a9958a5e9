import fc from "fast-check";
import { expect, test } from "vitest";
import { gammaAtMost, gammaQuantile } from "../../../knowledge/numbers/gamma-distribution.ts";

test("with shape one it is the exponential law", () => {
  for (const x of [0.1, 1, 3, 12]) expect(gammaAtMost(x, 1, 0.7)).toBeCloseTo(1 - Math.exp(-0.7 * x), 12);
});
test("the median of shape two is the published one", () => {
  // @stdlib/stats-base-dists-gamma-quantile: quantile(.5, 2, 1) = 1.67834699002. Tolerance 1e-10.
  expect(Math.abs(gammaQuantile(0.5, 2, 1) - 1.67834699002)).toBeLessThan(1e-10);
});
test("a whole shape counts events: at most x with shape k means at least k events by x", () => {
  // Poisson with mean 2.5: P(at least 3) = 1 − e^−2.5 (1 + 2.5 + 3.125), arithmetic.
  expect(gammaAtMost(2.5, 3, 1)).toBeCloseTo(1 - Math.exp(-2.5) * 6.625, 12);
});
test("nothing lies below zero, and the outermost chances have their limits", () => {
  expect(gammaAtMost(0, 2, 1)).toBe(0);
  expect(gammaQuantile(0, 2, 1)).toBe(0);
  expect(gammaQuantile(1, 2, 1)).toBe(Number.POSITIVE_INFINITY);
});
test("the quantile undoes the chance", () => {
  const positive = fc.double({ min: 0.3, max: 150, noNaN: true });
  fc.assert(
    fc.property(
      positive,
      positive,
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      (shape, rate, chance) => {
        expect(gammaAtMost(gammaQuantile(chance, shape, rate), shape, rate)).toBeCloseTo(chance, 9);
      },
    ),
    { seed: 43 },
  );
});
