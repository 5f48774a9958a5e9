// The search at the depth a decision can afford. Spending is counted in products, never by a clock: a slow
// machine and a fast one give the same answer.

import type { SearchTable } from "./search-table.ts";
import type { SearchOutcome } from "./tapered-search.ts";
import { taperedSearch } from "./tapered-search.ts";

interface Level {
  /** Questions followed at the root, one question later, and below. */
  readonly beams: readonly number[];
  /** Branches below this share of λ are not followed. */
  readonly reach: number;
}

/**
 * Coarse to fine. On 400 tables of the demo handbook a wide beam bought more than a far reach: [8, 3, 1] to 1/100 loses
 * .45 % of the price against a search twenty times as dear, [4, 2, 1] to 1/600 loses .6 % for half as much again.
 */
const LEVELS: readonly Level[] = [
  { beams: [6, 3, 1], reach: 1 / 50 },
  { beams: [8, 3, 1], reach: 1 / 100 },
  { beams: [8, 3, 1], reach: 1 / 200 },
  { beams: [8, 3, 1], reach: 1 / 600 },
  { beams: [8, 3, 1], reach: 1 / 2000 },
];
/** How many times more products the next level takes: seldom more, so that few searches are begun in vain. */
const GROWTH = 2.6;

/**
 * The finest search that `budget` products allow; undefined when not even the coarsest was completed. From the cost of a
 * completed level the finest one that should fit is tried next, so that little is spent on searches that are not finished.
 */
export function searchWithinBudget(table: SearchTable, budget: number): SearchOutcome | undefined {
  let completed: SearchOutcome | undefined;
  let left = budget;
  let level = 0;
  for (;;) {
    const { beams, reach } = LEVELS[level] as Level;
    const outcome = taperedSearch(table, { beams, reachFloor: table.lambda * reach, budget: left });
    if (!outcome.isComplete) return completed;
    completed = outcome;
    left -= outcome.products;
    const next = finestWithin(level, outcome.products, left);
    if (next === level) return completed;
    level = next;
  }
}

/** The finest level that should take no more than `left` products when `level` took `products`; at least `level`. */
function finestWithin(level: number, products: number, left: number): number {
  let finest = LEVELS.length - 1;
  while (finest > level && products * GROWTH ** (finest - level) > left) finest -= 1;
  return finest;
}
