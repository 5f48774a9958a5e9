import { expect, test } from "vitest";
import { groundNames } from "../../knowledge/language/grounds.ts";
import type { JudgeTable } from "../../knowledge/language/judging.ts";
import { learntJudging } from "../../knowledge/language/judging.ts";
import { messageGroundNames } from "../../knowledge/language/message-grounds.ts";
import { demoLexicon, plainDemoLexicon } from "../support/demo-lexicon.ts";
import { isOrdinary } from "../support/ordinary-writers.ts";
import type { ScoredMessage } from "../support/score-corpus.ts";
import { judgingOf, learning, wordsOf } from "./learning.ts";
import { developmentMessages } from "./taught-messages.ts";
import { type Figures, figuresOf, scoredUnseen } from "./unseen-writers.ts";

const minutes = 60_000;
const plain = await plainDemoLexicon();
const learnt = learning(plain, developmentMessages());

// A logarithm may differ in its last place from machine to machine, and turn a figure that stands between two.
test(
  "the words kept beside the demo handbook are those that the development messages teach",
  async () => {
    const { learntWords } = (await demoLexicon()).handbook;
    const taught = wordsOf(plain, learnt);
    expect(learntWords?.messages).toBe(taught.messages);
    expect(learntWords?.words).toEqual(taught.words);
    expect(learntWords?.telling).toEqual(taught.telling);
    expect(learntWords?.tellingAtAll).toEqual(taught.tellingAtAll);
    expect(learntWords?.parts).toEqual(taught.parts);
  },
  5 * minutes,
);

test(
  "the judge's weights are those that the development messages give, each writer heard by words that others taught",
  () => {
    const judging = judgingOf(learnt);
    expectSame(judging.heard, learntJudging.heard, groundNames);
    expectSame(judging.plain, learntJudging.plain, groundNames);
    expectSame(judging.heardMessages, learntJudging.heardMessages, messageGroundNames);
    expectSame(judging.plainMessages, learntJudging.plainMessages, messageGroundNames);
  },
  5 * minutes,
);

/** Weights are kept to two places; the last may turn over with the order in which a machine adds. */
function expectSame(fitted: JudgeTable, kept: JudgeTable, names: readonly string[]): void {
  expect(Math.abs(fitted.bias - kept.bias)).toBeLessThanOrEqual(0.011);
  names.forEach((name, at) => {
    expect(Math.abs((fitted.weights[at] ?? 0) - (kept.weights[at] ?? 0)), name).toBeLessThanOrEqual(0.011);
  });
}

function told(name: string, scored: readonly ScoredMessage[]): Figures {
  const figures = figuresOf(`message corpus, ${name}`, scored);
  process.stdout.write(figures.line);
  return figures;
}

test(
  "writers who taught nothing are read with an F1 of at least 0.925, those of near misses with 0.83; one message in sixty without a fact asserts a state",
  () => {
    const scored = scoredUnseen(learnt);
    const ordinary = told(
      "writers unseen",
      scored.filter(({ message }) => isOrdinary(message)),
    );
    expect(ordinary.f1).toBeGreaterThanOrEqual(0.925);
    expect(ordinary.asserted).toBeLessThanOrEqual(1 / 60);
    const others = told(
      "writers unseen of near misses and brief statements",
      scored.filter(({ message }) => !isOrdinary(message)),
    );
    expect(others.f1).toBeGreaterThanOrEqual(0.83);
    expect(others.asserted).toBeLessThanOrEqual(0.05);
  },
  10 * minutes,
);
