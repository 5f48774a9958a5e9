// Examples of ISO 11469 with ISO 1043 from secondary texts and the extract of ISO 1043-2.
import { describe, expect, test } from "vitest";
import { parseDateText } from "../../../knowledge/calendar/date-text.ts";
import {
  findAskedMaterialCode,
  findMaterialMarks,
  MATERIAL_MARK_BEGINS,
} from "../../../knowledge/trade/material-mark.ts";

describe("moulded material marks", () => {
  test.each([
    [">ABS<", "acrylonitrile-butadiene-styrene"],
    [">PP-TD20<", "polypropylene, 20 % talc powder"],
    [">PP-GF30<", "polypropylene, 30 % glass fibre"],
    [">PA66-MD20<", "polyamide 66 (nylon), 20 % mineral powder"],
    [">PA66-GF30<", "polyamide 66 (nylon), 30 % glass fibre"],
    [">PP-MD30<", "polypropylene, 30 % mineral powder"],
    [">PS-HI-GF20<", "polystyrene, high impact, 20 % glass fibre"],
    [">PA66-(GF25+MD15)<", "polyamide 66 (nylon), 25 % glass fibre, 15 % mineral powder"],
    [">PC+ABS<", "polycarbonate with acrylonitrile-butadiene-styrene; the first named is the larger share"],
    [">PVC-P(DBP)<", "polyvinyl chloride, plasticised (DBP)"],
    [">PA6-FR(40)<", "polyamide 6 (nylon), flame retardant (40)"],
    [">PP-(REC)<", "polypropylene, recycled"],
    [">UP-GCM<", "unsaturated polyester, glass chopped-strand mat"],
    ["> PP-TD20 <", "polypropylene, 20 % talc powder"],
  ])("%s reads as %s", (mark, words) => {
    const [found] = findMaterialMarks(`on the back: ${mark}.`);
    expect(found?.reading.split(": ")[1]).toBe(words);
    expect(found?.isFullyRead).toBe(true);
  });

  test("the symbols hold the code first and then each plastic", () => {
    expect(findMaterialMarks(">PC+ABS<")[0]?.symbols).toEqual(["PC+ABS", "PC", "ABS"]);
    expect(findMaterialMarks(">PP-TD20<")[0]?.symbols).toEqual(["PP-TD20", "PP"]);
  });

  test("the density is that of the table, or of the mixture when one filler is named", () => {
    expect(findMaterialMarks(">PP-TD20<")[0]?.density).toEqual({ from: 1.03, to: 1.06 });
    const mixed = findMaterialMarks(">PP-GF30<")[0]?.density;
    expect(mixed?.from).toBeLessThan(1.123);
    expect(mixed?.to).toBeGreaterThan(1.123);
    expect(findMaterialMarks(">PS-HI-GF20<")[0]?.density).toBeUndefined();
  });

  test("a process name is no symbol and an unknown one is said to be unknown", () => {
    expect(findMaterialMarks(">SMC<")[0]?.reading).toContain("not an ISO 1043 symbol");
    expect(findMaterialMarks(">XYZ<")[0]?.isFullyRead).toBe(false);
  });

  test("comparison signs in a sentence are no marks", () => {
    expect(findMaterialMarks("5 > 3 and 2 < 4")).toEqual([]);
    expect(findMaterialMarks("> quoted text")).toEqual([]);
  });

  test("a code without points is read only when asked for", () => {
    expect(findAskedMaterialCode("what does UP-GF mean")?.code).toBe("UP-GF");
    expect(findAskedMaterialCode("what does DOT mean")).toBeUndefined();
    expect(findMaterialMarks("it is ABS")).toEqual([]);
  });

  test("the marks begin with ISO 1043-1, 15 December 1987", () => {
    expect(MATERIAL_MARK_BEGINS).toEqual(parseDateText("1987-12-15"));
  });
});
