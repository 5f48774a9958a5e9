import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import type { Handbook, PartKind } from "../../../knowledge/handbook/schema.ts";
import { applyTables } from "../../../knowledge/spreadsheet/apply-tables.ts";
import { readTable } from "../../../knowledge/spreadsheet/read-table.ts";
import { type Cell, cellName, type Sheet } from "../../../knowledge/spreadsheet/sheet.ts";
import { tableOfPart } from "../../../knowledge/spreadsheet/table-of-part.ts";
import { arbitraryTells, type Tells } from "../../support/arbitrary-claims.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";

function handbookOf(files = carefulFiles()): Handbook {
  const loaded = loadHandbook(files);
  if (!loaded.ok) throw new Error("the careful handbook is refused");
  return loaded.handbook;
}

const handbook = handbookOf();
const [handle] = handbook.parts;
if (handle === undefined) throw new Error("the careful handbook has no part");
const part: PartKind = handle;
const sources = handbook.sources.map(({ id }) => id);
const text = carefulHandbook["parts/door-handle.yaml"] ?? "";

const read = (rows: readonly (readonly Cell[])[]) =>
  readTable({ part, sources: handbook.sources, sheet: { name: "handles", rows } });

function applied(sheet: Sheet, files = carefulFiles()) {
  const { parts, sources: known } = handbookOf(files);
  const tables = parts.map((one) => [one.id, readTable({ part: one, sources: known, sheet })] as const);
  return applyTables(files, new Map(tables));
}

