import { expect, test } from "vitest";
import { groundNames } from "../../knowledge/language/grounds.ts";
import type { JudgeTable } from "../../knowledge/language/judging.ts";
import { learntJudging } from "../../knowledge/language/judging.ts";
import { demoLexicon, plainDemoLexicon } from "../support/demo-lexicon.ts";
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
    expect(learntWords?.parts).toEqual(taught.parts);
  },
  5 * minutes,
);

test(
  "the judge's weights are those that the development messages give, each writer heard by words that others taught",
  () => {
    const { heard, plain: unheard } = judgingOf(learnt);
    expectSame(heard, learntJudging.heard);
    expectSame(unheard, learntJudging.plain);
  },
  5 * minutes,
);

/** Weights are kept to two places; the last may turn over with the order in which a machine adds. */
function expectSame(fitted: JudgeTable, kept: JudgeTable): void {
  expect(Math.abs(fitted.bias - kept.bias)).toBeLessThanOrEqual(0.011);
  groundNames.forEach((name, at) => {
    expect(Math.abs((fitted.weights[at] ?? 0) - (kept.weights[at] ?? 0)), name).toBeLessThanOrEqual(0.011);
  });
}

// How people are read who taught the reader nothing: the words and the weights come from the writers of the other folds.
test(
  "writers who taught nothing are read with an F1 of at least 0.925",
  () => {
    const scored: readonly ScoredMessage[] = folds.flatMap((fold) => {
      const lexicon = unseenLexicon(learnt, fold);
      const own = learnt.messages.filter((message) => learnt.foldOf.get(writerOf(message)) === fold);
      return lexicon === undefined ? [] : own.map((message) => scoreMessage(message, lexicon));
    });
    const empty = scored.filter(({ message }) => message.facts.length === 0);
    process.stdout.write(
      `message corpus, writers unseen: F1 ${f1(scored).toFixed(3)}, precision ${precision(scored).toFixed(3)}, ` +
        `recall ${recall(scored).toFixed(3)} on ${scored.length} messages; ` +
        `${empty.filter(assertsState).length} of ${empty.length} without a fact assert a state\n`,
    );
    expect(f1(scored)).toBeGreaterThanOrEqual(0.925);
    expect(empty.filter(assertsState).length / empty.length).toBeLessThanOrEqual(0.035);
  },
  5 * minutes,
);
