// The search at the depth a decision can afford. Spending is counted in scorings, never by a clock: a slow
// machine and a fast one give the same answer.

import type { SearchTable } from "./search-table.ts";
import type { SearchOutcome } from "./tapered-search.ts";
import { taperedSearch } from "./tapered-search.ts";

/** Tables of up to this many hypotheses × questions are searched with the wide beams. */
const SMALL_TABLE = 200;
/**
 * Questions followed at the root, one question later, and below. On twelve large tables the narrow ones, which reach
 * further for the same scorings, came out 4 % cheaper than the wide ones.
 */
const WIDE_BEAMS = [6, 3, 1];
const NARROW_BEAMS = [4, 2, 1];
/** Branches below this share of λ are not followed, coarse to fine; the finest is what we want. */
const REACH_LEVELS = [1 / 100, 1 / 200, 1 / 600, 1 / 2000];
/** How many times more scorings the next level takes, on the middle one of the tables measured. */
const GROWTH = 1.8;

/**
 * The finest search that `budget` scorings allow; undefined when not even the coarsest was completed. From the cost of a
 * completed level the finest one likely to fit is tried next, so that little is spent on searches that are not finished.
 */
export function searchWithinBudget(table: SearchTable, budget: number): SearchOutcome | undefined {
  const isSmall = table.weights.length * table.questions.length <= SMALL_TABLE;
  const beams = isSmall ? WIDE_BEAMS : NARROW_BEAMS;
  let completed: SearchOutcome | undefined;
  let left = budget;
  let level = 0;
  for (;;) {
    const reachFloor = table.lambda * (REACH_LEVELS[level] as number);
    const outcome = taperedSearch(table, { beams, reachFloor, budget: left });
    if (!outcome.isComplete) return completed;
    completed = outcome;
    left -= outcome.scorings;
    const next = finestWithin(level, outcome.scorings, left);
    if (next === level) return completed;
    level = next;
  }
}

/** The finest level that should take no more than `left` scorings when `level` took `scorings`; at least `level`. */
function finestWithin(level: number, scorings: number, left: number): number {
  let finest = REACH_LEVELS.length - 1;
  while (finest > level && scorings * GROWTH ** (finest - level) > left) finest -= 1;
  return finest;
}
