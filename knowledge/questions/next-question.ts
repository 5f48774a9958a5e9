// Which question next, or none: the one place the conversation asks. The value of asking is weighed against
// the price of a wrong verdict; a bare threshold such as "95 % sure" asks on where nothing can be resolved
// and stops too late where the answer is settled.

import { beliefsByClass } from "./beliefs-by-class.ts";
import { mergeHypotheses } from "./merge-hypotheses.ts";
import type { Question, QuestionTable } from "./question-table.ts";
import { unresolvedBelief } from "./search-table.ts";
import { searchWithinBudget } from "./search-within-budget.ts";
import { effectiveCost, shortlist } from "./shortlist.ts";
import type { SearchOutcome } from "./tapered-search.ts";

export interface Decision {
  /** The question to ask; null: stop. */
  readonly question: string | null;
  /** Expected price of stopping now, λ·(1 − heaviest class), in looks from outside. */
  readonly stopValue: number;
  /** Expected price of the course decided on; stopValue where that is to stop or was not worked out. */
  readonly bestValue: number;
}

/** Where hypotheses are many, those less believed than this are left out. */
const MANY_HYPOTHESES = 200;
const NEGLIGIBLE_BELIEF = 1e-7;
/** Groups of like hypotheses in one search. */
const GROUPS = 64;
/**
 * Products of a belief and a likelihood allowed to the search, some three hundred in a microsecond. Against searches
 * twenty times as dear it loses .5 % of the price on tables of the demo handbook and, with the second, on those of 2,000
 * variants, which take longer than their search to write down.
 */
const PRODUCTS = 300_000;
const PRODUCTS_FOR_MANY = 1_500_000;
/** Belief outside the search above which its values are not trusted, or its advice to stop is not. */
const DROPPED_TOO_MUCH = 0.05;
const DROPPED_TOO_MUCH_TO_STOP = 0.02;
/** Asking must beat stopping by more than rounding, in looks. */
const WORTH_ASKING = 1e-9;

interface Choice {
  readonly question: string | null;
  readonly value: number;
}

function leastValue(questions: readonly Question[], outcome: SearchOutcome): Choice {
  let best: Choice = { question: null, value: outcome.stopValue - WORTH_ASKING };
  for (const [index, { id }] of questions.entries()) {
    const value = outcome.values[index];
    if (value !== undefined && value < best.value) best = { question: id, value };
  }
  return best;
}

/**
 * The next question for a table whose priors are the belief now and whose questions are those still open, by
 * tapered search for the least expected effort + λ·P(wrong class). Up to 16 questions and 64 unlike hypotheses
 * are searched whole; beyond, the 10 most promising questions and the 64 heaviest groups stand for all, and
 * where that leaves out too much belief the question of most Gini gain per effort is asked. No hypothesis, no
 * question, or nothing worth asking: stop. Same table, same bytes; ties: lower effective cost, cost, id.
 */
export function nextQuestion(table: QuestionTable): Decision {
  const isLarge = table.hypotheses.length > MANY_HYPOTHESES;
  const beliefs = beliefsByClass(table.hypotheses, isLarge ? NEGLIGIBLE_BELIEF : 0);
  const stopValue = table.lambda * unresolvedBelief(beliefs.weights, beliefs.classEnds);
  if (beliefs.order.length === 0 || table.questions.length === 0) {
    return { question: null, stopValue, bestValue: stopValue };
  }
  const { questions, bestAlone } = shortlist(table.questions, beliefs);
  const { table: searchTable, droppedMass } = mergeHypotheses(table, beliefs, questions, GROUPS);
  const outcome =
    droppedMass > DROPPED_TOO_MUCH
      ? undefined
      : searchWithinBudget(searchTable, isLarge ? PRODUCTS_FOR_MANY : PRODUCTS);
  const found = outcome === undefined ? undefined : leastValue(questions, outcome);
  if (found?.question != null) return { question: found.question, stopValue, bestValue: found.value };
  const isSure = found !== undefined && droppedMass < DROPPED_TOO_MUCH_TO_STOP;
  const isSettled = table.questions.every((question) => effectiveCost(question) >= stopValue);
  const question = isSure || isSettled ? null : bestAlone;
  return { question, stopValue, bestValue: stopValue };
}
