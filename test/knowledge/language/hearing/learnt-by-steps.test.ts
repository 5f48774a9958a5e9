// How words are learnt: where each told state is said, and the steps by which a weight moves, against the formulas worked out plainly.
import { describe, expect, test } from "vitest";
import type { Ear } from "../../../../knowledge/handbook/schema.ts";
import { sentencesOf } from "../../../../knowledge/language/hearing/grams.ts";
import {
  learnFrom,
  type PlacedMessage,
  placeMessages,
  type TaughtMessage,
} from "../../../../knowledge/language/hearing/learn-words.ts";
import { eachWeight } from "../../../../knowledge/language/hearing/weights-of-ear.ts";
import { tarnHandbook, tarnLexicon, tarnToday, tarnView, taughtOf } from "../../../support/tarn-lexicon.ts";

const lexicon = tarnLexicon();
const crooks = [
  "there is a curl at the end like a crook",
  "mine has that curl, a proper crook",
  "you could hang it up by the crook",
  "a crook with a nice curl to it",
].map((text) => taughtOf(text, "lever", "hooked"));
const chatter = ["what is it worth?", "the weather was nice", "thanks for the quick answer"].map((text) =>
  taughtOf(text, "lever"),
);

describe("a told state is placed in the sentence", () => {
  const placesOf = (...messages: readonly TaughtMessage[]) =>
    placeMessages(lexicon, [...messages, ...crooks, ...chatter], tarnToday)
      .slice(0, messages.length)
      .map(({ sentenceOf }) => sentenceOf);
  test("that is the only one, however it is put", () => {
    expect(placesOf(taughtOf("such a thing", "lever", "hooked"))).toEqual([[0]]);
    expect(placesOf(taughtOf("such a thing, well, what a thing", "lever", "hooked", "flat"))).toEqual([
      [0, 0],
    ]);
  });
  test("that names it", () => {
    const hello = "Hello there. The weather was nice. It has a hooked lever. Thanks!";
    expect(placesOf(taughtOf(hello, "lever", "hooked"))).toEqual([[2]]);
    expect(placesOf(taughtOf("Hello. It has a crook. A hooked lever.", "lever", "hooked"))).toEqual([[2]]);
    expect(placesOf(taughtOf("A hooked lever, so it is. It has a crook.", "lever", "hooked"))).toEqual([[0]]);
  });
  test("that sounds like it, where none names it", () => {
    expect(
      placesOf(taughtOf("Hello from me. It has a crook. The weather was nice.", "lever", "hooked")),
    ).toEqual([[1]]);
    expect(placesOf(taughtOf("It has a crook. The weather was nice. Thanks!", "lever", "hooked"))).toEqual([
      [0],
    ]);
  });
  test("that sounds like it, where one only denies it or names another", () => {
    const denied = "It is not a hooked lever. It has a curl, a crook. The weather was nice.";
    expect(placesOf(taughtOf(denied, "lever", "hooked"))).toEqual([[1]]);
    const another = "It is a flat lever. It has a curl, a crook. The weather was nice.";
    expect(placesOf(taughtOf(another, "lever", "hooked"))).toEqual([[1]]);
    const brass = "It has a brass push button. It has a curl, a crook. The weather was nice.";
    expect(placesOf(taughtOf(brass, "lever", "hooked"))).toEqual([[1]]);
  });
  test("each of its own, the named one and the other by ear", () => {
    const both = taughtOf("Such a crook, a curl. It has a flat lever. Thanks!", "lever", "flat", "hooked");
    expect(placesOf(both)).toEqual([[1, 0]]);
  });
  test("that names it, also where another of the same message is placed by ear", () => {
    const told = [
      { part: "door-handle", feature: "lever", state: "hooked" },
      { part: "door-handle", feature: "button", state: "brass" },
    ];
    const both = { ...taughtOf("Hello. It has a crook, a curl. A hooked lever.", "lever"), told };
    expect(placesOf(both)[0]?.[0]).toBe(2);
  });
  test("and in none where none speaks of its part", () => {
    expect(placesOf({ ...taughtOf("Such a thing. No idea.", "lever", "hooked"), context: {} })).toEqual([
      [undefined],
    ]);
  });
});

