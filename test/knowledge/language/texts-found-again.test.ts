// Texts that people wrote are found again by some of their words, misspelled or not, rare words before common ones. The weights are those of Spärck
// Jones (1972), "A statistical interpretation of term specificity", J. Documentation 28:11-21, with one added under the logarithm.
import { describe, expect, test } from "vitest";
import { boundedEditDistance } from "../../../knowledge/language/edit-distance.ts";
import { textIndex } from "../../../knowledge/language/similar-texts.ts";

const texts = new Map([
  ["groove", "The mirror groove is square"],
  ["foot", "Mirror foot with three screws"],
  ["cap", "distributor cap, gearbox, cog"],
  ["small", "it is"],
]);
const index = textIndex(texts);
/** The weight of a word that so many of the four texts hold; half a text for one that none does. */
const weight = (holding: number): number => Math.log(1 + 4 / holding);
const ids = (words: string): readonly string[] => index.find(words).map(({ id }) => id);

describe("a text is found", () => {
  test("by a word that it holds, in any number, and two as good in the order of their ids", () => {
    expect(index.find("groove")).toEqual([{ id: "groove", score: 1 }]);
    expect(index.find("Mirrors")).toEqual([
      { id: "foot", score: 1 },
      { id: "groove", score: 1 },
    ]);
    expect(ids("screw")).toEqual(["foot"]);
  });
  test("by the share of what was searched, in which rare words weigh more and unknown ones most", () => {
    const [best, second] = index.find("mirror groove");
    expect([best?.id, best?.score, second?.id]).toEqual(["groove", 1, "foot"]);
    expect(second?.score).toBeCloseTo(weight(2) / (weight(2) + weight(1)), 12);
    expect(index.find("groove groove zebra")[0]?.score).toBeCloseTo(
      weight(1) / (weight(1) + weight(0.5)),
      12,
    );
  });
  test("not by small words, unless it or the search is nothing else", () => {
    expect(ids("is mirror")).toEqual(["foot", "groove"]);
    expect(ids("is it")).toEqual(["small"]);
    expect(ids("with the")).toEqual([]);
  });
  test("not by nothing, nor by what no text holds", () => {
    expect([ids(""), ids("zebra"), index.askedIn(""), index.askedIn("zebra")]).toEqual([[], [], [], []]);
    expect(textIndex(new Map()).find("mirror")).toEqual([]);
  });
  test.each([
    ["grove", ["groove"]],
    ["squrae", ["groove"]],
    ["mirorr", ["foot", "groove"]],
    ["grov", []],
    ["garbux", []],
    ["foor", ["foot"]],
    ["coq", []],
    ["distribtuer", ["cap"]],
    ["distrbtuer", []],
    ["dstribtr", []],
    ["dstributo", ["cap"]],
  ] as const)("by %s, one slip in four letters and two in eight: %s", (word, expected) => {
    expect(ids(word)).toEqual(expected);
  });
});

describe("a message asks again what a text asks", () => {
  test("by the share of the text's words that it holds", () => {
    const [best, second, ...others] = index.askedIn("my old mirror has such a sqare groove, what is it");
    expect([best?.id, best?.score, second?.id, others]).toEqual(["groove", 1, "foot", []]);
    expect(second?.score).toBeCloseTo(weight(2) / (weight(2) + 3 * weight(1)), 12);
  });
  test("whatever else it says, best first", () => {
    expect(
      index.askedIn("gearbox and a mirror with a foot and a long tale of woe").map(({ id }) => id),
    ).toEqual(["foot", "groove", "cap"]);
  });
});

// Damerau (1964): one slip is an insertion, a deletion, another letter, or two neighbours swapped.
test.each([
  ["groove", "groove", 0],
  ["groove", "grove", 1],
  ["grove", "groove", 1],
  ["groove", "graove", 1],
  ["groove", "gorove", 1],
  ["rgoove", "groove", 1],
  ["groove", "grooev", 1],
  ["ca", "abc", 3],
  ["", "abc", 3],
  ["abc", "", 3],
  ["kitten", "sitting", 3],
] as const)(
  "from %s to %s are %i slips, and one more than the bound where there are more",
  (one, other, slips) => {
    for (const bound of [0, 1, 2, 3, 4])
      expect([bound, boundedEditDistance(one, other, bound)]).toEqual([bound, Math.min(slips, bound + 1)]);
  },
);
