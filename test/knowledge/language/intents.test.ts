import { expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { findingsInWords, intentsInWords } from "../../support/reading-in-words.ts";

test.each([
  ["why this", "why"],
  ["why do you ask?", "why"],
  ["how do i check the groove", "how-to-check groove"],
  ["what do you know so far?", "what-do-you-know"],
  ["dunno", "cannot-tell"],
  ["can't tell", "cannot-tell"],
  ["no idea", "cannot-tell"],
  ["undo", "undo"],
  ["start over", "start-over"],
  ["forget what I said about the screws", "withdraw screws"],
  ["compare the first and second spoiler", "compare first and second"],
  ["how do I tell a splash copy from a first spoiler?", "compare splash-copy and first"],
  ["what types of mirror are there?", "list-variants"],
  ["would it fit without drilling?", "what-fits"],
  ["what photos should I ask the seller for?", "photographs"],
  ["where do I go from here?", "where-from-here"],
  ["show me the sources", "sources"],
  ["help", "help"],
  ["how much is it worth?", "price"],
  ["my cases", "list-cases"],
  ["switch to case 2", "switch-case 2"],
  ["new case please", "new-case"],
  ["yes", "yes"],
  ["nope", "no"],
  ["thanks, that helps a lot", "small-talk"],
  ["is it right for my car?", "right-for-car"],
  ["is this the right mirror for a Nov 81 Shrike?", "right-for-car"],
  ["is it genuine?", "genuine"],
  ["how can I tell if it is a repro", "genuine"],
  ["how much can I ask for it", "price"],
  ["I made a mistake about that", "withdraw"],
  ["legit?", "genuine"],
  ["real or fake?", "genuine"],
  ["which one is it?", "which-variant"],
  ["what have i got here?", "which-variant"],
  ["what should my 1981 Shrike S have?", "what-should-it-have"],
  ["what did my car leave the works with?", "what-should-it-have"],
])("%s asks for: %s", (text, expected) => {
  expect(intentsInWords(readDemo(text, "door-mirror"))).toContain(expected);
});

test.each([
  ["rough", "rear-spoiler inside-finish", "rear-spoiler.inside-finish rough"],
  ["the second one", "rear-spoiler inside-finish", "rear-spoiler.inside-finish smooth"],
  ["b", "door-mirror housing", "door-mirror.housing moulded-plastic"],
  ["3", "door-mirror screws", "door-mirror.screws three"],
  ["three", "door-mirror screws", "door-mirror.screws three"],
  ["yes", "rear-spoiler drain-notches", "rear-spoiler.drain-notches notches"],
  ["no", "rear-spoiler drain-notches", "rear-spoiler.drain-notches plain"],
  ["no", "door-mirror casting-mark", "door-mirror.casting-mark no-mark"],
  ["yes, a B in a diamond", "door-mirror casting-mark", "door-mirror.casting-mark diamond-b"],
  ["grey", "rear-spoiler gel-coat", "rear-spoiler.gel-coat grey"],
  ["no, smooth actually", "rear-spoiler inside-finish", "rear-spoiler.inside-finish smooth"],
  ["2.9 by the caliper", "rear-spoiler edge-thickness", "rear-spoiler.edge-thickness 2.9±0.05 ?"],
])("%s answers the question just asked (%s)", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual([expected]);
});

test.each(["a bit of both", "would love it rough one day"])("%s chooses no state", (text) => {
  expect(readDemo(text, "rear-spoiler inside-finish").findings).toEqual([]);
});

test("a bare no says nothing where none of the answers is no", () => {
  expect(readDemo("nope", "road-wheel lettering").findings).toEqual([]);
});

test("a plain description states no misbelief", () => {
  expect(readDemo("symbols on the lamps, Mark II", "instrument-panel").misbeliefs).toEqual([]);
});

test.each(["can't see", "dunno", "how do I check?", "why?", "what do you mean"])(
  "%s answers nothing",
  (text) => {
    expect(readDemo(text, "rear-spoiler inside-finish").findings).toEqual([]);
  },
);
