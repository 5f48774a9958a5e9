import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSheets, writeSheets } from "../../../adapters/spreadsheets/index.ts";
import { loadHandbook, readTable, tableOfPart } from "../../../knowledge/index.ts";
import { arbitraryTells } from "../../support/arbitrary-claims.ts";
import { carefulFiles } from "../../support/careful-handbook.ts";
import { newFolder, root } from "../program.ts";

const loaded = loadHandbook(carefulFiles());
if (!loaded.ok) throw new Error("the careful handbook is refused");
const { sources, parts } = loaded.handbook;
const [part] = parts;
if (part === undefined) throw new Error("the careful handbook has no part");
const question = (sheet: Parameters<typeof readTable>[0]["sheet"]) => ({ part, sources, sheet });
const files = join(root, "test/adapters/spreadsheets/files");

describe.each(["csv", "xlsx"])("a table written as %s", (ending) => {
  test("is read back without loss, whatever is claimed", async () => {
    const file = join(newFolder(), `door-handle.${ending}`);
    await fc.assert(
      fc.asyncProperty(
        arbitraryTells(
          part,
          sources.map(({ id }) => id),
        ),
        async (tells) => {
          const variants = part.variants.map((variant, index) => ({ ...variant, tells: tells[index] ?? {} }));
          const wanted = { ...part, variants };
          await writeSheets(file, [tableOfPart(wanted)]);
          const [sheet] = await readSheets(file);
          if (sheet === undefined) throw new Error("no sheet came back");
          expect(sheet.name).toBe("door-handle");
          const back = readTable({ part: wanted, sources, sheet });
          expect(back).toMatchObject({ unread: [], added: [] });
          expect(back.claims).toEqual(new Map());
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });

  test("keeps a name that looks like a formula, and quotes, commas and line ends in names", async () => {
    const file = join(newFolder(), `odd.${ending}`);
    const rows = [
      ["variant", "name"],
      ["copy", "=SUM(A1)"],
      ["round", 'a "b", c\nd; é ☂'],
    ];
    await writeSheets(file, [{ name: "odd", rows }]);
    expect(await readSheets(file)).toEqual([{ name: "odd", rows }]);
  });
});

test("a text that a spreadsheet would take for a formula does not stand bare in a CSV", async () => {
  const file = join(newFolder(), "odd.csv");
  await writeSheets(file, [{ name: "odd", rows: [["=cmd()", "+1", "-2", "@x"]] }]);
  expect(readFileSync(file, "utf8")).toBe("\uFEFF'=cmd(),'+1,'-2,'@x\r\n");
});

test("a workbook holds a sheet for each part kind, long names cut to what is allowed", async () => {
  const file = join(newFolder(), "all.xlsx");
  const long = "a-part-kind-with-a-very-long-name-indeed";
  await writeSheets(
    file,
    [long, `${long}-too`].map((name) => ({ name, rows: [["variant"], ["x"]] })),
  );
  expect((await readSheets(file)).map(({ name }) => name)).toEqual(
    ["a-part-kind-with-a-very-long-na", "a-part-kind-with-a-very-long-2"].map((name) => name.slice(0, 31)),
  );
});

describe("LibreOffice 7.4 (Debian 12) wrote", () => {
  test.each(["handles-by-libreoffice.xlsx", "handles-by-libreoffice.csv"])(
    "%s, which is read without loss",
    async (name) => {
      const [sheet] = await readSheets(join(files, name));
      if (sheet === undefined) throw new Error("no sheet");
      expect(readTable(question(sheet))).toMatchObject({ claims: new Map(), unread: [], cells: 41 });
    },
  );

  test("slips-by-libreoffice.xlsx, in which every slip is named with its sheet and cell", async () => {
    const [sheet] = await readSheets(join(files, "slips-by-libreoffice.xlsx"));
    if (sheet === undefined) throw new Error("no sheet");
    const { unread, claims } = readTable(question(sheet));
    expect(unread.map(({ sheet: where, cell, written }) => `${where}!${cell} ${written}`)).toEqual([
      "slips!H1 buttn: steel",
      "slips!L1 colour",
      "slips!F2 2026-05-09",
      "slips!C3 0.85",
      "slips!F3 usualy",
      "slips!J3 ",
      "slips!A4 frist",
      "slips!D5 allways",
      "slips!I5 120 mm",
      "slips!K5 gossip",
    ]);
    expect(claims.get("flat-early")?.get("length")).toEqual({
      said: { mean: 140.5, spread: 0.5 },
      sources: ["measured"],
    });
  });
});

describe("a CSV", () => {
  const rows = [
    ["variant", "name"],
    ["copy", "Türgriff"],
  ];

  test.each([
    ["semicolons", Buffer.from("variant;name\r\ncopy;Türgriff\r\n")],
    ["tabs", Buffer.from("variant\tname\ncopy\tTürgriff\n")],
    ["a byte order mark", Buffer.from("\uFEFFvariant,name\ncopy,Türgriff\n")],
    ["the letters of Windows", Buffer.from("variant,name\ncopy,T\xfcrgriff\n", "latin1")],
    ["UTF-16", Buffer.from("\uFEFFvariant,name\ncopy,Türgriff\n", "utf16le")],
  ])("with %s is read", async (_, bytes) => {
    const file = join(newFolder(), "x.csv");
    writeFileSync(file, bytes);
    expect((await readSheets(file))[0]?.rows).toEqual(rows);
  });
});

describe("refused with one line:", () => {
  test.each([
    ["x.ods", "", "a file that ends in .csv or .xlsx is needed"],
    ["x.xlsx", "no zip", "no XLSX workbook, or a damaged one"],
  ])("%s", async (name, content, message) => {
    const file = join(newFolder(), name);
    writeFileSync(file, content);
    await expect(readSheets(file)).rejects.toThrow(message);
  });

  test("a file that is not there, two part kinds in a CSV, an ending nobody knows", async () => {
    await expect(readSheets("/nowhere/x.csv")).rejects.toThrow("cannot be read");
    const two = [
      { name: "a", rows: [] },
      { name: "b", rows: [] },
    ];
    await expect(writeSheets(join(newFolder(), "x.csv"), two)).rejects.toThrow("--part");
    await expect(writeSheets("x.ods", two)).rejects.toThrow(".xlsx");
    await expect(writeSheets("/nowhere/x.xlsx", two)).rejects.toThrow("cannot be written");
  });
});
