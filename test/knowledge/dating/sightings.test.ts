import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCommaSeparated } from "../../../knowledge/dating/comma-separated.ts";
import { sightingsOfChain, sightingsOfChange } from "../../../knowledge/dating/sighting.ts";
import { parseSightings } from "../../../knowledge/dating/sightings.ts";
import { granted } from "../../support/granted.ts";

const list = `id,variant,built,grade,sought,ruling,market,note
WS-a,first-pressing,1979-05-17,one-owner,no,,home,"seen at Wexcombe, 2014"
WS-b,moulded,1981-W31,documented-from-new,yes,as-built,america,"says ""never apart"""
,moulded,1980/1981,,,,,=SUM(A1:A9)
`;

describe("a list of sightings", () => {
  const sightings = granted(parseSightings(list));
  test("is read with its dates, grades and rulings", () => {
    expect(sightings).toHaveLength(3);
    expect(sightings[0]).toMatchObject({
      id: "WS-a",
      variant: "first-pressing",
      grade: "one-owner",
      isSought: false,
    });
    expect(sightings[0]?.note).toBe("seen at Wexcombe, 2014");
    expect(sightings[1]).toMatchObject({ isSought: true, isRuledAsBuilt: true, market: "america" });
    expect(sightings[1]?.note).toBe('says "never apart"');
    expect(sightings[2]?.built).toEqual({ from: 12 * 1980, to: 12 * 1982 });
  });
  test("gives a row without an id its line, and what is left out its usual value", () => {
    expect(sightings[2]).toMatchObject({
      id: "row-4",
      grade: "history-unknown",
      misread: 0.02,
      isSought: false,
    });
  });
  test("keeps a cell that looks like a formula as text", () => {
    expect(sightings[2]?.note).toBe("=SUM(A1:A9)");
  });
  test("serves a changeover and a chain: a ruling is no swap, other variants say nothing", () => {
    const change = sightingsOfChange(sightings, ["first-pressing"], ["moulded"]);
    expect(change.map(({ isNew, swap }) => [isNew, swap])).toEqual([
      [false, 0.06],
      [true, 0],
      [true, 0.2],
    ]);
    expect(sightingsOfChange(sightings, ["first-pressing"], [])).toHaveLength(1);
    expect(sightingsOfChain(sightings, ["moulded"]).map(({ variant }) => variant)).toEqual([0, 0]);
  });
});

describe("faults are all named with row and column", () => {
  const faults = (text: string): readonly (readonly [string, number, number])[] => {
    const read = parseSightings(text);
    return read.ok ? [] : read.problem.map(({ code, row, column }) => [code, row, column] as const);
  };
  test("wrong cells", () => {
    const text = "variant,built,grade,misread,sought\n,1979-13,fair,0.7,maybe\nmoulded,1980,,,\n";
    expect(faults(text)).toEqual([
      ["cell", 2, 1],
      ["cell", 2, 2],
      ["cell", 2, 3],
      ["cell", 2, 4],
      ["cell", 2, 5],
    ]);
  });
  test("columns that are unknown, missing or twice there", () => {
    expect(faults("variant,colour,variant\n")).toEqual([
      ["column-unknown", 1, 2],
      ["column-twice", 1, 3],
      ["column-missing", 1, 0],
    ]);
    expect(faults("")).toEqual([["column-missing", 1, 0]]);
  });
  test("ids given twice, rows too long, quotes left open", () => {
    expect(faults("id,variant,built\na,x,1980\na,x,1981\n")).toEqual([["id-twice", 3, 1]]);
    expect(faults("variant,built\nx,1980,extra\n")).toEqual([["csv", 2, 3]]);
    expect(faults('variant,built\nx,"1980\n')).toEqual([["csv", 2, 2]]);
    expect(faults('variant,built\nx,"1980"s\n')).toEqual([["csv", 2, 2]]);
  });
  test("a stretch that runs backwards, and three dates in one cell", () => {
    expect(faults("variant,built\nx,1981/1979\nx,1979/1980/1981\n")).toEqual([
      ["cell", 2, 2],
      ["cell", 3, 2],
    ]);
  });
  test("not more than two hundred at once, and not more than twenty thousand rows", () => {
    expect(faults(`variant,built\n${"x,never\n".repeat(500)}`)).toHaveLength(200);
    expect(faults(`variant,built\n${"x,1980\n".repeat(20_001)}`)).toEqual([["too-many-rows", 20_000, 0]]);
  });
});

describe("comma-separated text (RFC 4180)", () => {
  test("rows are numbered by the line they begin on, whatever ends the lines and whatever stands in quotes", () => {
    const { rows } = readCommaSeparated('\uFEFFa,b\r\n"one\ntwo",c\r\n\r\nd,\r\n');
    expect(rows.map(({ row, cells }) => [row, ...cells.map(({ text }) => text)])).toEqual([
      [1, "a", "b"],
      [2, "one\ntwo", "c"],
      [5, "d", ""],
    ]);
  });
  test("what is written with quotes is read back", () => {
    const cell = fc.string({ maxLength: 12 }).filter((text) => text.trim() !== "");
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 5 }), (table) => {
        const text = table
          .map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(","))
          .join("\n");
        const { rows, faults } = readCommaSeparated(text);
        expect(faults).toEqual([]);
        expect(rows.map(({ cells }) => cells.map((one) => one.text))).toEqual(table);
      }),
      { seed: 31 },
    );
  });
  test("no text makes the reader fall over", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200, unit: fc.constantFrom(",", '"', "\n", "\r", "a", "=", " ") }),
        (text) => {
          expect(typeof parseSightings(text).ok).toBe("boolean");
        },
      ),
      { seed: 32, numRuns: 300 },
    );
  });
});
