/**
 * What the reader learns from the development messages: the words of states, and what each ground weighs with the judge. The
 * judge is shown each writer heard by words that others taught (stacking: Wolpert, "Stacked generalization", Neural Networks
 * 5 (1992), 241-259), else it would trust them as much as words heard before.
 */
import type { LearntWords } from "../../knowledge/handbook/schema.ts";
import { groundNames } from "../../knowledge/language/grounds.ts";
import {
  learnFrom,
  type PlacedMessage,
  placeMessages,
} from "../../knowledge/language/hearing/learn-words.ts";
import type { JudgeTable, Judging } from "../../knowledge/language/judging.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";
import { testToday } from "../support/demo-lexicon.ts";
import type { AnnotatedMessage } from "../support/score-corpus.ts";
import { type Graded, gradedCandidates } from "./graded-candidates.ts";
import { fitLogistic } from "./logistic-regression.ts";
import { folds, foldsOf, taught, writerOf } from "./taught-messages.ts";

/** Chosen among 2, 4, 6, 10 with each fold judged by what the others taught. */
const ridge = 4;
/**
 * Messages of these shaped the finders, or are the handbook's own names put into plain sentences ("wording1" to "wording4"), so
 * that no plain statement is unheard of; those of the others count twice.
 */
const shaping = /^(?:amber|birch|cedar|elder|wording\d)$/;

export interface Learning {
  readonly messages: readonly AnnotatedMessage[];
  readonly placed: readonly PlacedMessage[];
  readonly foldOf: ReadonlyMap<string, number>;
  /** For each fold the handbook with the words that the other folds taught. */
  readonly lexicons: readonly Lexicon[];
  readonly heard: readonly Graded[];
  readonly plain: readonly Graded[];
}

/** `plain`: the lexicon of a handbook without learnt words. */
export function learning(plain: Lexicon, messages: readonly AnnotatedMessage[]): Learning {
  const placed = placeMessages(plain, messages.map(taught), testToday);
  const foldOf = foldsOf(messages);
  const isOf = (fold: number) => (_: unknown, at: number) => {
    const message = messages[at];
    return message !== undefined && foldOf.get(writerOf(message)) === fold;
  };
  const lexicons = folds.map((fold) => {
    const others = placed.filter((each, at) => !isOf(fold)(each, at));
    return withWords(plain, learnFrom(plain, others));
  });
  const heard = messages.flatMap((message) => {
    const lexicon = lexicons[foldOf.get(writerOf(message)) ?? 0];
    return lexicon === undefined ? [] : gradedCandidates(message, lexicon);
  });
  return {
    messages,
    placed,
    foldOf,
    lexicons,
    heard,
    plain: messages.flatMap((message) => gradedCandidates(message, plain)),
  };
}

/** The words that all the messages teach. */
export function wordsOf(plain: Lexicon, { placed }: Learning): LearntWords {
  return learnFrom(plain, placed);
}

/** The judge's tables; `leftOut`: a fold that teaches nothing. */
export function judgingOf({ heard, plain, foldOf }: Learning, leftOut?: number): Judging {
  const tableFrom = (rows: readonly Graded[]): JudgeTable => {
    const taken = rows.filter(({ writer }) => leftOut === undefined || foldOf.get(writer) !== leftOut);
    const weighed = taken.map((row) => ({ ...row, weight: shaping.test(row.writer) ? 1 : 2 }));
    const [bias = 0, ...weights] = fitLogistic(weighed, ridge).map(
      (value) => Math.round(value * 100) / 100 + 0,
    );
    return { bias, weights: groundNames.map((_, at) => weights[at] ?? 0) };
  };
  return { heard: tableFrom(heard.filter(({ isHeard }) => isHeard)), plain: tableFrom(plain) };
}

/** A fold's lexicon with a judge that none of its writers taught. */
export function unseenLexicon(learnt: Learning, fold: number): Lexicon | undefined {
  const lexicon = learnt.lexicons[fold];
  return lexicon === undefined ? undefined : { ...lexicon, judging: judgingOf(learnt, fold) };
}

function withWords({ handbook }: Lexicon, learntWords: LearntWords): Lexicon {
  return compileLexicon({ ...handbook, learntWords });
}
