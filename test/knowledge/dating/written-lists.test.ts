// Lists of sightings at their borders: what a cell may hold, what is said of one that may not, and text with commas written
// and read again (RFC 4180).
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  readCommaSeparated,
  unescapedCell,
  writeCommaSeparated,
} from "../../../knowledge/dating/comma-separated.ts";
import { type Sighting, sightingsOfChain, sightingsOfChange } from "../../../knowledge/dating/sighting.ts";
import { parseSightings } from "../../../knowledge/dating/sightings.ts";
import { granted } from "../../support/granted.ts";

const cellsOf = (text: string) =>
  readCommaSeparated(text).rows.map(({ cells }) => cells.map((cell) => cell.text));
const faultsOf = (text: string) => readCommaSeparated(text).faults;

describe("text with commas", () => {
  test("is written with the line ends of the standard, and quotes only where they are needed", () => {
    expect(
      writeCommaSeparated([
        ["a", "b c"],
        ['say "no"', "x,y", "two\nlines", "re\rturn"],
      ]),
    ).toBe('a,b c\r\n"say ""no""","x,y","two\nlines","re\rturn"\r\n');
    expect(writeCommaSeparated([])).toBe("");
  });
  test("has an apostrophe put in front of what a spreadsheet would work out, and taken away again", () => {
    for (const sign of ["=", "+", "-", "@", "\t", "\r"]) {
      const formula = `${sign}SUM(A1:A9)`;
      const [[cell = ""] = []] = cellsOf(writeCommaSeparated([[formula]]));
      expect(cell).toBe(`'${formula}`);
      expect(unescapedCell(cell)).toBe(formula);
    }
    expect(writeCommaSeparated([["a=b", "'tis"]])).toBe("a=b,'tis\r\n");
    expect(["'tis", "a'=b", "=b", ""].map(unescapedCell)).toEqual(["'tis", "a'=b", "=b", ""]);
  });
  test("is what it was after it was written and read", () => {
    const cell = fc.string({
      unit: fc.constantFrom("a", " ", ",", '"', "\n", "\r", "=", "'", "@"),
      maxLength: 8,
    });
    const row = fc
      .array(cell, { minLength: 1, maxLength: 4 })
      .filter((cells) => cells.some((one) => one.trim() !== ""));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 4 }), (rows) => {
        const back = cellsOf(writeCommaSeparated(rows)).map((cells) => cells.map(unescapedCell));
        // An apostrophe before such a sign was there before: the one ambiguity, and harmless.
        const meant = rows.map((cells) => cells.map(unescapedCell));
        expect(back.map((cells) => cells.map(unescapedCell))).toEqual(
          meant.map((cells) => cells.map(unescapedCell)),
        );
        expect(faultsOf(writeCommaSeparated(rows))).toEqual([]);
      }),
      { seed: 33, numRuns: 200 },
    );
  });
  test("has an empty cell after a comma at its end, and none after a line end", () => {
    expect(cellsOf("a,b,")).toEqual([["a", "b", ""]]);
    expect(readCommaSeparated("a,b,").rows[0]?.cells.map(({ column }) => column)).toEqual([1, 2, 3]);
    expect(cellsOf("a,b\n")).toEqual([["a", "b"]]);
    expect(cellsOf("a")).toEqual([["a"]]);
    expect(cellsOf("")).toEqual([]);
  });
  test("ends its lines in any system's way, each counted once", () => {
    expect(readCommaSeparated("a\rb\r\nc\nd").rows.map(({ row }) => row)).toEqual([1, 2, 3, 4]);
    expect(readCommaSeparated('"one\rtwo\r\nthree\nfour"\nx').rows.map(({ row }) => row)).toEqual([1, 5]);
  });
  test("with blanks alone in a line has no row there, though the line is counted", () => {
    expect(readCommaSeparated("a\n , ,\nb").rows.map(({ row, cells }) => [row, cells.length])).toEqual([
      [1, 1],
      [3, 1],
    ]);
  });
  test("says which cell's quote is open or has something after it, in the line where the cell begins", () => {
    expect(faultsOf('a\nb,"c\nd')).toEqual([
      { row: 2, column: 2, message: "the quote that opens this cell is never closed" },
    ]);
    expect(faultsOf('a\n"b"x,"c" \n')).toEqual([
      { row: 2, column: 1, message: "there is text after the closing quote" },
    ]);
    expect(faultsOf('"a""b",c')).toEqual([]);
    expect(cellsOf('"a""b","" ,"""')).toEqual([['a"b', "", '"']]);
  });
});