describe("a table", () => {
  test("of a part kind read back changes nothing", () => {
    const back = readTable({ part, sources: handbook.sources, sheet: tableOfPart(part) });
    expect(back).toMatchObject({ claims: new Map(), added: [], unread: [] });
  });

  test("carries whatever claims there may be into the YAML and out again without loss", () => {
    fc.assert(
      fc.property(arbitraryTells(part, sources), (tells) => {
        const wanted = {
          ...part,
          variants: part.variants.map((variant, index) => ({ ...variant, tells: tells[index] ?? {} })),
        };
        const { changed } = applied(tableOfPart(wanted));
        const after = changed[0]?.text ?? text;
        // Read by the library and not by the loader, which refuses shares that pass the whole.
        const said = parse(after).variants.map((variant: { readonly tells?: Tells }) =>
          Object.fromEntries(
            Object.entries(variant.tells ?? {}).map(([id, claim]) => [
              id,
              { ...claim, sources: claim.sources ?? [] },
            ]),
          ),
        );
        expect(said).toEqual(tells);
      }),
      { seed: 11, numRuns: 120 },
    );
  });

  test("leaves every byte of the YAML that it does not change, comments too", () => {
    const commented = text
      .replace("    tells:\n      lever: { round", "    tells: # seen by three\n      lever: { round")
      .replace("button: { not-there: always }", "button: { not-there: always } # truly none");
    const rows = tableOfPart(part).rows.map((row) => row.map((cell) => (cell === 120 ? 121 : cell)));
    const { changed } = applied({ name: "x", rows }, carefulFiles({ "parts/door-handle.yaml": commented }));
    expect(changed).toEqual([
      {
        path: "parts/door-handle.yaml",
        text: commented.replace("{ mean: 120, spread: 0.5 }", "{ mean: 121, spread: 0.5 }"),
      },
    ]);
  });

  test("written line by line leaves the comments beside what it does not change", () => {
    const lines = `      lever: # looked at from above
        # both by P. Ferris
        flat: usually # 17 seen
        hooked: sometimes
        sources:
          - measured # in 2019
          - ledger`;
    const commented = text.replace(/ {6}lever: \{ flat: usually, hooked: sometimes[^\n]*/u, () => lines);
    const files = carefulFiles({ "parts/door-handle.yaml": commented });
    const put = (flat: Cell, round: Cell, hooked: Cell, cited: Cell) => {
      const rows = [
        ["variant", "lever: flat", "lever: round", "lever: hooked", "lever: sources"],
        ["copy", flat, round, hooked, cited],
      ];
      return applied({ name: "x", rows }, files).changed[0]?.text;
    };
    const cited = "measured, ledger";
    expect(put("usually", null, "sometimes", cited)).toBeUndefined();
    expect(put("often", null, "sometimes", cited)).toBe(
      commented.replace("flat: usually #", "flat: often #"),
    );
    expect(put("usually", "rarely", null, cited)).toBe(
      commented
        .replace("        hooked: sometimes\n", "")
        .replace("          - ledger\n", "          - ledger\n        round: rarely\n"),
    );
    expect(put("usually", null, "sometimes", "ledger")).toContain(
      "flat: usually # 17 seen\n        hooked: sometimes\n        sources: [ledger]\n",
    );
    expect(put(null, "always", null, null)).toContain("      lever: { round: always }\n");
  });

  test("carries whatever claims there may be into claims that are written line by line, and out again without loss", () => {
    const blocks = text.replaceAll(
      /^( {6})([a-z-]+): \{ (.+) \}$/gmu,
      (_, indent, feature, inside: string) => {
        const said = inside.split(/, (?=[a-z-]+: )/u).map((one) => `${indent}  ${one} # ${feature}`);
        return [`${indent}${feature}:`, ...said].join("\n");
      },
    );
    const files = carefulFiles({ "parts/door-handle.yaml": blocks });
    expect(blocks.split("\n").length).toBeGreaterThan(text.split("\n").length + 10);
    fc.assert(
      fc.property(arbitraryTells(part, sources), (tells) => {
        const variants = part.variants.map((variant, index) => ({ ...variant, tells: tells[index] ?? {} }));
        // A row of nobody's, so that there is a column for "not there" of every feature.
        const lacking = part.features.map(({ id }) => [id, { "not-there": "always", sources: [] }] as const);
        const nobody = { ...part.variants[0], id: "nobody", tells: Object.fromEntries(lacking) };
        const wanted = { ...part, variants: [...variants, nobody] } as PartKind;
        const after = applied(tableOfPart(wanted), files).changed[0]?.text ?? blocks;
        const said = parse(after).variants.map((variant: { readonly tells?: Tells }) =>
          Object.fromEntries(
            Object.entries(variant.tells ?? {}).map(([id, claim]) => [
              id,
              { ...claim, sources: claim.sources ?? [] },
            ]),
          ),
        );
        expect(said).toEqual(tells);
      }),
      { seed: 12, numRuns: 120 },
    );
  });

  test("adds a claim after the last, takes one out by the line, and writes tells where there were none", () => {
    const bare = text.replace(/ {4}tells:\n {6}lever: \{ flat: usually[\s\S]*?coil: always \}\n/u, "");
    const rows = [
      ["variant", "button", "spring: coil", "length"],
      ["flat-early", null, "often", "140 ± 0.5"],
      ["copy", "steel: always", null, "138 ± 0,8 mm"],
    ];
    const { changed } = applied({ name: "x", rows }, carefulFiles({ "parts/door-handle.yaml": bare }));
    const after = changed[0]?.text ?? "";
    expect(after).toContain(
      "      length: { mean: 140, spread: 0.5, sources: [measured] }\n      spring: { coil: often }\n",
    );
    expect(after).not.toContain("9 of 9");
    expect(after).toContain(
      "    sources: [measured]\n    tells:\n      button: { steel: always }\n      length: { mean: 138, spread: 0.8 }\n",
    );
  });

  test("takes claims in one line of YAML as they are", () => {
    const flow = text.replace(
      /tells:\n {6}lever: \{ round: always \}[\s\S]*?leaf: always \}\n/u,
      "tells: { lever: { round: always }, length: { mean: 120, spread: 0.5 } }\n",
    );
    const rows = [
      ["variant", "lever: flat", "spring: leaf"],
      ["round", "rarely", "always"],
    ];
    const { changed, loaded } = applied(
      { name: "x", rows },
      carefulFiles({ "parts/door-handle.yaml": flow }),
    );
    expect(changed[0]?.text).toContain("length: { mean: 120, spread: 0.5 }");
    expect(loaded.ok && loaded.handbook.parts[0]?.variants[2]?.tells).toMatchObject({
      lever: { round: "always", flat: "rarely" },
      spring: { leaf: "always" },
    });
  });

  test("brings a new variant along when the row says enough of it", () => {
    const rows = [
      ["variant", "name", "origin", "from", "to", "summary", "lever: round", "lever: sources"],
      ["round-plastic", "Plastic handle", "service", "1981", "1990", "Sold later.", "always", "nine handles"],
    ];
    const { loaded, changed } = applied({ name: "x", rows });
    expect(changed[0]?.text.split("misbeliefs:")[0]).toContain(
      "\n\n  - id: round-plastic\n    name: Plastic handle\n",
    );
    const fresh = loaded.ok ? loaded.handbook.parts[0]?.variants.at(-1) : undefined;
    expect(fresh).toMatchObject({
      id: "round-plastic",
      name: "Plastic handle",
      origin: "service",
      sold: [{ from: "1981", to: "1990" }],
      tells: { lever: { round: "always", sources: ["measured"] } },
    });
  });
});

