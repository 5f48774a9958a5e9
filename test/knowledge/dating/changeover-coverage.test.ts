// A small run of the simulated works; the bench plays thousands.
import { describe, expect, test } from "vitest";
import { changeoverCoverage } from "../../bench/changeover-coverage.ts";

describe("over 360 simulated histories of every kind", () => {
  const found = changeoverCoverage(360, 4711);
  test("nine in ten intervals hold the truth", () => {
    // Nominal .90, measured .94 over thousands; at 360 sets chance alone moves it by about .02.
    expect(found.overall.sets).toBe(360);
    expect(found.overall.held / 360).toBeGreaterThan(0.88);
    expect(found.overall.held / 360).toBeLessThan(0.985);
  });
  test("the promised share of the new variant is what the works fitted", () => {
    expect(found.asBuiltError).toBeLessThan(0.03);
  });
  test("cars called not as built are so, from twenty cars on", () => {
    // Thousands of sets: .92 and .77 at 20 cars. Here some ninety cars are called so at 20: chance moves it by .04.
    const least = { "n=20": [0.8, 0.62], "n=60": [0.86, 0.75], "n=200": [0.91, 0.82] } as const;
    for (const [count, [precision, recall]] of Object.entries(least)) {
      expect(found.precision[count]).toBeGreaterThan(precision);
      expect(found.recall[count]).toBeGreaterThan(recall);
    }
  });
  test("more cars give narrower intervals", () => {
    const widths = [5, 20, 60, 200].map((count) => found.widths[`n=${count} rate=0.1`] ?? Number.NaN);
    for (let index = 1; index < widths.length; index += 1) {
      expect(widths[index] as number).toBeLessThan(widths[index - 1] as number);
    }
  });
});
