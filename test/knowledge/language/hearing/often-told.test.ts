import { expect, test } from "vitest";
import type { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import {
  isOftenTold,
  leastTimes,
  ofOftenTold,
  timesTold,
} from "../../../../knowledge/language/hearing/often-told.ts";
import { silent, taughtOf } from "../../../support/tarn-lexicon.ts";

const crooks = (count: number) => Array.from({ length: count }, () => taughtOf("a crook", "lever", "hooked"));
const learnt: LearntWords = {
  messages: 9,
  words: [],
  telling: silent,
  tellingAtAll: { bias: 0, weights: "" },
  spokenOf: { "door-handle": silent, mirror: silent },
  parts: { "door-handle": { lever: { round: silent, hooked: silent } }, mirror: { foot: { cast: silent } } },
};
const feet = Array.from({ length: leastTimes }, () => ({
  ...taughtOf("a foot", "foot"),
  told: [{ part: "mirror", feature: "foot", state: "cast" }],
}));

test("a state is counted once a message, however often it is told there", () => {
  const twice = taughtOf("a crook, a crook", "lever", "hooked", "hooked");
  expect([...timesTold([twice, ...crooks(2), taughtOf("hello", "lever")])]).toEqual([
    ["door-handle/lever/hooked", 3],
  ]);
});

test("a part kind is learnt whole when its states are told five times each on average, whichever they are", () => {
  expect(ofOftenTold(learnt, [...crooks(2 * leastTimes), ...feet])).toEqual(learnt);
});

test("a part kind told of less often loses its ears, and with it what tells parts apart", () => {
  expect(ofOftenTold(learnt, [...crooks(2 * leastTimes - 1), ...feet])).toEqual({
    ...learnt,
    spokenOf: {},
    parts: { mirror: { foot: { cast: silent } } },
  });
});

test("of no states there is nothing to learn", () => {
  expect(isOftenTold([], new Map())).toBe(false);
});
