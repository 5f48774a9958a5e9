// The file of learnt words beside a handbook: what it brings, how it is refused, and when it is no longer the handbook's.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fileTooLarge } from "../../../knowledge/handbook/file-check.ts";
import { handbookLimits, learntWordsPath } from "../../../knowledge/handbook/handbook-file.ts";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import { problemCodes, problemText } from "../../../knowledge/handbook/problem.ts";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import { minimalFiles } from "../../support/minimal-handbook.ts";

const ear = { bias: -4, weights: "0 150 1 -20" };
const words: LearntWords = {
  messages: 40,
  words: ["hairy", "not hairy"],
  telling: { bias: -0.5, weights: "" },
  tellingAtAll: { bias: 0, weights: "" },
  spokenOf: { "rear-spoiler": { bias: -2, weights: "" } },
  parts: {
    "rear-spoiler": {
      "inside-finish": { rough: ear, smooth: ear },
      "edge-bead": { round: ear, square: ear },
    },
  },
};
const loadedWith = (text: string) => loadHandbook(minimalFiles({ [learntWordsPath]: text }));
const saidOf = (text: string) => {
  const loaded = loadedWith(text);
  return (loaded.ok ? loaded.warnings : loaded.problems).map(problemText);
};
const again = "learn the words again with witness-mark learn, or delete the file";

describe("a sound file", () => {
  test("is the handbook's learnt words, and part of the edition", () => {
    const loaded = loadedWith(`\uFEFF${JSON.stringify(words, null, 2)}\r\n`);
    const plain = loadHandbook(minimalFiles());
    if (!loaded.ok || !plain.ok) throw new Error("refused");
    expect(loaded.warnings).toEqual([]);
    expect(loaded.handbook.learntWords).toEqual(words);
    expect(plain.handbook).not.toHaveProperty("learntWords");
    expect(loaded.handbook.edition).not.toBe(plain.handbook.edition);
  });
});

describe("a broken file is refused", () => {
  test.each([
    ["a word too many", '{\n  "messages": 4,\n  "words" []\n}', "3:11  this is no JSON"],
    ["no JSON at all", "messages: 4\n", "1:1  this is no JSON"],
    ["half of it", '{\n  "messages": 4,', "2:17  the JSON breaks off"],
    ["half of a word", '{\n  "mess', "2:8  the JSON breaks off"],
  ])("%s, with its place", (_name, text, told) => {
    expect(saidOf(text)).toEqual([`${learntWordsPath}:${told} … ${again}`]);
  });

  test.each([
    ["a list", [], "invalid input: expected object, received array"],
    ["no messages", { ...words, messages: 0 }, "messages: too small: expected number to be >0"],
    ["another key", { ...words, version: 2 }, 'unrecognized key: "version"'],
    [
      "half a pair",
      { ...words, telling: { bias: 0, weights: "1 20 3" } },
      "telling.weights: weights in pairs of whole numbers are needed",
    ],
    [
      "endless figures",
      { ...words, telling: { bias: 0, weights: `1 ${"9".repeat(400)}` } },
      "telling.weights: weights in pairs of whole numbers are needed",
    ],
  ])("%s, with what is wrong", (_name, value, told) => {
    const [said] = saidOf(JSON.stringify(value));
    expect(said?.toLowerCase()).toBe(
      `${learntWordsPath}:1:1  these are no learnt words (${told}) … ${again}`.toLowerCase(),
    );
  });

  test("too large, with advice that fits", () => {
    expect(fileTooLarge(learntWordsPath, handbookLimits).mend).toBe(
      "delete it, and learn the words from fewer messages",
    );
    expect(saidOf(" ".repeat(handbookLimits.fileBytes + 1)).join()).toContain("larger than 2 MB");
  });

  test("arbitrary text never throws, and every problem lies inside the text", () => {
    const pieces = fc.constantFrom(
      ...'{ } [ ] : , " \n messages words 1 -2 1e999 null __proto__ é \u2028'.split(" "),
    );
    const texts = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces).map((each) => each.join("")),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const loaded = loadedWith(text);
        if (loaded.ok) throw new Error("taken");
        for (const problem of loaded.problems) {
          expect(problemCodes).toContain(problem.code);
          expect(problem.line).toBeLessThanOrEqual(text.split("\n").length);
          expect(problem.column).toBeGreaterThan(0);
          expect(problemText(problem)).not.toMatch(/[\n\r]/);
        }
      }),
      { seed: 31, numRuns: 300 },
    );
  });
});

describe("words that are no longer the handbook's are warned of, and serve all the same", () => {
  test("states written since are named", () => {
    const { "edge-bead": _, ...rest } = words.parts["rear-spoiler"] ?? {};
    expect(saidOf(JSON.stringify({ ...words, parts: { "rear-spoiler": rest } }))).toEqual([
      `${learntWordsPath}:1:1  2 states are read by name alone, without learnt words: rear-spoiler/edge-bead/round, rear-spoiler/edge-bead/square … collect messages that tell of them, and learn the words again with witness-mark learn`,
    ]);
  });

  test("a single one is counted as one", () => {
    const { "inside-finish": _, ...rest } = words.parts["rear-spoiler"] ?? {};
    const parts = { "rear-spoiler": { ...rest, "inside-finish": { rough: ear } } };
    expect(saidOf(JSON.stringify({ ...words, parts })).join()).toContain("1 state is read by name alone");
  });

  test("parts, features and states that are gone are named once each, not with all that lay in them", () => {
    const parts = {
      "rear-spoiler": {
        ...words.parts["rear-spoiler"],
        "edge-bead": { ...words.parts["rear-spoiler"]?.["edge-bead"], "half\nround": ear },
        width: {},
        colour: { red: ear, blue: ear },
      },
      mirror: { foot: { cast: ear } },
    };
    expect(saidOf(JSON.stringify({ ...words, parts }))).toEqual([
      `${learntWordsPath}:1:1  words were learnt of what the handbook does not have: rear-spoiler/edge-bead/half?round, rear-spoiler/colour, mirror … ${again}`,
    ]);
  });

  test("of more than five only the number is told", () => {
    const parts = {
      ...words.parts,
      ...Object.fromEntries(Array.from({ length: 7 }, (_, at) => [`part-${at}`, {}])),
    };
    expect(saidOf(JSON.stringify({ ...words, parts })).join()).toContain("part-3, part-4 and 2 more … learn");
  });

  test("names of objects' own workings are names like others", () => {
    const { parts: _, ...rest } = words;
    const said = saidOf(JSON.stringify({ ...rest, parts: { constructor: { toString: {} } } }));
    expect(said.join()).toContain("does not have: constructor …");
    expect(said.join()).toContain("4 states are read by name alone");
  });
});