test("a new variant stands where the others do, however they are indented and their lines end", () => {
  const rows = [
    ["variant", "name", "origin", "from", "to", "lever: round"],
    ["round-plastic", "Plastic handle", "service", "1981", "1990", "always"],
  ];
  const from = text.indexOf("\nvariants:\n") + 1;
  const to = text.indexOf("misbeliefs:");
  const [before, list, after] = [text.slice(0, from), text.slice(from, to), text.slice(to)];
  const wide = list.replaceAll(/^( *)- id:/gmu, "$1-   id:").replaceAll(/^( {4,})(?=\S)/gmu, "$1  ");
  const flush = list.replaceAll(/^ {2}/gmu, "");
  for (const variants of [wide, flush, list.replaceAll("\n", "\r\n")]) {
    const file =
      variants === list.replaceAll("\n", "\r\n") ? text.replaceAll("\n", "\r\n") : before + variants + after;
    const { loaded, changed } = applied(
      { name: "x", rows },
      carefulFiles({ "parts/door-handle.yaml": file }),
    );
    expect(loaded.ok && loaded.handbook.parts[0]?.variants.at(-1)?.id).toBe("round-plastic");
    const put = changed[0]?.text ?? "";
    if (file.includes("\r\n")) expect(put.replaceAll("\r\n", "")).not.toContain("\n");
  }
});

