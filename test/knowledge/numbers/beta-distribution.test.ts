import fc from "fast-check";
import { expect, test } from "vitest";
import { betaAtMost, betaQuantile } from "../../../knowledge/numbers/beta-distribution.ts";

test("the share of girls in placenta praevia births has its published posterior", () => {
  // A. Gelman et al., Bayesian Data Analysis, section 2.4; digits by SciPy 1.10.1; jStat, @stdlib and R
  // agree to 1e-8, which is the tolerance.
  expect(Math.abs(betaAtMost(0.485, 438, 544) - 0.9928259886)).toBeLessThan(1e-8);
  expect(Math.abs(betaQuantile(0.025, 438, 544) - 0.4150654925)).toBeLessThan(1e-8);
  expect(Math.abs(betaQuantile(0.5, 438, 544) - 0.4459918587)).toBeLessThan(1e-8);
  expect(Math.abs(betaQuantile(0.975, 438, 544) - 0.4771997724)).toBeLessThan(1e-8);
});
test("an even share is below x with chance x", () => {
  for (const x of [0, 0.1, 0.5, 0.93, 1]) expect(betaAtMost(x, 1, 1)).toBeCloseTo(x, 13);
});
test("outside of 0 to 1 there is no share", () => {
  expect(betaAtMost(-0.1, 2, 3)).toBe(0);
  expect(betaAtMost(1.1, 2, 3)).toBe(1);
  expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1]);
});
test("swapping the counts mirrors the share, and the quantile undoes the chance", () => {
  const shape = fc.double({ min: 0.5, max: 200, noNaN: true });
  const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
  fc.assert(
    fc.property(shape, shape, share, (a, b, x) => {
      const chance = betaAtMost(x, a, b);
      expect(chance + betaAtMost(1 - x, b, a)).toBeCloseTo(1, 10);
      if (chance > 1e-6 && chance < 1 - 1e-6) expect(betaQuantile(chance, a, b)).toBeCloseTo(x, 6);
    }),
    { seed: 41 },
  );
});
