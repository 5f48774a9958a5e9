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
import { type JudgeTable, type Judging, learntJudging } from "../../knowledge/language/judging.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";
import { messageGroundNames } from "../../knowledge/language/message-grounds.ts";
import { testToday } from "../support/demo-lexicon.ts";
import type { AnnotatedMessage } from "../support/score-corpus.ts";
import { type Graded, gradedCandidates, gradedMessage } from "./graded-candidates.ts";
import { fitLogistic } from "./logistic-regression.ts";
import { folds, foldsOf, taught, writerOf } from "./taught-messages.ts";

/** Chosen among 2, 4, 6, 10 with each fold judged by what the others taught. */
const ridge = 4;
const ridgeOfMessages = 1;
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
  /** The messages as wholes. */
  readonly wholes: Omit<Rows, "foldOf">;
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
  const graded = (
    grade: (message: AnnotatedMessage, lexicon: Lexicon) => readonly Graded[],
    lexiconOf: (fold: number) => Lexicon,
  ): readonly Graded[] =>
    messages.flatMap((message) => grade(message, lexiconOf(foldOf.get(writerOf(message)) ?? 0)));
  const hearing = (fold: number): Lexicon => lexicons[fold] ?? plain;
  const rows = {
    foldOf,
    heard: graded(gradedCandidates, hearing),
    plain: graded(gradedCandidates, () => plain),
  };
  // Whole messages are judged by what was made of their candidates by a judge that their writers did not teach.
  const judges = folds.map((fold) => ({ ...learntJudging, ...candidateTables(rows, fold) }));
  const judged = (lexicon: Lexicon, fold: number): Lexicon => ({
    ...lexicon,
    judging: judges[fold] ?? learntJudging,
  });
  const wholes = {
    heard: graded(gradedMessage, (fold) => judged(hearing(fold), fold)),
    plain: graded(gradedMessage, (fold) => judged(plain, fold)),
  };
  return { ...rows, messages, placed, lexicons, wholes };
}

/** The words that all the messages teach. */
export function wordsOf(plain: Lexicon, { placed }: Learning): LearntWords {
  return learnFrom(plain, placed);
}

interface Rows {
  readonly heard: readonly Graded[];
  readonly plain: readonly Graded[];
  readonly foldOf: ReadonlyMap<string, number>;
}

/** The tables for candidates; `leftOut`: a fold that teaches nothing. */
export function candidateTables(rows: Rows, leftOut?: number): Pick<Judging, "heard" | "plain"> {
  const own = ownRows(rows, leftOut);
  return {
    heard: tableFrom(
      own.heard.filter(({ isHeard }) => isHeard),
      groundNames.length,
      ridge,
    ),
    plain: tableFrom(own.plain, groundNames.length, ridge),
  };
}

/** All tables of the judge; `leftOut`: a fold that teaches nothing. */
export function judgingOf(learnt: Learning, leftOut?: number): Judging {
  const own = ownRows({ ...learnt.wholes, foldOf: learnt.foldOf }, leftOut);
  return {
    ...candidateTables(learnt, leftOut),
    heardMessages: tableFrom(
      own.heard.filter(({ isHeard }) => isHeard),
      messageGroundNames.length,
      ridgeOfMessages,
    ),
    plainMessages: tableFrom(own.plain, messageGroundNames.length, ridgeOfMessages),
  };
}

function ownRows({ heard, plain, foldOf }: Rows, leftOut: number | undefined): Omit<Rows, "foldOf"> {
  const isOwn = ({ writer }: Graded): boolean => leftOut === undefined || foldOf.get(writer) !== leftOut;
  return { heard: heard.filter(isOwn), plain: plain.filter(isOwn) };
}

function tableFrom(rows: readonly Graded[], size: number, held: number): JudgeTable {
  const weighed = rows.map((row) => ({ ...row, weight: shaping.test(row.writer) ? 1 : 2 }));
  const [bias = 0, ...weights] = fitLogistic(weighed, held).map((value) => Math.round(value * 100) / 100 + 0);
  return { bias, weights: Array.from({ length: size }, (_, at) => weights[at] ?? 0) };
}

/** A fold's lexicon with a judge that none of its writers taught. */
export function unseenLexicon(learnt: Learning, fold: number): Lexicon | undefined {
  const lexicon = learnt.lexicons[fold];
  return lexicon === undefined ? undefined : { ...lexicon, judging: judgingOf(learnt, fold) };
}

function withWords({ handbook }: Lexicon, learntWords: LearntWords): Lexicon {
  return compileLexicon({ ...handbook, learntWords });
}
