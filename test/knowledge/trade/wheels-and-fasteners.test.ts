import { describe, expect, test } from "vitest";
import { boltCircleOf, boltCircleTrap, spanRatio } from "../../../knowledge/trade/bolt-circle.ts";
import { readHeadFigures, readHeadLines, readOldHeadMark } from "../../../knowledge/trade/bolt-head.ts";
import { backSpaceMillimetres, readRimDesignation } from "../../../knowledge/trade/rim-designation.ts";
import { THREADS } from "../../../knowledge/trade/tables/threads.ts";
import {
  spannersOfWidth,
  threadsOfMeasure,
  threadTrap,
} from "../../../knowledge/trade/thread-identification.ts";

describe("rims", () => {
  test.each([
    ["6J x 15 H2 ET30", 6, 15, "J", 30],
    ["6 J x 15", 6, 15, "J", undefined],
    ["15 x 6 J", 6, 15, "J", undefined],
    ["13 x 5.50 B", 5.5, 13, "B", undefined],
    ["7Jx15 ET-12", 7, 15, "J", -12],
    ["5 1/2 J x 13", 5.5, 13, "J", undefined],
    ["5,5JK x 14 IS 20", 5.5, 14, "JK", 20],
  ])("%s", (text, width, diameter, flange, offset) => {
    const rim = readRimDesignation(text);
    expect([rim?.widthInches, rim?.diameterInches, rim?.flange, rim?.offsetMillimetres]).toEqual([
      width,
      diameter,
      flange,
      offset,
    ]);
  });

  test("back space is (width + 1 inch) × 12.7 + offset", () => {
    expect(backSpaceMillimetres(6, 30)).toBeCloseTo(118.9, 9);
    expect(backSpaceMillimetres(7, 0)).toBeCloseTo(101.6, 9);
    expect(readRimDesignation("6J x 15 ET30")?.backSpaceMillimetres).toBeCloseTo(118.9, 9);
  });

  test("widths outside 3 to 16 inches are no rims", () => {
    expect(readRimDesignation("2J x 15")).toBeUndefined();
    expect(readRimDesignation("20J x 15")).toBeUndefined();
    expect(readRimDesignation("three spokes")).toBeUndefined();
  });
});

describe("bolt circles", () => {
  test.each([
    [3, "adjacent", 1.1547],
    [4, "adjacent", Math.SQRT2],
    [5, "adjacent", 1.7013],
    [6, "adjacent", 2],
    [5, "next-but-one", 1.0515],
  ] as const)("%d holes, %s: circle = distance × %d", (bolts, span, factor) => {
    expect(1 / (spanRatio(bolts, span) ?? Number.NaN)).toBeCloseTo(factor, 4);
  });

  test("5 × 120 and 5 × 120.65 are both named at 70.5 mm", () => {
    const circle = boltCircleOf(5, 70.5, "adjacent");
    expect(circle?.candidates.map((candidate) => candidate.reading)).toEqual(["5 × 120", "5 × 120.65"]);
    expect(circle?.error).toBeCloseTo(0.85, 2);
  });

  test("4 × 100 and 5 × 120 look alike between neighbours, so the holes are counted first", () => {
    expect(boltCircleOf(4, 70.7, "adjacent")?.candidates.map((candidate) => candidate.reading)).toEqual([
      "4 × 100",
    ]);
    expect(boltCircleTrap(70.7)).toContain("5 × 120.65");
    expect(boltCircleTrap(90)).not.toContain("120.65");
  });

  test("holes that do not exist are refused", () => {
    expect(boltCircleOf(5, 120, "opposite")).toBeUndefined();
    expect(boltCircleOf(4, 100, "next-but-one")).toBeUndefined();
    expect(boltCircleOf(4, 100, "opposite")?.candidates[0]?.reading).toBe("4 × 100");
    expect(boltCircleOf(2, 100, "adjacent")).toBeUndefined();
    expect(boltCircleOf(11, 100, "adjacent")).toBeUndefined();
    expect(boltCircleOf(4, 0, "adjacent")).toBeUndefined();
  });
});

function threads(diameterMillimetres: number, pitchMillimetres: number): readonly string[] {
  return threadsOfMeasure({ diameterMillimetres, pitchMillimetres }).map((candidate) => candidate.reading);
}

