import { expect, test } from "vitest";
import type { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { compileEars, oddsOf, weightOf } from "../../../../knowledge/language/hearing/ears.ts";

const learnt: LearntWords = {
  messages: 3,
  words: ["curl", "shiny", "sold"],
  telling: { bias: -0.5, weights: "0 50 1 25" },
  spokenOf: { handle: { bias: -2, weights: "0 150" }, mirror: { bias: -3, weights: "" } },
  parts: {
    handle: {
      lever: { flat: { bias: -4, weights: "1 150" }, hooked: { bias: -1, weights: "0 300 1 -50" } },
      spring: { none: { bias: -6, weights: "1 -25 7 900" } },
    },
    mirror: { glass: { flat: { bias: 0, weights: "" } } },
  },
};
const ears = compileEars(learnt);

test("states stand in the handbook's order, each part's together, before telling anything and before the parts", () => {
  expect(ears.states.map(({ part, feature, state }) => `${part} ${feature} ${state}`)).toEqual([
    "handle lever flat",
    "handle lever hooked",
    "handle spring none",
    "mirror glass flat",
  ]);
  expect([...ears.statesOf]).toEqual([
    ["handle", [0, 3]],
    ["mirror", [3, 4]],
  ]);
  expect(ears.parts).toEqual(["handle", "mirror"]);
  expect([...ears.biases]).toEqual([-4, -1, -6, 0, -0.5, -2, -3]);
});

test("what is said adds its weights to the biases; a word nobody learnt adds nothing, one said twice adds twice", () => {
  expect([...oddsOf([], ears)]).toEqual([-4, -1, -6, 0, -0.5, -2, -3]);
  expect([...oddsOf(["curl", "rust"], ears)]).toEqual([-4, 2, -6, 0, 0, -0.5, -3]);
  expect([...oddsOf(["shiny", "curl", "shiny"], ears)]).toEqual([-1, 1, -6.5, 0, 0.5, -0.5, -3]);
  expect([...oddsOf(["sold"], ears)]).toEqual([-4, -1, -6, 0, -0.5, -2, -3]);
});

test("a word's weight for one place of the row", () => {
  expect([0, 1, 2, 3, 4, 5, 6].map((place) => weightOf("curl", place, ears))).toEqual([
    0, 3, 0, 0, 0.5, 1.5, 0,
  ]);
  expect([0, 1, 2, 4].map((place) => weightOf("shiny", place, ears))).toEqual([1.5, -0.5, -0.25, 0.25]);
  expect(weightOf("sold", 0, ears)).toBe(0);
  expect(weightOf("rust", 0, ears)).toBe(0);
});

test("a weight whose word is not listed is passed over", () => {
  expect([...oddsOf(["curl", "shiny", "sold"], ears)][2]).toBe(-6.25);
  const few = compileEars({ ...learnt, words: ["curl"] });
  expect([...few.wordAt.keys()]).toEqual(["curl"]);
  expect([...oddsOf(["curl", "shiny"], few)]).toEqual([-4, 2, -6, 0, 0, -0.5, -3]);
});