/** A row of words, each once, with how much it counts and whether it tells. */
interface Row {
  readonly words: readonly string[];
  readonly isTold: boolean;
  readonly counts?: number;
}

/**
 * Logistic regression by twelve rounds of adaptive steps (Duchi, Hazan and Singer 2011) with a ridge and a composite L1 step, plain: the
 * weights by word, and the bias. Rows are taken 7,919 apart, each round 31 further on.
 */
function learntPlainly(rows: readonly Row[], start: number, ridge: number) {
  const weights = new Map<string, number>();
  const squares = new Map<string, number>();
  let bias = start;
  for (let at = 0; at < 12 * rows.length; at += 1) {
    const round = Math.floor(at / rows.length);
    const row = rows[((at % rows.length) * 7919 + round * 31) % rows.length] as Row;
    const odds = row.words.reduce((sum, word) => sum + (weights.get(word) ?? 0), bias);
    const slope = (row.counts ?? 1) * (1 / (1 + Math.exp(-odds)) - Number(row.isTold));
    if (Math.abs(slope) < 0.001) continue;
    for (const word of row.words) {
      const weight = weights.get(word) ?? 0;
      const square = (squares.get(word) ?? 0.1) + slope ** 2;
      const rate = 0.15 / Math.sqrt(square);
      const moved = weight - rate * (slope + ridge * weight);
      squares.set(word, square);
      weights.set(word, Math.sign(moved) * Math.max(0, Math.abs(moved) - 0.005 * rate));
    }
    bias -= 0.02 * slope;
  }
  const kept = [...weights].filter(([, weight]) => Math.abs(weight) >= 0.2);
  return {
    bias: Math.round(100 * bias) / 100,
    weights: new Map(kept.map(([word, weight]) => [word, Math.round(100 * weight) / 100])),
  };
}

function written({ bias, weights }: Ear, words: readonly string[]) {
  const found = new Map<string, number>();
  eachWeight(weights, (word, weight) => found.set(words[word] ?? "", weight));
  return { bias, weights: found };
}

const inOrder = (weights: ReadonlyMap<string, number>) =>
  [...weights].sort(([one], [other]) => (one < other ? -1 : 1));

/** Messages with the sentence that tells of the lever, if one does. */
const placed: readonly PlacedMessage[] = [
  ["a crook, a curl. So the weather was nice", 0],
  ["the weather was nice. Such a crook", 1],
  ["nice weather. What is it worth?", undefined],
  ["what a curl, a crook, a curl", 0],
  ["is it worth the curl?", undefined],
  ["nice", undefined],
].map(([text, sentence]) => {
  const view = tarnView(String(text));
  const told = sentence === undefined ? [] : [{ part: "door-handle", feature: "spring", state: "leaf" }];
  return { view, sentences: sentencesOf(view), told, sentenceOf: told.map(() => Number(sentence)) };
});
const said = placed.flatMap(({ sentences, sentenceOf }) =>
  sentences.map(({ grams }, at) => ({ words: [...grams.keys()], isTold: sentenceOf.includes(at) })),
);
const handbook = tarnHandbook();
const [handle] = handbook.parts;
if (handle === undefined) throw new Error("the handbook has no part");
/** The handle with its spring alone: two states, of one name each. */
const sprung = {
  ...lexicon,
  handbook: {
    ...handbook,
    parts: [{ ...handle, features: handle.features.filter(({ id }) => id === "spring") }],
  },
};
const names = [
  { words: ["coil", "spring", "coil+spring", "coil_spring"], state: "coil" },
  { words: ["leaf", "spring", "leaf+spring", "leaf_spring"], state: "leaf" },
];

