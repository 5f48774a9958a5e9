import { describe, expect, test } from "vitest";
import {
  densityInWater,
  mixtureDensity,
  relativeDensity,
  relativeDensityWithSinker,
  waterDensity,
} from "../../../knowledge/trade/density.ts";
import { materialsOfDensity } from "../../../knowledge/trade/material-candidates.ts";

// Celsius; Tanaka et al. (2001) Metrologia 38:301; Kell (1975); Jones & Harris (1992, air-saturated). kg/m³.
const WATER: readonly (readonly [number, number, number, number])[] = [
  [4, 999.9749, 999.972, 999.9741],
  [10, 999.7027, 999.6996, 999.699],
  [15, 999.1026, 999.0996, 999.0992],
  [18, 998.5984, 998.5956, 998.595],
  [20, 998.2067, 998.2041, 998.2033],
  [22, 997.773, 997.7705, 997.7693],
  [23, 997.5408, 997.5385, 997.537],
  [25, 997.047, 997.0449, 997.043],
  [30, 995.6488, 995.6473, 995.6449],
  [40, 992.2152, 992.2158, 992.2112],
];

describe("water", () => {
  test.each(WATER)(
    "at %d °C agrees with Tanaka to 0.0001 and with two other formulas to 0.01 kg/m³",
    (celsius, tanaka, kell, jones) => {
      const density = (waterDensity(celsius) ?? 0) * 1000;
      expect(Math.abs(density - tanaka)).toBeLessThan(1e-4);
      expect(Math.abs(density - kell)).toBeLessThan(0.01);
      expect(Math.abs(density - jones)).toBeLessThan(0.01);
    },
  );

  test("outside 0 to 40 °C there is no figure", () => {
    expect(waterDensity(-0.1)).toBeUndefined();
    expect(waterDensity(40.1)).toBeUndefined();
    expect(waterDensity(Number.NaN)).toBeUndefined();
    expect(waterDensity(0)).toBeDefined();
  });
});

describe("weighing in water", () => {
  test("the coin of OpenStax College Physics is 10.4 times as dense as water", () => {
    expect(relativeDensity(8.63, 7.8)).toBeCloseTo(10.3976, 4);
  });

  test("the ring of Giancoli, 7th ed. ch. 10 problem 27, is 7.84", () => {
    expect(relativeDensity(63.5, 55.4)).toBeCloseTo(7.84, 2);
  });

  test("floating parts go by ASTM D792 with a sinker", () => {
    expect(relativeDensityWithSinker(10, 4.4, 5.5)).toBeCloseTo(0.900901, 6);
    const sunk = relativeDensityWithSinker(10, 0.55, 0);
    expect(sunk).toBeCloseTo(1.058201, 6);
    // ASTM D792 multiplies by 0.9975 at 23 °C: 1.055556; Tanaka's water is 0.99754.
    expect(densityInWater(sunk, 23)?.density).toBeCloseTo(1.0556, 4);
  });

  test("impossible weighings are refused", () => {
    expect(relativeDensity(10, 10)).toBeUndefined();
    expect(relativeDensity(10, 11)).toBeUndefined();
    expect(relativeDensity(0, 0)).toBeUndefined();
    expect(relativeDensity(10, -1)).toBeUndefined();
    expect(relativeDensityWithSinker(10, 20, 5)).toBeUndefined();
    expect(densityInWater(undefined, 20)).toBeUndefined();
    expect(densityInWater(1.5, 60)).toBeUndefined();
  });

  test("mixtures follow the rule of mixtures", () => {
    expect(mixtureDensity(0.905, 2.75, 0.2)).toBeCloseTo(1.045, 3);
    expect(mixtureDensity(0.905, 2.56, 0.3)).toBeCloseTo(1.123, 3);
    expect(
      [0.25, 0.3, 0.35, 0.5].map((share) => Number(mixtureDensity(1.2, 2.56, share).toFixed(3))),
    ).toEqual([1.384, 1.428, 1.474, 1.634]);
  });
});

function named(density: number): readonly string[] {
  return materialsOfDensity({ from: density - 0.03, to: density + 0.03 }).map(
    (candidate) => candidate.symbol,
  );
}

describe("materials of a density", () => {
  test.each([
    [1.05, ["ABS", "PUR", "PS"]],
    [1.2, ["PC", "PP-filled", "ABS-GF"]],
    [1.8, ["UP-(GF+MD)", "EP-GF"]],
    [1.4, ["UP-GF", "POM", "PA66-GF30"]],
    [1.045, ["PP-TD20", "ABS"]],
    [0.905, ["PP", "TPO"]],
    [1.18, ["PMMA", "PVC"]],
    [1.42, ["POM"]],
    [1.15, ["PA66", "PA6"]],
    [0.95, ["PE-HD"]],
    [1.31, ["PBT"]],
    [1.38, ["PF"]],
    [1.87, ["GF sheet", "UP-(GF+MD)"]],
    [0.48, ["Douglas-fir", "western hemlock", "plywood"]],
    [2.7, ["aluminium"]],
    [7.84, ["steel"]],
  ])("%d g/cm³ names all of %j", (density, expected) => {
    expect(named(density)).toEqual(expect.arrayContaining(expected));
  });

  test("ABS and polyurethane RIM overlap: both are named", () => {
    expect(named(1.05)).toEqual(expect.arrayContaining(["ABS", "PUR"]));
    expect(named(1.02)).toEqual(expect.arrayContaining(["ABS", "PUR"]));
  });

  test("a light thin part at 1.9 is not hand-laid", () => {
    expect(named(1.9)).not.toContain("UP-GF");
  });

  test("nothing is so heavy as gold in the tables", () => {
    expect(named(19.3)).toEqual([]);
  });
});
