import { describe, expect, test } from "vitest";
import { cautionById } from "../../../knowledge/trade/cautions.ts";
import {
  provenanceGradeById,
  readPaintSystems,
  readProvenanceGrades,
  readSmallRunSpreads,
} from "../../../knowledge/trade/provenance.ts";
import { APPROVAL_AUTHORITIES } from "../../../knowledge/trade/tables/approval-authorities.ts";
import { BELT_MIRROR_CODES } from "../../../knowledge/trade/tables/belt-mirror-codes.ts";
import { BOLT_GRADES } from "../../../knowledge/trade/tables/bolt-grades.ts";
import { CAUTIONS } from "../../../knowledge/trade/tables/cautions.ts";
import { DATE_MARK_FORMATS } from "../../../knowledge/trade/tables/date-mark-formats.ts";
import { DATED_REQUIREMENTS } from "../../../knowledge/trade/tables/dated-requirements.ts";
import { PLASTICS } from "../../../knowledge/trade/tables/plastics.ts";
import { SMALL_RUN_SPREADS } from "../../../knowledge/trade/tables/small-run-spreads.ts";
import type { Sourced } from "../../../knowledge/trade/tables/sourced.ts";
import { THREADS } from "../../../knowledge/trade/tables/threads.ts";
import { UN_REGULATIONS } from "../../../knowledge/trade/tables/un-regulations.ts";
import {
  BROWN_TRAP,
  findWireColour,
  readEarthColours,
  readTerminal,
  readWireColour,
} from "../../../knowledge/trade/wiring-colours.ts";

const TABLES: readonly (readonly [string, readonly Sourced[], number])[] = [
  ["approval authorities", APPROVAL_AUTHORITIES, 66],
  ["belt and mirror codes", BELT_MIRROR_CODES, 22],
  ["bolt grades", BOLT_GRADES, 23],
  ["cautions", CAUTIONS, 22],
  ["date mark formats", DATE_MARK_FORMATS, 24],
  ["dated requirements", DATED_REQUIREMENTS, 23],
  ["plastics", PLASTICS, 26],
  ["small-run spreads", SMALL_RUN_SPREADS, 27],
  ["threads", THREADS, 128],
  ["UN regulations", UN_REGULATIONS, 48],
];

describe("tables", () => {
  test.each(TABLES)(
    "%s: every row has a source, and nothing from memory is called a standard",
    (_name, rows, count) => {
      expect(rows).toHaveLength(count);
      for (const row of rows) {
        expect(row.source).not.toBe("");
        expect(row.basis === "standard" && /^common practice|no source/.test(row.source)).toBe(false);
      }
    },
  );
});

describe("wires", () => {
  test("brown is the battery feed in one standard and earth in the other: both are said", () => {
    const readings = readWireColour("brown").map((reading) => reading.reading);
    expect(readings).toEqual(["BS AU 7: brown is main battery feed, unfused", "DIN 72551: brown is earth"]);
    expect(BROWN_TRAP).toContain("where the loom was made");
  });

  test("earth is black in one loom and brown in the other", () => {
    expect(readEarthColours().map((reading) => reading.reading)).toEqual([
      "BS AU 7: earth is black",
      "DIN 72551: earth is brown",
    ]);
  });

  test("colours and terminals are found in words", () => {
    expect(findWireColour("the gray wire")).toBe("grey");
    expect(findWireColour("light green/orange")).toBe("light green");
    expect(findWireColour("a braided cable")).toBeUndefined();
    expect(readTerminal("15")[0]?.reading).toContain("ignition");
    expect(readTerminal("86")[0]?.reading).toContain("relay coil");
    expect(readTerminal("99")).toEqual([]);
  });
});

describe("cautions, grades, spreads and paint", () => {
  test("a caution is one line with its authority", () => {
    expect(cautionById("isocyanate")?.line).toContain("air-fed");
    expect(cautionById("nonsense")).toBeUndefined();
    expect(new Set(CAUTIONS.map((row) => row.id)).size).toBe(CAUTIONS.length);
  });

  test("hearsay and replaced parts stand at the foot of the grades, each with a word beside its number", () => {
    expect(provenanceGradeById("E")?.chance).toBe(0.1);
    expect(provenanceGradeById("X")?.chance).toBe(0);
    expect(provenanceGradeById("Z")).toBeUndefined();
    const grades = readProvenanceGrades().map((reading) => reading.reading);
    expect(grades[0]).toContain("extremely likely (97 %)");
    expect(grades.at(-1)).toContain("exceptionally unlikely (under 1 %)");
  });

  test("spreads are found by the words of the question", () => {
    expect(readSmallRunSpreads("how heavy can a hand lay-up panel mass differ")[0]?.reading).toContain(
      "8 to 20 percent",
    );
    expect(readSmallRunSpreads("xyzzy")).toEqual([]);
  });

  test("paint systems are narrowed by name, or all are given", () => {
    expect(readPaintSystems("when was cellulose used").map((reading) => reading.reading)).toEqual([
      "nitrocellulose lacquer: 1924 to about 1965",
    ]);
    expect(readPaintSystems("which paints")).toHaveLength(10);
  });
});
