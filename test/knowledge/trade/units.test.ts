// Values of NIST SP 811 (2008), Appendix B, digits by GNU units 2.22; relative tolerance 1e-9.
import { describe, expect, test } from "vitest";
import { convertUnits, findUnit, UNITS } from "../../../knowledge/trade/units.ts";

const EXACT: readonly (readonly [number, string, string, number])[] = [
  [1, "in", "mm", 25.4],
  [1, "ft", "m", 0.3048],
  [1, "mile", "km", 1.609344],
  [1, "lb", "kg", 0.45359237],
  [1, "oz", "g", 28.349523125],
  [1, "US gal", "L", 3.785411784],
  [1, "imp gal", "L", 4.54609],
  [1, "kgf·m", "N·m", 9.80665],
  [100, "°F", "°C", 340 / 9],
  [1, "lbf", "N", 4.4482216152605],
  [1, "lbf·ft", "N·m", 1.3558179483314],
  [1, "lbf·in", "N·m", 0.112984829027617],
  [1, "psi", "Pa", 6894.757293168],
  [1, "hp", "W", 745.69987158227],
  [1, "metric hp", "W", 735.49875],
  [1, "inHg", "Pa", 3386.389],
  [1, "lb/in³", "g/cm³", 27.6799047102],
  [1, "lb/ft³", "kg/m³", 16.018463374],
];

describe("units", () => {
  test.each(EXACT)("%d %s in %s is %d", (value, from, to, expected) => {
    const found = convertUnits(value, from, to) ?? Number.NaN;
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-9);
  });

  test("17 3/8 inches are 441.325 mm", () => {
    expect(convertUnits(17.375, "in", "mm")).toBeCloseTo(441.325, 9);
  });

  test("every unit comes back from every other of its kind", () => {
    for (const from of UNITS) {
      for (const to of UNITS.filter((unit) => unit.kind === from.kind)) {
        const there = convertUnits(37.5, from.id, to.id) ?? Number.NaN;
        expect(convertUnits(there, to.id, from.id)).toBeCloseTo(37.5, 8);
      }
    }
  });

  test("unlike kinds and unknown names are refused", () => {
    expect(convertUnits(1, "in", "kg")).toBeUndefined();
    expect(convertUnits(1, "cubit", "mm")).toBeUndefined();
    expect(findUnit("cubits")).toBeUndefined();
  });

  test("no name belongs to two units, and plurals are understood", () => {
    const names = UNITS.flatMap((unit) => unit.names);
    expect(new Set(names).size).toBe(names.length);
    expect(findUnit("Inches")?.id).toBe("in");
    expect(findUnit("pounds")?.id).toBe("lb");
    expect(findUnit("lbs")?.id).toBe("lb");
  });
});