/** The rows with only the words that stand in two of them or more. */
function withOften<Each extends Row>(rows: readonly Each[], all: readonly Row[] = rows): readonly Each[] {
  const uses = new Map<string, number>();
  for (const word of all.flatMap(({ words }) => words)) uses.set(word, (uses.get(word) ?? 0) + 1);
  return rows.map((row) => ({ ...row, words: row.words.filter((word) => (uses.get(word) ?? 0) > 1) }));
}

describe("the words of a handbook are learnt by the steps of the paper", () => {
  const learnt = learnFrom(sprung, placed);
  const named: readonly Row[] = names.map(({ words }) => ({ words, isTold: false }));
  test("words that stand once alone are left out, those of names count", () => {
    const often = new Set(withOften([...said, ...named]).flatMap(({ words }) => words));
    expect(learnt.words.toSorted()).toEqual([...often].sort());
    expect(learnt.words).toContain("spring");
    expect(learnt.messages).toBe(6);
  });
  test("of a sentence's telling anything, by the sentences alone", () => {
    const expected = learntPlainly(withOften(said, [...said, ...named]), -0.5, 0.002);
    const found = written(learnt.telling, learnt.words);
    expect(found.bias).toBe(expected.bias);
    expect(inOrder(found.weights)).toEqual(inOrder(expected.weights));
    expect(expected.weights.size).toBeGreaterThan(3);
  });
  test("of a message's telling anything, by all its words, each once", () => {
    const whole = placed.map(({ sentences, told }) => ({
      words: [...new Set(sentences.flatMap(({ grams }) => [...grams.keys()]))],
      isTold: told.length > 0,
    }));
    const expected = learntPlainly(withOften(whole, [...said, ...named]), -0.5, 0.002);
    const found = written(learnt.tellingAtAll, learnt.words);
    expect(found.bias).toBe(expected.bias);
    expect(inOrder(found.weights)).toEqual(inOrder(expected.weights));
  });
  test.each(["coil", "leaf"])("of each state (%s), by sentences and, counting less, by names", (state) => {
    const rows = [
      ...said.map((row) => ({ ...row, isTold: row.isTold && state === "leaf" })),
      ...names.map((name) => ({ words: name.words, isTold: name.state === state, counts: 0.15 })),
    ];
    const expected = learntPlainly(withOften(rows), -4, 0.0005);
    const ear = learnt.parts["door-handle"]?.spring?.[state];
    if (ear === undefined) throw new Error("the state has no ear");
    const found = written(ear, learnt.words);
    expect(found.bias).toBe(expected.bias);
    expect(inOrder(found.weights)).toEqual(inOrder(expected.weights));
  });
  test("of each part, by what tells of any", () => {
    const rows = [
      ...said.filter(({ isTold }) => isTold),
      ...names.map(({ words }) => ({ words, isTold: true, counts: 0.15 })),
    ];
    const expected = learntPlainly(withOften(rows, [...said, ...named]), -2, 0.0005);
    const ear = learnt.spokenOf["door-handle"];
    if (ear === undefined) throw new Error("the part has no ear");
    const found = written(ear, learnt.words);
    expect(found.bias).toBe(expected.bias);
    expect(inOrder(found.weights)).toEqual(inOrder(expected.weights));
  });
  test("of no messages and no parts nothing is learnt", () => {
    const none = learnFrom({ ...lexicon, handbook: { ...handbook, parts: [] } }, []);
    const silent = { bias: -0.5, weights: "" };
    expect(none).toEqual({
      messages: 0,
      words: [],
      telling: silent,
      tellingAtAll: silent,
      spokenOf: {},
      parts: {},
    });
  });
  test("a part that no sentence speaks of learns from its names alone", () => {
    const elsewhere = placed.map((each) => ({
      ...each,
      view: { ...each.view, partOf: [] },
      told: [],
      sentenceOf: [],
    }));
    const rows = names.map(({ words, state }) => ({ words, isTold: state === "leaf", counts: 0.15 }));
    const ear = learnFrom(sprung, elsewhere).parts["door-handle"]?.spring?.leaf;
    const all = [...said, ...rows];
    expect(ear?.bias).toBe(learntPlainly(withOften(rows, all), -4, 0.0005).bias);
  });
});
