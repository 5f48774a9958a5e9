import fc from "fast-check";
import { expect, test } from "vitest";
import { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { learnWords, type TaughtMessage } from "../../../../knowledge/language/hearing/learn-words.ts";
import { tarnLexicon, tarnToday, tarnView, taughtOf } from "../../../support/tarn-lexicon.ts";

const lexicon = tarnLexicon();
const curls = [
  "there is a curl at the end like a shepherd's crook",
  "mine has that curl, a proper crook",
  "you could hang it up by the crook",
  "a crook with a nice curl to it",
  "ends in a curl, so a crook?",
].map((text) => taughtOf(text, "lever", "hooked"));
const pencils = [
  "like a pencil between the fingers",
  "thick as a pencil all along",
  "a pencil, really, it rolls about",
  "rolls off the bench like a pencil",
  "feels like a pencil",
].map((text) => taughtOf(text, "lever", "round"));
const chatter = [
  "what is it worth?",
  "the weather was nice on the run",
  "my neighbour has one too",
  "does anybody know the supplier",
  "thanks for the quick answer",
].map((text) => taughtOf(text, "lever"));
const messages = [...curls, ...pencils, ...chatter];
const learnt = learnWords(lexicon, messages, tarnToday);

const oddsIn = (text: string, words: LearntWords = learnt) =>
  new Map(
    tarnView(text, tarnLexicon(words)).heard.flatMap(({ states }) =>
      states.map(({ state, odds }) => [state, odds] as const),
    ),
  );

test("two states are told apart by words that no name of the handbook holds", () => {
  const crook = oddsIn("has a crook on it");
  const pencil = oddsIn("it is a pencil");
  for (const odds of [crook, pencil]) expect(odds.size).toBe(9);
  expect(crook.get("hooked")).toBeGreaterThan((crook.get("round") ?? 0) + 1);
  expect(pencil.get("round")).toBeGreaterThan((pencil.get("hooked") ?? 0) + 1);
  expect(crook.get("star")).toBeLessThan(crook.get("hooked") ?? 0);
});

test("whether a sentence tells anything at all is learnt from those that tell nothing", () => {
  const [telling] = tarnView("a curl and a crook", tarnLexicon(learnt)).heard;
  const [chatting] = tarnView("thanks for the weather", tarnLexicon(learnt)).heard;
  expect(telling?.telling).toBeGreaterThan((chatting?.telling ?? 0) + 0.5);
});

test("a state told somewhere in a long message is placed in the sentence that sounds like it", () => {
  const long = [
    taughtOf("Hello from the hills. It has a crook. The weather was nice.", "lever", "hooked"),
    taughtOf("The weather again. Such a crook, that curl. Thanks!", "lever", "hooked"),
  ];
  const odds = oddsIn("The weather was nice", learnWords(lexicon, [...messages, ...long], tarnToday));
  expect(odds.get("hooked")).toBeLessThan(-1);
});

test("of two states in one message each has its own sentence, one by its name and one by ear", () => {
  const both: TaughtMessage = {
    ...taughtOf("Hello from the hills. Such a crook. The button is brass.", "lever", "hooked"),
    told: [
      { part: "door-handle", feature: "button", state: "brass" },
      { part: "door-handle", feature: "lever", state: "hooked" },
    ],
  };
  const odds = oddsIn("such a crook", learnWords(lexicon, [...messages, both, both], tarnToday));
  expect(odds.get("hooked")).toBeGreaterThan((odds.get("brass") ?? 0) + 1);
});

test("a state that its name tells is placed in the sentence of the name", () => {
  const named = Array.from({ length: 4 }, () =>
    taughtOf("Hello Bob. A hooked lever with ears.", "lever", "hooked"),
  );
  const odds = (text: string) =>
    oddsIn(text, learnWords(lexicon, [...named, ...chatter], tarnToday)).get("hooked") ?? 0;
  expect(odds("Hooked lever with ears.")).toBeGreaterThan(odds("Hello Bob.") + 2);
});

test("a state of a part that no sentence speaks of is left out, and stands in nobody's way", () => {
  const elsewhere: TaughtMessage = { ...taughtOf("Such a thing. No idea.", "lever", "hooked"), context: {} };
  expect(learnWords(lexicon, [...messages, elsewhere], tarnToday).messages).toBe(messages.length + 1);
});

test("every state of the handbook has an ear, also one that nobody told, and its names speak for it", () => {
  const ears = learnt.parts["door-handle"] ?? {};
  expect(Object.entries(ears).map(([feature, states]) => [feature, ...Object.keys(states)])).toEqual([
    ["lever", "flat", "round", "hooked"],
    ["foundry-mark", "star", "bare"],
    ["button", "steel", "brass"],
    ["spring", "coil", "leaf"],
  ]);
  const words = learnWords(lexicon, [...messages, ...messages.slice(0, 3)], tarnToday);
  expect(words.words).toContain("flat");
  expect(ears.lever?.flat?.bias).toBeLessThan(-2);
});

test("a word that stands in one place alone is not learnt", () => {
  expect(learnt.words).toContain("crook");
  expect(learnt.words).not.toContain("shepherd");
});

test("what is learnt has the shape that a handbook's file must have, and the same messages teach the same words", () => {
  const vocabulary = fc.constantFrom(
    ..."crook curl pencil shiny no not brass flat hooked lever , . and it is a".split(" "),
  );
  const message = fc.record({
    text: fc.array(vocabulary, { minLength: 1, maxLength: 12 }).map((words) => words.join(" ")),
    state: fc.constantFrom(undefined, "flat", "round", "hooked"),
  });
  fc.assert(
    fc.property(fc.array(message, { minLength: 1, maxLength: 8 }), (drawn) => {
      const taught = drawn.map(({ text, state }) =>
        taughtOf(text, "lever", ...(state === undefined ? [] : [state])),
      );
      const once = learnWords(lexicon, taught, tarnToday);
      expect(JSON.stringify(learnWords(tarnLexicon(), taught, tarnToday))).toBe(JSON.stringify(once));
      expect(LearntWords.parse(JSON.parse(JSON.stringify(once)))).toEqual(once);
      expect(once.messages).toBe(drawn.length);
    }),
    { seed: 29, numRuns: 40 },
  );
});
