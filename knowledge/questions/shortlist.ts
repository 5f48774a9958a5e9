// Of hundreds of questions only a few can be best now: the search looks at those with most gain per effort,
// and at all of them when they are few.

import type { BeliefsByClass } from "./beliefs-by-class.ts";
import { giniConcentration, giniConcentrationAfter } from "./gini-score.ts";
import type { Question } from "./question-table.ts";
import { isSearchable } from "./tapered-search.ts";

export interface Shortlist {
  /** Cheapest first. */
  readonly questions: readonly Question[];
  /** The question of most gain per effort on its own; null when none tells anything about the class. */
  readonly bestAlone: string | null;
}

const SEARCHED_TOGETHER = 16;
const SHORTLISTED = 10;
/** Less gain than this is rounding. */
const USELESS_GAIN = 1e-12;

/** cost ÷ (1 − cannot tell): what one informative answer costs on average, could the question be repeated. */
export function effectiveCost(question: Question): number {
  return question.cost / (1 - question.cannotTell);
}

/** Cheapest first: effective cost, then cost, then id by code unit. */
export function byPrice(a: Question, b: Question): number {
  return effectiveCost(a) - effectiveCost(b) || a.cost - b.cost || (a.id < b.id ? -1 : 1);
}

function fitsOneSearch(questions: readonly Question[]): boolean {
  return isSearchable(questions.map((question) => question.answers.length));
}

/** The questions to search: all up to 16, else the 10 of most Gini gain on the classes per effective cost. */
export function shortlist(questions: readonly Question[], beliefs: BeliefsByClass): Shortlist {
  const before = giniConcentration(beliefs);
  const scored = [...questions]
    .sort(byPrice)
    .map((question) => ({ question, gain: giniConcentrationAfter(beliefs, question) - before }));
  const score = (entry: (typeof scored)[number]): number => entry.gain / effectiveCost(entry.question);
  const byScore = scored.toSorted((a, b) => score(b) - score(a));
  const first = byScore[0];
  const bestAlone = first !== undefined && first.gain > USELESS_GAIN ? first.question.id : null;
  const all = scored.map((entry) => entry.question);
  if (all.length <= SEARCHED_TOGETHER && fitsOneSearch(all)) return { questions: all, bestAlone };
  let chosen = byScore.slice(0, SHORTLISTED).map((entry) => entry.question);
  while (!fitsOneSearch(chosen)) chosen = chosen.slice(0, -1);
  return { questions: chosen.sort(byPrice), bestAlone };
}
