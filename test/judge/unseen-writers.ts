/** How people are read who taught the reader nothing: each writer by the words and weights of the writers of the other folds. */
import {
  assertsState,
  f1,
  precision,
  recall,
  type ScoredMessage,
  scoreMessage,
} from "../support/score-corpus.ts";
import { type Learning, unseenLexicon } from "./learning.ts";
import { folds, writerOf } from "./taught-messages.ts";

/** All development messages, each scored by what others taught. */
export function scoredUnseen(learnt: Learning): readonly ScoredMessage[] {
  return folds.flatMap((fold) => {
    const lexicon = unseenLexicon(learnt, fold);
    const own = learnt.messages.filter((message) => learnt.foldOf.get(writerOf(message)) === fold);
    return lexicon === undefined ? [] : own.map((message) => scoreMessage(message, lexicon));
  });
}

export interface Figures {
  readonly f1: number;
  /** The share of the messages without a fact that assert a state. */
  readonly asserted: number;
  /** Both, and precision and recall, in one line. */
  readonly line: string;
}

/** What the scores come to. */
export function figuresOf(name: string, scored: readonly ScoredMessage[]): Figures {
  const empty = scored.filter(({ message }) => message.facts.length === 0);
  const asserting = empty.filter(assertsState).length;
  return {
    f1: f1(scored),
    asserted: asserting / empty.length,
    line:
      `${name}: F1 ${f1(scored).toFixed(4)}, precision ${precision(scored).toFixed(3)}, ` +
      `recall ${recall(scored).toFixed(3)} on ${scored.length} messages; ` +
      `${asserting} of ${empty.length} without a fact assert a state\n`,
  };
}
