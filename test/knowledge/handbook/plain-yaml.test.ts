import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readPlainYaml } from "../../../knowledge/handbook/plain-yaml.ts";
import { readAnyYaml } from "../../../knowledge/handbook/yaml-reading.ts";
import { minimalHandbook } from "../../support/minimal-handbook.ts";

/** Whatever the fast reader takes, the library must read as the same value, without a complaint. */
function expectSameOrGivenUp(text: string): void {
  const fast = readPlainYaml(text);
  if (fast === undefined) return;
  const slow = readAnyYaml({ path: "parts/any.yaml", text });
  expect(slow.problems, JSON.stringify(text)).toEqual([]);
  expect(fast, JSON.stringify(text)).toEqual(slow.value);
}

const demo = "knowledge/handbooks/wexcombe-shrike";
const demoTexts = readdirSync(demo, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".yaml"))
  .map((path) => readFileSync(`${demo}/${path}`, "utf8"));
const texts = [
  ...Object.entries(minimalHandbook).flatMap(([path, text]) => (path.endsWith(".yaml") ? [text] : [])),
  ...demoTexts,
];

describe("the fast reader", () => {
  test("reads every file of both handbooks, and reads them as the library does", () => {
    for (const text of texts) {
      expect(readPlainYaml(text), text.slice(0, 60)).toBeDefined();
      expectSameOrGivenUp(text);
    }
  });

  test.each([
    ["folded text", "a: >-\n  one\n  two\nb: 1\n", { a: "one two", b: 1 }],
    ["literal text", "a: |\n  one\n  two\nb: 1\n", { a: "one\ntwo\n", b: 1 }],
    ["text over two lines", "a: one\n  two\nb: 1\n", { a: "one two", b: 1 }],
    ["a list level with its key", "a:\n- b\n- c: 1\n  d: 2\n", { a: ["b", { c: 1, d: 2 }] }],
    ["brackets over lines", "a:\n  [b,\n   { c: d }]\n", { a: ["b", { c: "d" }] }],
    ["quotes", `a: 'it''s'\nb: "c: d"\n"1980": 3\n`, { a: "it's", b: "c: d", "1980": 3 }],
    [
      "quotes over lines",
      `a: "one:  \n  two  three"\nb:\n  - 'it''s\n    # four'\nc: [ "five\n    six" ]\n`,
      { a: "one: two  three", b: ["it's # four"], c: ["five six"] },
    ],
    ["comments", "# x\na: b # c\n\nd: # e\n  f: g#h\n", { a: "b", d: { f: "g#h" } }],
    [
      "dates and counts",
      "a: 1980-05\nb: 17 of 20\nc: -2.5\nd: true\ne: yes\n",
      {
        a: "1980-05",
        b: "17 of 20",
        c: -2.5,
        d: true,
        e: "yes",
      },
    ],
  ])("reads %s", (_name, text, value) => {
    expect(readPlainYaml(text)).toEqual(value);
    expectSameOrGivenUp(text);
  });

  test.each(
    [
      "a: 0777",
      "a: 1e999",
      "a: 0x1F",
      "a: .5",
      "a: +5",
      "a: 12345678901234567890",
      "a: ~",
      "a: Null",
      "a: True",
      "a:",
      "a: *b",
      "a: &b c",
      "a: !c d",
      "a: b: c",
      "a: [b: c]",
      "a: {b}",
      "a: [b",
      "a: [b,, c]",
      "a: 'b",
      'a: "b\\n"',
      "a: b\na: c",
      "a: {b: 1, b: 2}",
      "__proto__: 1",
      "a:\n\tb: 1",
      "a: b\n---\nc: d",
      "%YAML 1.2\n---\na: b",
      "- a",
      "a",
      "a:\n  b: 1\n c: 2",
      "a: b\n  c: d",
      "a: [b\n]",
      'a: "b\n\n  c"',
      'a: "b\n  c\n  "',
      'a: " \n  b"',
      'a: "b\nc"',
      'a: "b\n---\nc"',
      "a: >\n  b\n\n  c",
      "a: |+\n  b",
      "a: |2\n  b",
      "? a\n: b",
      "a: @b",
      "a:b",
      "a: - b",
      "- - a",
      "a: [b]c",
      'a: "b" c',
      "a: b\n  # c\n  d",
    ].map((text) => [text]),
  )("gives up %j, which is not plain", (text) => {
    expect(readPlainYaml(text)).toBeUndefined();
  });

  test("a few letters changed anywhere never make it read what the library does not", () => {
    const pieces = fc.constantFrom(
      ..."[]{}:,-?&*!|>'\"%@`#~\t\n \r0.eE+\u00a0\u2028é".split(""),
      "\n  ",
      "\n    ",
      ": ",
      "- ",
      " #",
      "\n\n",
      "''",
      "null",
      "a: ",
      "...",
      "---",
      ">-\n",
      "|\n",
    );
    const changes = fc.tuple(
      fc.nat({ max: texts.length - 1 }),
      fc.nat(),
      fc.nat({ max: 8 }),
      fc.array(pieces, { maxLength: 4 }),
    );
    fc.assert(
      fc.property(changes, ([which, at, cut, put]) => {
        const sound = texts[which] ?? "";
        // A window, so that many changes can be tried: from a line's start, two hundred letters on.
        const from = sound.lastIndexOf("\n", at % sound.length) + 1;
        const window = sound.slice(from, from + 200);
        const place = at % Math.max(1, window.length);
        const text = `top:\n${window.slice(0, place)}${put.join("")}${window.slice(place + cut)}`;
        expectSameOrGivenUp(text);
        expectSameOrGivenUp(text.replace(/^top:\n/, ""));
      }),
      { seed: 21, numRuns: 30000 },
    );
  });

  test("text made of YAML's own signs is read as the library reads it, or given up", () => {
    const pieces = fc.constantFrom(
      "a: ",
      "b: ",
      "c",
      "1",
      "-",
      "- ",
      "\n",
      "\n  ",
      "\n    ",
      " ",
      "[",
      "]",
      "{",
      "}",
      ", ",
      ":",
      "#",
      " # ",
      "'",
      '"',
      ">-",
      "|",
      "true",
      "null",
      "0",
      ".",
      "?",
      "d: e",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 14 }), (put) => expectSameOrGivenUp(`a: ${put.join("")}`)),
      { seed: 22, numRuns: 3000 },
    );
  });

  test("quoted text over lines is read as the library reads it, or given up", () => {
    const pieces = fc.constantFrom(
      "\n  ",
      "\n    ",
      "\n",
      " ",
      "a",
      "b c",
      "''",
      "'",
      '"',
      "# ",
      ": ",
      ", ",
      "]",
      "- ",
      "---",
    );
    const around = fc.constantFrom(
      ["a: ", ""],
      ["a:\n  ", ""],
      ["a:\n  - ", "\n  - d"],
      ["a: [ ", " ]"],
      ["a: { b: ", ", c: d }"],
      ["a:\n  - b: ", "\n    c: d"],
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 10 }),
        around,
        fc.constantFrom("'", '"'),
        (put, [before, after], quote) =>
          expectSameOrGivenUp(`${before}${quote}${put.join("")}${quote}${after}\ne: f\n`),
      ),
      { seed: 23, numRuns: 20000 },
    );
  });
});