describe("a cell that cannot be read is named, and changes nothing:", () => {
  const slips: readonly (readonly [string, Cell, string, string, string])[] = [
    ["a misspelt word", "usualy", "lever: flat", "no frequency", 'did you mean "usually"?'],
    ["a share", 0.85, "lever: flat", "a share does not say how many", "17 of 20"],
    ["a share in per cent", "85 %", "lever: flat", "a share does not say how many", "17 of 20"],
    ["a tick", "x", "lever: flat", "a tick does not say how often", "always"],
    ["a date made of a count", { date: "2026-05-09" }, "lever: flat", "made a date of it", "as text"],
    ["a count over its total", "9 of 5", "lever: flat", "no frequency", "known"],
    ["a figure with its unit", "120 mm", "length: mean", "no figure above nought", "12.5"],
    ["a negative figure", -3, "length: mean", "no figure above nought", "12.5"],
    ["a date made of a figure", { date: "2026-05-09" }, "length: spread", "made a date of it", "as number"],
    ["an unknown source", "gossip", "lever: sources", 'no source "gossip"', "known: ledger"],
    ["a state alone", "flat", "lever", "how often is not said", 'write "flat: always"'],
    ["an unknown state", "falt: always", "lever", 'no state "falt" of lever', 'did you mean "flat"?'],
    ["a mean alone", "120", "length", "no mean with its spread", "1180 ± 3"],
    ["a thousand with its comma", "1,180", "length: mean", "can be read as 1180 and as 1.18", "write 1180"],
    ["a measure with such a comma", "1,180 ± 3", "length", "can be read as 1180 and as 1.18", "write 1180"],
    ["a measure in another unit", "13.8 cm ± 0.1", "length", "the feature is in mm, not in cm", "in mm"],
  ];
  test.each(slips)("%s", (_, cell, head, message, mend) => {
    const { unread, claims } = read([
      ["variant", head],
      ["copy", cell],
    ]);
    expect(unread).toMatchObject([{ sheet: "handles", cell: "B2" }]);
    expect(unread[0]?.message).toContain(message);
    expect(unread[0]?.mend).toContain(mend);
    expect(claims).toEqual(new Map());
  });

  const heads: readonly (readonly [string, string, string])[] = [
    ["levr: flat", "no such feature", 'did you mean "lever: flat"?'],
    ["colour", "no such feature", "such as lever"],
    ["lever: flatt", 'lever has no state "flatt"', 'did you mean "lever: flat"?'],
    ["length: wide", "length has no such column", "known: mean, spread, not-there, sources"],
  ];
  test.each(heads)("the head %s", (head, message, mend) => {
    const { unread } = read([
      ["variant", head],
      ["copy", "always"],
    ]);
    expect(unread[0]?.cell).toBe("B1");
    expect(unread[0]?.message).toContain(message);
    expect(unread[0]?.mend).toContain(mend);
  });

  test("a head that comes twice, a row that comes twice, a row of an unknown variant", () => {
    const { unread } = read([
      ["variant", "lever: flat", "Lever: Flat"],
      ["copy", "always", null],
      ["copy", "often", null],
      ["rouund", "always", null],
    ]);
    expect(unread.map(({ cell, mend }) => `${cell} ${mend}`)).toEqual([
      "C1 keep one of them",
      "A3 keep one of them",
      'A4 did you mean "round"? Or for a new variant fill the columns name, origin, from and to',
    ]);
  });

  test("two rows of one variant, one by its id and one by its name", () => {
    const { unread, claims } = read([
      ["variant", "lever: flat"],
      ["copy", "rarely"],
      ["Trade Copy", "often"],
    ]);
    expect(unread).toMatchObject([{ cell: "A3", message: 'the variant "copy" has two rows' }]);
    expect(claims.get("copy")?.get("lever")?.said).toMatchObject({ flat: "rarely" });
  });

  test("a cell under no head, and one beyond the last head, as an unquoted comma leaves it", () => {
    const { unread } = read([
      ["variant", "", "lever: flat"],
      ["copy", "looked at twice", "rarely"],
      ["round", "and once", null, " 17 of 20"],
      ["flat-late", null, "always", " 9 of 9"],
    ]);
    expect(unread.map(({ cell, message }) => `${cell} ${message}`)).toEqual([
      "B2 the column has no head: it is left out",
      "D3 the row has more cells than there are heads",
      "D4 the row has more cells than there are heads",
    ]);
  });

  test("what a row says of a known variant and a table does not change", () => {
    const head = ["variant", "name", "origin", "from", "to", "summary"];
    const { unread } = read([
      head,
      ["copy", "Cheap copy", "service", "1999", null, "Cheaper."],
      ["flat-early", "first handle", "Production", "1970-01", "1972-12", null],
    ]);
    expect(unread.map(({ cell, message }) => `${cell} ${message}`)).toEqual([
      "B2 the handbook has another name for copy, which a table does not change",
      "C2 the handbook has another origin for copy, which a table does not change",
      "D2 the handbook has another from for copy, which a table does not change",
      "F2 the handbook has another summary for copy, which a table does not change",
    ]);
    expect(unread[0]?.mend).toBe("change it in the file of the part kind; here: Trade copy");
  });

  test("a mean whose spread is missing, and a measure that is not there", () => {
    const { unread, claims } = read([
      ["variant", "length: mean", "length: spread", "length: not-there"],
      ["flat-late", 131, null, null],
      ["round", 120, 0.5, "always"],
    ]);
    expect(unread.map(({ cell, message }) => `${cell} ${message}`)).toEqual([
      "C2 length has a mean but no spread",
      "D3 a variant that is measured has the feature",
    ]);
    expect(claims).toEqual(new Map());
  });

  test("a new variant with a wrong origin, a wrong date or a wrong id", () => {
    const head = ["variant", "name", "origin", "from", "to"];
    const { unread, added } = read([
      head,
      ["brass", "Brass", "prodction", "1980", "1981"],
      ["steel", "Steel", "service", "early", "1981"],
      ["Big One", "Big", "service", "1980", "1981"],
    ]);
    expect(unread.map(({ cell, mend }) => `${cell} ${mend}`)).toEqual([
      'C2 did you mean "production"?',
      "D3 write 1980, 1980-05 or 1980-05-17, with the column formatted as text",
      "A4 write lower-case letters and figures joined by hyphens",
    ]);
    expect(added).toEqual([]);
  });

  test("a sheet without a column of variants", () => {
    expect(read([["name"], ["x"]]).unread).toMatchObject([
      { cell: "A1", mend: 'head one of the columns "variant"' },
    ]);
    expect(read([]).unread).toHaveLength(1);
  });
});

test("cells are named as spreadsheets name them", () => {
  expect([cellName(6, 2), cellName(0, 25), cellName(0, 26), cellName(9, 701), cellName(0, 702)]).toEqual([
    "C7",
    "Z1",
    "AA1",
    "ZZ10",
    "AAA1",
  ]);
});
