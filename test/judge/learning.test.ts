import { expect, test } from "vitest";
import { groundNames } from "../../knowledge/language/grounds.ts";
import type { JudgeTable } from "../../knowledge/language/judging.ts";
import { learntJudging } from "../../knowledge/language/judging.ts";
import { messageGroundNames } from "../../knowledge/language/message-grounds.ts";
import { demoLexicon, plainDemoLexicon } from "../support/demo-lexicon.ts";
import { isOrdinary } from "../support/ordinary-writers.ts";
import {
  assertsState,
  f1,
  precision,
  recall,
  type ScoredMessage,
  scoreMessage,
} from "../support/score-corpus.ts";
import { judgingOf, learning, unseenLexicon, wordsOf } from "./learning.ts";
import { developmentMessages, folds, writerOf } from "./taught-messages.ts";

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

function told(
  name: string,
  scored: readonly ScoredMessage[],
): { readonly f1: number; readonly asserted: number } {
  const empty = scored.filter(({ message }) => message.facts.length === 0);
  const asserting = empty.filter(assertsState).length;
  process.stdout.write(
    `message corpus, ${name}: F1 ${f1(scored).toFixed(3)}, precision ${precision(scored).toFixed(3)}, ` +
      `recall ${recall(scored).toFixed(3)} on ${scored.length} messages; ` +
      `${asserting} of ${empty.length} without a fact assert a state\n`,
  );
  return { f1: f1(scored), asserted: asserting / empty.length };
}

// How people are read who taught the reader nothing: the words and the weights come from the writers of the other folds.
test(
  "writers who taught nothing are read with an F1 of at least 0.925, those of near misses with 0.83; one message in sixty without a fact asserts a state",
  () => {
    const scored: readonly ScoredMessage[] = folds.flatMap((fold) => {
      const lexicon = unseenLexicon(learnt, fold);
      const own = learnt.messages.filter((message) => learnt.foldOf.get(writerOf(message)) === fold);
      return lexicon === undefined ? [] : own.map((message) => scoreMessage(message, lexicon));
    });
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
