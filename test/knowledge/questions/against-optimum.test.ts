// The policy against proven optima, and the prover against a plain enumeration that shares nothing with it.

import { describe, expect, test } from "vitest";
import type { QuestionTable } from "../../../knowledge/questions/question-table.ts";
import { comparePolicyWithOptimum } from "../../bench/policy-against-optimum.ts";
import { exactOptimum } from "../../support/exact-policy.ts";
import { afterAnswer, heaviestClass, withoutQuestion } from "../../support/policy-objective.ts";
import { chanceFrom, randomTableOf } from "../../support/random-tables.ts";

/** Every course of asking and stopping, without memory or bounds. */
function enumerated(table: QuestionTable): number {
  const stop = table.lambda * (1 - heaviestClass(table).share);
  const asking = table.questions.map((question) => {
    const { cost, cannotTell } = question;
    const told = question.answers.map((_, answer) => {
      const { table: next, probability } = afterAnswer(table, question, answer);
      return probability > 0 ? probability * enumerated(next) : 0;
    });
    const untold = cannotTell > 0 ? cannotTell * enumerated(withoutQuestion(table, question.id)) : 0;
    return cost + untold + (1 - cannotTell) * told.reduce((sum, price) => sum + price, 0);
  });
  return Math.min(stop, ...asking);
}

describe("the proven optimum", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    "is the least price over every course of asking and stopping (table %i)",
    (start) => {
      const shape = { hypotheses: 4 + (start % 4), questions: 3, classes: 2 + (start % 2), lambda: 60 };
      const table = randomTableOf(shape, chanceFrom(start));
      expect(exactOptimum(table, 10_000)).toBeCloseTo(enumerated(table), 9);
    },
  );

  test("is refused, not guessed, where too many states would have to be searched", () => {
    const table = randomTableOf({ hypotheses: 14, questions: 14, classes: 3, lambda: 60 }, chanceFrom(1));
    expect(exactOptimum(table, 100)).toBeUndefined();
  });
});

describe("the policy on random tables with a proven optimum", () => {
  // Fewer and smaller tables than the benchmark proves, so that the suite stays quick; same bounds.
  test("costs on average at most 1.005 and at worst 1.05 times the optimum, which nothing beats", () => {
    const { proven, ratios } = comparePolicyWithOptimum(45, 7, 15_000);
    expect(proven).toBe(45);
    expect(ratios["tapered search"].mean).toBeLessThanOrEqual(1.005);
    expect(ratios["tapered search"].worst).toBeLessThanOrEqual(1.05);
    expect(ratios["tapered search"].mean).toBeGreaterThanOrEqual(1 - 1e-9);
    // The gap to a bare threshold is what the search is for.
    expect(ratios["greedy until 95 %"].mean).toBeGreaterThan(1.1);
    expect(ratios["fixed order until 95 %"].mean).toBeGreaterThan(ratios["greedy until 95 %"].mean);
  }, 120_000);
});
