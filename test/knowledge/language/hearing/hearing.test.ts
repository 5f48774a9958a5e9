import { expect, test } from "vitest";
import type { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { compileEars } from "../../../../knowledge/language/hearing/ears.ts";
import {
  partOdds,
  partsOf,
  soundedSentences,
  speakingFor,
} from "../../../../knowledge/language/hearing/hearing.ts";
import { silent, tarnLexicon, tarnView } from "../../../support/tarn-lexicon.ts";

const learnt: LearntWords = {
  messages: 3,
  words: ["curl", "not curl", "shiny", "curl+shiny", "alone", "sold"],
  // curl 0.5, shiny 0.25
  telling: { bias: -0.5, weights: "0 50 2 25" },
  // curl 1.5
  spokenOf: { "door-handle": { bias: -2, weights: "0 150" }, mirror: { bias: -3, weights: "2 350" } },
  // sold 3
  parts: {
    "door-handle": {
      lever: {
        flat: { bias: -4, weights: "1 150" },
        round: silent,
        // curl 3, shiny -0.5, curl+shiny 1.25, alone 0.25
        hooked: { bias: -4, weights: "0 300 2 -50 1 125 1 25" },
      },
    },
  },
};
const lexicon = tarnLexicon(learnt);
const heard = (text: string) =>
  tarnView(text, lexicon).heard.map(({ telling, states }) => ({
    telling,
    ...Object.fromEntries(states.map(({ state, odds }) => [state, odds])),
  }));

test("the odds of a state are its bias and the weights of the words that were said", () => {
  expect(heard("Curl, shiny")).toEqual([{ telling: 0.25, hooked: -4 + 3 - 0.5 + 0.25, round: 0, flat: -4 }]);
  expect(heard("Curl shiny")).toEqual([
    { telling: 0.25, hooked: -4 + 3 - 0.5 + 1.25 + 0.25, round: 0, flat: -4 },
  ]);
});

test("a denied word is another word", () => {
  expect(heard("no curl")).toEqual([{ telling: -0.5, round: 0, flat: -2.5, hooked: -3.75 }]);
});

test("each sentence is heard for itself, likeliest states first, ties in the handbook's order", () => {
  const sentences = tarnView("A curl. And shiny.", lexicon).heard;
  expect(sentences.map(({ states }) => states.map(({ state }) => state))).toEqual([
    ["round", "hooked", "flat"],
    ["round", "flat", "hooked"],
  ]);
  const even = {
    ...learnt,
    parts: { "door-handle": { lever: { flat: silent, round: silent, hooked: silent } } },
  };
  const [tied] = tarnView("A curl", tarnLexicon(even)).heard;
  expect(tied?.states.map(({ state }) => state)).toEqual(["flat", "round", "hooked"]);
});

test("of a part that a sentence does not speak of no state is heard", () => {
  expect(tarnView("A curl", lexicon, {}).heard.map(({ states }) => states)).toEqual([[]]);
});

test("of which part a sentence speaks is heard in each sentence, by words that speak for parts", () => {
  const ears = compileEars(learnt);
  const sentences = soundedSentences(tarnView("A curl. So shiny!", lexicon), ears);
  expect(sentences.map((sentence) => [sentence.first, ...partOdds(sentence, ears)])).toEqual([
    [0, ["door-handle", -0.5], ["mirror", -3]],
    [1, ["door-handle", -2], ["mirror", 0.5]],
  ]);
});

test("a sentence speaks of the parts of its clauses", () => {
  const view = tarnView("A curl, and shiny. Thanks!", lexicon);
  const [first] = view.heard;
  if (first === undefined) throw new Error("nothing was heard");
  expect(partsOf({ partOf: ["mirror", undefined, "door-handle"] }, first)).toEqual(new Set(["mirror"]));
});

test("without learnt words nothing is heard", () => {
  expect(tarnView("A curl").heard).toEqual([]);
});

test("the words that speak for a state are found with their places and weights, not those against it or beside the text", () => {
  const ears = compileEars(learnt);
  const [sentence] = tarnView("Curl shiny", lexicon).heard;
  if (sentence === undefined) throw new Error("nothing was heard");
  expect(speakingFor(ears, sentence, 2)).toEqual([
    { place: 0, weight: 3 },
    { place: 0, weight: 1.25 },
  ]);
});
