// The search at the depth a decision can afford. Spending is counted in scorings, never by a clock: a slow
// machine and a fast one give the same answer.

import type { SearchTable } from "./search-table.ts";
import type { SearchOutcome } from "./tapered-search.ts";
import { taperedSearch } from "./tapered-search.ts";

/** Questions followed at the root, one question later, and below. */
const BEAMS = [6, 3, 1];
/** Branches below this share of λ are not followed, coarse to fine; the finest is what we want. */
const REACH_LEVELS = [1 / 200, 1 / 600, 1 / 2000];
const FINEST = 1 / 2000;
/** Tables of up to this many hypotheses × questions are searched at the finest level straight away. */
const SMALL_TABLE = 256;
const SMALL_TABLE_BUDGET = 20_000;

/**
 * The finest completed search within `budget` scorings; undefined when not even the coarsest was completed.
 * Small tables first get their own budget for the finest level alone.
 */
export function searchWithinBudget(table: SearchTable, budget: number): SearchOutcome | undefined {
  const search = (level: number, allowance: number): SearchOutcome =>
    taperedSearch(table, { beams: BEAMS, reachFloor: table.lambda * level, budget: allowance });
  if (table.weights.length * table.questions.length <= SMALL_TABLE) {
    const outcome = search(FINEST, SMALL_TABLE_BUDGET);
    if (outcome.isComplete) return outcome;
  }
  let completed: SearchOutcome | undefined;
  let left = budget;
  for (const level of REACH_LEVELS) {
    const outcome = search(level, left);
    if (!outcome.isComplete) return completed;
    completed = outcome;
    left -= outcome.scorings;
  }
  return completed;
}