describe("what stands in a list of sightings", () => {
  const read = (columns: string, row: string) => parseSightings(`${columns}\n${row}\n`);
  const messages = (columns: string, row: string): readonly string[] => {
    const found = read(columns, row);
    return found.ok ? [] : found.problem.map(({ message }) => message);
  };
  const one = (columns: string, row: string): Sighting => {
    const [sighting] = granted(read(columns, row));
    if (!sighting) throw new Error("one row is one sighting");
    return sighting;
  };
  test("may be a misread rate of up to one half, with or without its nought", () => {
    expect(
      ["0", "0.5", ".25", "0.031"].map((rate) => one("variant,built,misread", `x,1980,${rate}`).misread),
    ).toEqual([0, 0.5, 0.25, 0.031]);
    for (const rate of ["0.51", "1", "5", "-0.1", "x0.1", "0.1x", "0.", "."]) {
      expect(messages("variant,built,misread", `x,1980,${rate}`)).toContain(
        "a misread rate is a number from 0 to .5",
      );
    }
  });
  test("may be a date, or a stretch from the start of one to the end of another", () => {
    expect(one("variant,built", "x,1979-05/1979-08").built).toEqual({
      from: 12 * 1979 + 4,
      to: 12 * 1979 + 8,
    });
    expect(one("variant,built", "x,1979-05 / 1979-05").built).toEqual({
      from: 12 * 1979 + 4,
      to: 12 * 1979 + 5,
    });
    expect(one("variant,built", "x,1980").built).toEqual({ from: 12 * 1980, to: 12 * 1981 });
    for (const text of ["1979-05/", "/1979-05", "1979/x", "1980/1979", "1979/1979/1979", "May 1979", ""]) {
      expect(messages("variant,built", `x,${text}`)).toEqual([
        "a build date is written 1980, 1980-05, 1980-05-17, 1981-W31, or two of them with / between",
      ]);
    }
  });
  test("is told apart by what the sighting says of its car, and nothing is made up of what it does not say", () => {
    expect(one("variant,built,model,trim,market,note", "x,1980,shrike,s,home,seen")).toEqual({
      id: "row-2",
      variant: "x",
      built: { from: 12 * 1980, to: 12 * 1981 },
      grade: "history-unknown",
      misread: 0.02,
      isSought: false,
      isRuledAsBuilt: false,
      model: "shrike",
      trim: "s",
      market: "home",
      note: "seen",
    });
    expect(Object.keys(one("variant,built,model,note", "x,1980,,"))).not.toContain("model");
    expect(Object.keys(one("variant,built", "x,1980"))).toHaveLength(7);
  });
  test("is read whatever the case and blanks of its columns, and however they stand", () => {
    expect(one(" BUILT , Variant,SOUGHT,ruling", "1980, x ,yes,as-built")).toMatchObject({
      variant: "x",
      isSought: true,
      isRuledAsBuilt: true,
    });
  });
  test("is refused in words that say what is needed", () => {
    expect(messages("variant,built", ",1980")).toEqual(["a sighting names the variant that was seen"]);
    expect(messages("variant,built,sought", "x,1980,maybe")).toEqual(["sought is yes or no"]);
    expect(messages("variant,built,ruling", "x,1980,maybe")).toEqual(["a ruling is as-built or nothing"]);
    expect(messages("variant,built,grade", "x,1980,fair")[0]).toContain(
      "a grade is one of documented-from-new, ",
    );
    expect(messages("variant,colour,built", "x,red,1980")[0]).toContain(
      'there is no column "colour"; the columns are id, variant, built, ',
    );
    expect(messages("variant", "x")).toEqual(["the column built is missing"]);
    expect(messages("variant,built,variant", "x,1980,y")).toEqual([
      "the column variant stands here a second time",
    ]);
    expect(messages("variant,built", "x,1980,y,z")).toEqual([
      "this row has 4 cells, the first row names 2 columns",
    ]);
    expect(messages("id,variant,built", "a,x,1980\na,y,1981")).toEqual([
      'the id "a" has been given to an earlier sighting',
    ]);
    const empty = parseSightings("\n\n");
    expect(!empty.ok && empty.problem[0]?.message).toBe("the text is empty: its first row names the columns");
    const many = parseSightings(`variant,built\n${"x,1980\n".repeat(20_001)}`);
    expect(!many.ok && many.problem[0]?.message).toBe("more than 20000 sightings at once");
    expect(parseSightings(`variant,built\n${"x,1980\n".repeat(20_000)}`).ok).toBe(true);
  });
  test("is no longer than a name of 120 characters and a note of 2000", () => {
    const bounds = { id: 120, variant: 120, model: 120, trim: 120, market: 120, note: 2000 } as const;
    for (const [column, most] of Object.entries(bounds)) {
      const columns = column === "variant" ? "built,variant" : `variant,built,${column}`;
      const start = column === "variant" ? "1980," : "x,1980,";
      expect(messages(columns, `${start}${"m".repeat(most)}`)).toEqual([]);
      expect(messages(columns, `${start}${"m".repeat(most + 1)}`)).toEqual([
        `no more than ${most} characters stand here`,
      ]);
    }
  });
});

describe("sightings of a change", () => {
  const all = granted(
    parseSightings(
      "id,variant,built,grade,misread,sought\na,x,1980,one-owner,0,yes\nb,y,1981,,0.1,\nc,z,1982,,,\n",
    ),
  );
  test("say of each whether it is new, how likely swapped and misread, and whether it was sought", () => {
    expect(sightingsOfChange(all, ["x"], ["y"])).toEqual([
      { id: "a", isNew: false, built: all[0]?.built, swap: 0.06, misread: 0.005, isSought: true },
      { id: "b", isNew: true, built: all[1]?.built, swap: 0.2, misread: 0.1, isSought: false },
    ]);
  });
  test("stand for as many cars as were counted", () => {
    const counted = all.map((one) => ({ ...one, count: 7 }));
    expect(sightingsOfChange(counted, ["x"], []).map(({ count }) => count)).toEqual([7]);
  });
  test("of a chain have their place in it", () => {
    expect(sightingsOfChain(all, ["z", "x"])).toEqual([
      { id: "a", variant: 1, built: all[0]?.built, swap: 0.06, misread: 0 },
      { id: "c", variant: 0, built: all[2]?.built, swap: 0.2, misread: 0.02 },
    ]);
  });
});
