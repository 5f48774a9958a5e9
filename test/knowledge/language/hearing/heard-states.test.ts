import { expect, test } from "vitest";
import type { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { observeHeard } from "../../../../knowledge/language/hearing/heard-states.ts";
import { silent, tarnLexicon, tarnView } from "../../../support/tarn-lexicon.ts";

const unlikely = { bias: -9, weights: "" };
const learnt: LearntWords = {
  messages: 3,
  words: ["curl", "tip", "shiny", "magnet", "alone"],
  telling: silent,
  tellingAtAll: { bias: 0, weights: "" },
  spokenOf: {},
  parts: {
    "door-handle": {
      lever: {
        flat: unlikely,
        round: { bias: -4, weights: "0 150" },
        // curl 2, tip 3
        hooked: { bias: -4, weights: "0 200 1 300" },
      },
      "foundry-mark": { star: unlikely, bare: { bias: -1, weights: "" } },
      button: { steel: { bias: -4, weights: "3 400" }, brass: { bias: -4, weights: "2 50" } },
      spring: { coil: { bias: 2, weights: "4 100" }, leaf: unlikely },
    },
  },
};
const view = (text: string) => tarnView(text, tarnLexicon(learnt));

test("the likeliest state of a feature is brought forward, where the words stand that speak for it", () => {
  expect(observeHeard(view("It has a curl"), [])).toEqual([
    { part: "door-handle", feature: "lever", state: "hooked", isDenied: false, clause: 0, from: 3, to: 3 },
  ]);
  expect(observeHeard(view("Curl at the tips"), [])).toMatchObject([{ state: "hooked", from: 0, to: 3 }]);
});

test("the place is the clause whose words speak most for it, likelier states come first", () => {
  expect(observeHeard(view("A curl, and a magnet sticks, but look at the tips"), [])).toMatchObject([
    { feature: "lever", state: "hooked", from: 10, to: 10 },
    { feature: "button", state: "steel", from: 4, to: 4 },
  ]);
});

test("what no word of the sentence speaks for is not brought forward, however likely", () => {
  expect(observeHeard(view("Hello there"), [])).toEqual([]);
});

test("a state at poor odds is not brought forward", () => {
  expect(observeHeard(view("So shiny"), [])).toEqual([]);
});

test("a state that its name told already is not told again, nor is one heard where one was denied", () => {
  const named = {
    part: "door-handle",
    feature: "lever",
    state: "hooked",
    isDenied: false,
    clause: 0,
    from: 3,
    to: 3,
  };
  expect(observeHeard(view("It has a curl"), [named])).toEqual([]);
  expect(observeHeard(view("It has a curl"), [{ ...named, isDenied: true }])).toEqual([]);
  expect(observeHeard(view("It has a curl. A magnet sticks."), [named])).toMatchObject([{ state: "steel" }]);
});

test("what two sentences tell is brought forward once", () => {
  expect(observeHeard(view("It has a curl. Such a curl!"), [])).toHaveLength(1);
});

test("without learnt words nothing is brought forward", () => {
  expect(observeHeard(tarnView("It has a curl"), [])).toEqual([]);
});
