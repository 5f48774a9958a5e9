import { expect, test } from "vitest";
import type { Ear, LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { compileEars } from "../../../../knowledge/language/hearing/ears.ts";
import { withHeardParts } from "../../../../knowledge/language/hearing/heard-parts.ts";
import { soundedSentences } from "../../../../knowledge/language/hearing/hearing.ts";
import { silent, tarnLexicon, tarnView } from "../../../support/tarn-lexicon.ts";

const heardBy = (spokenOf: Readonly<Record<string, Ear>>): LearntWords => ({
  messages: 3,
  words: ["curl", "shiny"],
  telling: silent,
  spokenOf,
  parts: {},
});
/** curl 6 for the handle, shiny 8 for the mirror. */
const learnt = heardBy({
  "door-handle": { bias: -2, weights: "0 600" },
  mirror: { bias: -2, weights: "1 800" },
});
const lexicon = tarnLexicon();
const partsOf = (text: string, named: readonly (string | undefined)[], words = learnt) => {
  const ears = compileEars(words);
  return withHeardParts(named, soundedSentences(tarnView(text, lexicon, {}), ears), ears);
};

test("where no part is named, the part that is heard at good odds is spoken of", () => {
  expect(partsOf("A curl", [undefined])).toEqual(["door-handle"]);
  expect(partsOf("So plain", [undefined])).toEqual([undefined]);
});

test("the part that is named stands until another is heard far better", () => {
  expect(partsOf("So shiny", ["door-handle"])).toEqual(["mirror"]);
  expect(partsOf("A curl so shiny", ["door-handle"])).toEqual(["door-handle"]);
  expect(partsOf("A curl", ["door-handle"])).toEqual(["door-handle"]);
});

test("a named part that no words were learnt of is held to be even", () => {
  const weak = heardBy({ mirror: { bias: 0, weights: "1 200" } });
  expect(partsOf("So shiny", ["wheel"], weak)).toEqual(["wheel"]);
  expect(partsOf("So shiny", ["wheel"])).toEqual(["mirror"]);
});

test("a sentence that speaks of several parts keeps them, and each sentence is heard for itself", () => {
  expect(partsOf("So shiny, and it is plain", ["door-handle", "wheel"])).toEqual(["door-handle", "wheel"]);
  expect(partsOf("A curl. So shiny.", [undefined, undefined])).toEqual(["door-handle", "mirror"]);
});

test("with learnt words of no part, every clause keeps its part", () => {
  expect(partsOf("So shiny", ["wheel"], heardBy({}))).toEqual(["wheel"]);
});