describe("threads", () => {
  test.each(["1/4", "5/16", "3/8", "7/16", "9/16", "5/8", "3/4"])(
    "BSW and UNC %s share their pitch: both are named and the angle decides",
    (size) => {
      const row = THREADS.find((thread) => thread.series === "UNC" && thread.size === size);
      const found = threadsOfMeasure({
        diameterMillimetres: row?.majorDiameterMillimetres ?? 0,
        pitchMillimetres: row?.pitchMillimetres ?? 0,
      });
      expect(found.map((candidate) => candidate.reading)).toEqual(
        expect.arrayContaining([`UNC ${size}`, `BSW ${size}`]),
      );
      expect(threadTrap(found)).toContain("55° against 60°");
    },
  );

  test("at 1/2 inch they differ, 12 against 13 to the inch", () => {
    expect(threads(12.65, 25.4 / 13)).toContain("UNC 1/2");
    expect(threads(12.65, 25.4 / 13)).not.toContain("BSW 1/2");
    expect(threads(12.65, 25.4 / 12)).toContain("BSW 1/2");
  });

  test("0BA and M6 share diameter and pitch", () => {
    const found = threadsOfMeasure({ diameterMillimetres: 5.95, pitchMillimetres: 1 });
    expect(found.map((candidate) => candidate.reading)).toEqual(["ISO metric coarse M6", "BA 0BA"]);
    expect(threadTrap(found)).toContain("47.5° against 60°");
  });

  test("M5 × 0.8 and number 10 fine are both named while the caliper cannot part them", () => {
    expect(threads(4.8, 0.8)).toEqual(expect.arrayContaining(["ISO metric coarse M5", "UNF #10"]));
    expect(threads(4.95, 0.8)).not.toContain("UNF #10");
  });

  test("M8 × 1.25 is not 5/16-18", () => {
    expect(threads(7.93, 1.25)).toEqual(expect.arrayContaining(["ISO metric coarse M8"]));
    expect(threads(7.93, 1.25)).not.toContain("UNC 5/16");
    expect(threads(0.312 * 25.4, 25.4 / 18)).toEqual(["UNC 5/16", "BSW 5/16"]);
  });

  test("the band runs from 0.25 under to 0.05 over nominal, pitch within 2 %", () => {
    expect(threads(7.75, 1.25)).toContain("ISO metric coarse M8");
    expect(threads(7.74, 1.25)).not.toContain("ISO metric coarse M8");
    expect(threads(8.05, 1.25)).toContain("ISO metric coarse M8");
    expect(threads(8.06, 1.25)).not.toContain("ISO metric coarse M8");
    expect(threads(8, 1.275)).toContain("ISO metric coarse M8");
    expect(threads(8, 1.277)).not.toContain("ISO metric coarse M8");
  });

  test("BA follows BS 93: pitch 0.9^n, diameter 6 × pitch^1.2, rounded to two figures", () => {
    for (const thread of THREADS.filter((row) => row.series === "BA")) {
      const pitch = 0.9 ** Number.parseInt(thread.size, 10);
      expect(Math.abs(thread.pitchMillimetres - pitch)).toBeLessThan(0.006);
      expect(Math.abs(thread.majorDiameterMillimetres - 6 * pitch ** 1.2)).toBeLessThan(0.06);
    }
  });

  test("pitch times threads to the inch is an inch in every row", () => {
    for (const thread of THREADS) {
      expect(Math.abs((thread.pitchMillimetres * thread.threadsPerInch) / 25.4 - 1)).toBeLessThan(0.01);
    }
  });

  test("without any measure there is no candidate", () => {
    expect(threadsOfMeasure({})).toEqual([]);
  });
});

describe("bolt heads and hexagons", () => {
  test.each([
    [3, ["5", "5.2"]],
    [5, ["7"]],
    [6, ["8", "8.2"]],
    [0, ["1", "2"]],
    [4, []],
    [7, []],
  ])("%d lines: SAE J429 grades %j", (lines, grades) => {
    const found = readHeadLines(lines).map((reading) => /grade ([\d.]+)/.exec(reading.reading)?.[1]);
    expect(found).toEqual(grades);
  });

  test("no line and no maker's mark is treated as weakest", () => {
    expect(readHeadLines(0)[0]?.why).toContain("weakest");
  });

  test("8.8 is 800 MPa and 640 yield; a leading 0 is reduced", () => {
    expect(readHeadFigures("8.8")[0]?.why).toContain("800 MPa tensile × 0.8 = 640 MPa");
    expect(readHeadFigures("12.9")[0]?.why).toContain("1200 MPa tensile × 0.9 = 1080 MPa");
    expect(readHeadFigures("08.8")[0]?.why).toContain("reduced");
    expect(readHeadFigures("A2-70")).toHaveLength(1);
    expect(readHeadFigures("7.7")).toEqual([]);
  });

  test("proof never equals tensile: grade 5.2 and 7 are mended from memory", () => {
    expect(readHeadLines(5)[0]?.basis).toContain("common practice");
  });

  test("older marks are read as practice", () => {
    expect(readOldHeadMark("8G")[0]?.reading).toContain("German before 1968");
    expect(readOldHeadMark("three circles")[0]?.reading).toContain("Unified");
    expect(readOldHeadMark("Q")).toEqual([]);
  });

  test("a 17 mm hexagon is old DIN M10 or small Japanese M12", () => {
    expect(spannersOfWidth(17).map((reading) => reading.reading)).toEqual([
      "ISO metric M10",
      "ISO metric M12",
    ]);
    expect(spannersOfWidth(0.525 * 25.4).map((reading) => reading.reading)).toEqual([
      "BSW 1/4",
      "BSW 5/16",
      "BSF 5/16",
    ]);
    expect(spannersOfWidth(60)).toEqual([]);
  });
});
