// A message laid out for the finders: which part each clause speaks of, by name and by ear, and which phrases and words stand in it.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import { type MessageView, wordsBetween } from "../../../knowledge/language/message-view.ts";
import { silent } from "../../support/tarn-lexicon.ts";
import { mirrorLexicon, mirrorView } from "../../support/tarn-mirror.ts";

/** "Glint" speaks for the handle, "curl" for the mirror. */
const learnt: LearntWords = {
  messages: 3,
  words: ["glint", "curl"],
  telling: silent,
  tellingAtAll: silent,
  spokenOf: { mirror: { bias: 0, weights: "1 900" }, "door-handle": { bias: 0, weights: "0 900" } },
  parts: {},
};
const lexicon = mirrorLexicon(learnt);
const phrases = ({ spotted }: MessageView) =>
  spotted.map(({ from, to, phrase }) => `${from}-${to} ${phrase.meanings.map(({ kind }) => kind).join()}`);

describe("the part that a clause speaks of", () => {
  const parts = (text: string, about = "mirror") => {
    const { partOf, mentioned } = mirrorView(text, about, lexicon);
    return { partOf, mentioned };
  };
  test("is heard where words that were learnt say otherwise than a name, and the name counts no more", () => {
    expect(parts("I looked at it in the mirror, and such a glint").partOf).toEqual([
      "door-handle",
      "door-handle",
    ]);
    expect(parts("I looked at it in the mirror and such a glint").mentioned).toEqual([undefined]);
    expect(parts("I looked at the door handle, the mirror, such a glint").mentioned).toEqual([
      "door-handle",
      "mirror",
    ]);
  });
  test("stays that of the name in a message of five words or less", () => {
    expect(parts("the mirror with a glint")).toEqual({ partOf: ["mirror"], mentioned: ["mirror"] });
    expect(parts("the mirror with a big glint")).toEqual({ partOf: ["door-handle"], mentioned: [undefined] });
    expect(parts("such a glint here", "mirror").partOf).toEqual(["door-handle"]);
    expect(parts("the housing, a glint", "mirror").partOf).toEqual(["door-handle", "door-handle"]);
  });
  test("is named in the sentence before and heard in the next", () => {
    expect(parts("This is about the mirror. Such a glint there")).toEqual({
      partOf: ["mirror", "door-handle"],
      mentioned: ["mirror"],
    });
  });
  test("without learnt words is the one in hand or named, and nothing is heard", () => {
    const view = mirrorView("I looked at it in the mirror and such a glint", "door-handle");
    expect({ partOf: view.partOf, heard: view.heard }).toEqual({ partOf: ["mirror", "mirror"], heard: [] });
    expect(mirrorView("such a glint").partOf).toEqual(["mirror"]);
    expect(mirrorView("such a glint", "").partOf).toEqual([undefined]);
    expect(mirrorView("such a glint", "mirror", lexicon).heard).toHaveLength(1);
  });
});

describe("phrases", () => {
  test("of another part than the one spoken of stand in nobody's way", () => {
    expect(phrases(mirrorView("a flat lever, two screws"))).toEqual(["3-4 state"]);
    expect(phrases(mirrorView("a flat lever, two screws", ""))).toEqual(["1-2 state", "3-4 state"]);
    expect(phrases(mirrorView("the door handle and the Tarn Two"))).toEqual(["1-2 part", "5-6 model"]);
  });
  test("are kept by the words they use and by the features they name, each once", () => {
    const { phrasesAt, featuresNamed } = mirrorView("the fixing screws of the stalk, three of them screws");
    expect([...phrasesAt].map(([at, all]) => [at, ...all.map(({ from }) => from)])).toEqual([
      [1, 1],
      [2, 1],
      [5, 5],
      [6, 6],
      [9, 6],
    ]);
    expect([...featuresNamed].map(([feature, all]) => [feature, ...all.map(({ from }) => from)])).toEqual([
      ["screws", 1],
      ["stalk", 5],
    ]);
    const twice = mirrorView("screws, and the stalk, and the screws").featuresNamed.get("screws");
    expect(twice?.map(({ from }) => from)).toEqual([0, 6]);
  });
});

describe("words", () => {
  test("stand for the handbook's own where they are misspelt by one letter and can be only one", () => {
    const words = (text: string) => mirrorView(text).words.join(" ");
    expect(words("chromd housng straigt plastc")).toBe("chromed housing straight plastic");
    expect(words("straihgtt ferrets of the zuavv")).toBe("straihgtt ferret of the zuavv");
  });
  test("belong to their clauses, and those of sizes and dates are taken", () => {
    const { clauseOf, taken, clauses } = mirrorView("reach 90 mm, and chromed. Built in May 1974");
    expect(clauseOf).toEqual([0, 0, 0, 1, 1, 2, 2, 2, 2]);
    expect(clauses).toHaveLength(3);
    expect([...taken]).toEqual([1, 2, 7, 8]);
  });
});

describe("the words of a stretch", () => {
  const stretch = (text: string, from: number, to: number) => wordsBetween(mirrorView(text), from, to);
  test("are those shown, with single spaces between them", () => {
    expect(stretch("It is\nchromed, (all of it).", 1, 3)).toBe("is chromed, (all");
    expect(stretch("It is chromed", 0, 2)).toBe("It is chromed");
  });
  test("are a hundred and sixty signs at most", () => {
    expect(stretch("chromed ".repeat(40), 1, 39)).toHaveLength(159);
    expect(stretch("chromed ".repeat(40), 1, 39)).toBe("chromed ".repeat(20).trim());
  });
  test("beyond the end are none", () => {
    expect([stretch("It is chromed", 1, 9), stretch("It is chromed", 7, 9), stretch("", 0, 0)]).toEqual([
      "",
      "",
      "",
    ]);
  });
});

test("what stands in a line quoted from somebody else is hearsay", () => {
  const asides = (text: string) => mirrorView(text).stances.map(({ aside }) => aside);
  expect(asides("> It is chromed\nMine has two screws")).toEqual(["hearsay", undefined]);
});
