// How far the question policy is from the proven optimum, beside what a greedy assistant and a form reach.

import { nextQuestion } from "../../knowledge/questions/next-question.ts";
import { exactOptimum } from "../support/exact-policy.ts";
import type { Policy } from "../support/policy-objective.ts";
import { objectiveOf } from "../support/policy-objective.ts";
import { chanceFrom, randomTable } from "../support/random-tables.ts";
import { fixedOrderUntil, greedyUntil } from "../support/simple-policies.ts";

export interface RatioSummary {
  readonly mean: number;
  readonly worst: number;
}

export interface PolicyComparison {
  /** Tables with a proven optimum, and tables drawn to find them. */
  readonly proven: number;
  readonly drawn: number;
  /** Objective ÷ optimum of each policy. */
  readonly ratios: Readonly<
    Record<"tapered search" | "greedy until 95 %" | "fixed order until 95 %", RatioSummary>
  >;
}

/** States the exact solver may expand before a table is passed over: a count, so the same tables always stay. */
export const PROVABLE_STATES = 120_000;

const POLICIES: Readonly<Record<keyof PolicyComparison["ratios"], Policy>> = {
  "tapered search": (table) => nextQuestion(table).question,
  "greedy until 95 %": greedyUntil(0.95),
  "fixed order until 95 %": fixedOrderUntil(0.95),
};

/**
 * Objective ÷ proven optimum of the policies over the first `count` provable random tables (4–14 hypotheses,
 * 5–14 questions, λ = 60) drawn from `start`. About one table in three is provable within `states`.
 */
export function comparePolicyWithOptimum(
  count: number,
  start: number,
  states: number = PROVABLE_STATES,
): PolicyComparison {
  const chance = chanceFrom(start);
  const totals = new Map(Object.keys(POLICIES).map((name) => [name, { sum: 0, worst: 0 }]));
  let proven = 0;
  let drawn = 0;
  while (proven < count) {
    const table = randomTable(chance);
    drawn += 1;
    const optimum = exactOptimum(table, states);
    if (optimum === undefined) continue;
    proven += 1;
    for (const [name, policy] of Object.entries(POLICIES)) {
      const ratio = objectiveOf(table, policy).price / optimum;
      const total = totals.get(name) ?? { sum: 0, worst: 0 };
      totals.set(name, { sum: total.sum + ratio, worst: Math.max(total.worst, ratio) });
    }
  }
  const summary = (name: keyof PolicyComparison["ratios"]): RatioSummary => {
    const { sum, worst } = totals.get(name) ?? { sum: 0, worst: 0 };
    return { mean: sum / count, worst };
  };
  return {
    proven,
    drawn,
    ratios: {
      "tapered search": summary("tapered search"),
      "greedy until 95 %": summary("greedy until 95 %"),
      "fixed order until 95 %": summary("fixed order until 95 %"),
    },
  };
}
