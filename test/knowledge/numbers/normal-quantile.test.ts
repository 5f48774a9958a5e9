import { expect, test } from "vitest";
import { normalDistribution } from "../../../knowledge/numbers/normal-distribution.ts";
import { normalQuantile } from "../../../knowledge/numbers/normal-quantile.ts";

test("97.5 % lie below 1.95996398454 deviations", () => {
  // lib-r-math.js qnorm(.975), jStat.normal.inv(.975, 0, 1). Tolerance 1e-10.
  expect(Math.abs(normalQuantile(0.975) - 1.95996398454)).toBeLessThan(1e-10);
});
test("the quantile is odd about one half and undoes the distribution", () => {
  for (const chance of [1e-12, 0.01, 0.3, 0.5, 0.77, 0.999]) {
    expect(normalQuantile(chance)).toBeCloseTo(-normalQuantile(1 - chance), 3);
    expect(normalDistribution(normalQuantile(chance))).toBeCloseTo(chance, 12);
  }
});
test("certainty is infinitely far away", () => {
  expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity]);
});
