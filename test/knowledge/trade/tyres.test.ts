import { describe, expect, test } from "vitest";
import { TYRE_LOADS } from "../../../knowledge/trade/tables/tyre-loads.ts";
import { readLoadIndex, readSpeedSymbol } from "../../../knowledge/trade/tyre-ratings.ts";
import { readTyreSizes } from "../../../knowledge/trade/tyre-size.ts";

describe("tyre sizes", () => {
  test.each([
    ["165 R 15", "metric radial, no ratio", 651.6],
    ["165SR15", "metric radial, no ratio", 651.6],
    ["195/65 R 15 91 V", "ISO metric", 634.5],
    ["195/65 R 15", "metric radial with ratio", 634.5],
    ["185/70 VR 15", "metric radial with ratio", 640],
    ["P205/70R14", "P-metric", 642.6],
    ["190/65 R 390", "millimetric", 637],
    ["6.40-15", "low-pressure inch", 680.1],
    ["5.95-13", "low-pressure inch", 578.1],
    ["5.60 S 15", "cross-ply with speed", 642.7],
    ["T125/70 D 15", "temporary spare", 556],
  ])("%s is a %s size, %d mm across when new", (size, system, diameter) => {
    const found = readTyreSizes(`it says ${size} on the wall`).find((reading) => reading.system === system);
    expect(found?.diameterMillimetres).toBeCloseTo(diameter, 1);
  });

  test.each([
    ["E70-14", "alpha-numeric"],
    ["FR78-15", "alpha-numeric"],
    ["31x10.50R15LT", "light truck flotation"],
    ["710x90", "large-section inch"],
  ])("%s is a %s size without a diameter of its own", (size, system) => {
    const found = readTyreSizes(size).find((reading) => reading.system === system);
    expect(found).toBeDefined();
    expect(found?.diameterMillimetres).toBeUndefined();
  });

  test("the letter inside the size is kept apart from the service description", () => {
    expect(readTyreSizes("185/70 VR 15")[0]?.speedLetter).toBe("V");
    expect(readTyreSizes("195/65 R 15 91 V")[0]?.service).toBe("91 V");
    expect(readTyreSizes("195/65R15 91V")[0]?.service).toBe("91 V");
  });

  test.each(["6 screws", "1180 mm", "40/60", ""])("%j is no size", (text) => {
    expect(readTyreSizes(text)).toEqual([]);
  });
});

describe("load index and speed", () => {
  test("every row agrees with 45 × 10^(index / 80) within 2 %", () => {
    for (const { loadIndex, kilograms } of TYRE_LOADS) {
      expect(Math.abs(kilograms / (45 * 10 ** (loadIndex / 80)) - 1)).toBeLessThan(0.02);
    }
  });

  test("the slips of published charts are mended: 62 is 265, 83 is 487, 135 is 2180", () => {
    expect([62, 83, 135].map((index) => TYRE_LOADS[index]?.kilograms)).toEqual([265, 487, 2180]);
  });

  test("the range runs from 0 to 150", () => {
    expect(readLoadIndex(88)?.reading).toContain("560 kg");
    expect(readLoadIndex(0)).toBeDefined();
    expect(readLoadIndex(150)?.reading).toContain("3350 kg");
    expect(readLoadIndex(151)).toBeUndefined();
    expect(readLoadIndex(-1)).toBeUndefined();
    expect(readLoadIndex(88.5)).toBeUndefined();
  });

  test("VR inside a size is over 210 km/h, V after the load index 240", () => {
    expect(readSpeedSymbol("VR")[0]?.reading).toBe("VR: over 210 km/h");
    expect(readSpeedSymbol("v")[0]?.reading).toBe("V: 240 km/h");
    expect(readSpeedSymbol("ZR")[0]?.reading).toBe("ZR: over 240 km/h");
    expect(readSpeedSymbol("I")).toEqual([]);
  });
});
