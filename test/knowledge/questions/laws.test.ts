// Laws any sensible way of asking obeys, whatever the table.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nextQuestion } from "../../../knowledge/questions/next-question.ts";
import type { Question, QuestionTable } from "../../../knowledge/questions/question-table.ts";
import { heaviestClass, objectiveOf } from "../../support/policy-objective.ts";
import { chanceFrom, randomTable, randomTableOf } from "../../support/random-tables.ts";
import { classGainBits } from "../../support/simple-policies.ts";

const RUNS = { seed: 2010, numRuns: 60 };
const table = fc.nat(1_000_000).map((start) => randomTable(chanceFrom(start)));
const ours = (here: QuestionTable): string | null => nextQuestion(here).question;

/** The same table with its hypotheses in another order, likelihood rows along with them. */
function reordered(here: QuestionTable, order: readonly number[]): QuestionTable {
  const rowOf = (question: Question, row: number): number[] => {
    const answers = question.answers.length;
    return [...question.likelihood.subarray(row * answers, (row + 1) * answers)];
  };
  return {
    ...here,
    hypotheses: order.flatMap((row) => here.hypotheses[row] ?? []),
    questions: here.questions.map((question) => ({
      ...question,
      likelihood: Float64Array.from(order.flatMap((row) => rowOf(question, row))),
    })),
  };
}

function uselessQuestion(here: QuestionTable, cost: number): Question {
  return {
    id: "a-useless",
    cost,
    answers: ["yes", "no"],
    likelihood: Float64Array.from(here.hypotheses.flatMap(() => [0.3, 0.7])),
    cannotTell: 0,
  };
}

describe("the next question", () => {
  test("is the same, byte for byte, each time it is asked for", () => {
    fc.assert(
      fc.property(table, (here) => {
        const first = JSON.stringify(nextQuestion(here));
        expect(JSON.stringify(nextQuestion(structuredClone(here)))).toBe(first);
      }),
      RUNS,
    );
  });

  test("does not depend on what hypotheses and classes are called", () => {
    fc.assert(
      fc.property(table, (here) => {
        const renamed = here.hypotheses.map((each, index) => ({
          ...each,
          id: `z${here.hypotheses.length - index}`,
          class: `${each.class.length + 9 - Number(each.class.slice(1))}-renamed`,
        }));
        expect(nextQuestion({ ...here, hypotheses: renamed })).toEqual(nextQuestion(here));
      }),
      RUNS,
    );
  });

  test("does not depend on the order of hypotheses, but for rounding", () => {
    fc.assert(
      fc.property(table, fc.nat(1_000_000), (here, start) => {
        const chance = chanceFrom(start);
        const order = here.hypotheses.map((_, row) => ({ row, at: chance() })).sort((a, b) => a.at - b.at);
        const other = nextQuestion(
          reordered(
            here,
            order.map(({ row }) => row),
          ),
        );
        const same = nextQuestion(here);
        expect(other.stopValue).toBeCloseTo(same.stopValue, 9);
        expect(other.bestValue).toBeCloseTo(same.bestValue, 9);
      }),
      RUNS,
    );
  });

  test("does not depend on how beliefs are scaled", () => {
    fc.assert(
      fc.property(table, (here) => {
        const hypotheses = here.hypotheses.map((each) => ({ ...each, prior: each.prior * 8 }));
        expect(nextQuestion({ ...here, hypotheses })).toEqual(nextQuestion(here));
      }),
      RUNS,
    );
  });

  test("is never one whose answer tells nothing, however cheap", () => {
    fc.assert(
      fc.property(table, (here) => {
        const cheap = { ...here, questions: [uselessQuestion(here, 0.01), ...here.questions] };
        expect(nextQuestion(cheap).question).not.toBe("a-useless");
        expect(nextQuestion({ ...here, questions: [uselessQuestion(here, 0.01)] }).question).toBeNull();
      }),
      RUNS,
    );
  });

  test("never costs more than it can save", () => {
    fc.assert(
      fc.property(table, fc.double({ min: 1, max: 100, noNaN: true }), (here, lambda) => {
        const decision = nextQuestion({ ...here, lambda });
        const asked = here.questions.find(({ id }) => id === decision.question);
        expect(decision.bestValue).toBeLessThanOrEqual(decision.stopValue);
        if (asked !== undefined) expect(asked.cost).toBeLessThan(decision.stopValue);
      }),
      RUNS,
    );
  });

  test("stops with the price of the error where one class is certain, or nothing is left to ask or believe", () => {
    const here = randomTable(chanceFrom(1));
    const certain = here.hypotheses.map((each) => ({ ...each, class: "only" }));
    expect(nextQuestion({ ...here, hypotheses: certain })).toMatchObject({ question: null, stopValue: 0 });
    const stopped = nextQuestion({ ...here, questions: [] });
    expect(stopped).toEqual({
      question: null,
      stopValue: stopped.bestValue,
      bestValue: stopped.stopValue,
    });
    expect(stopped.stopValue).toBeCloseTo(here.lambda * (1 - heaviestClass(here).share), 12);
    expect(nextQuestion({ ...here, hypotheses: [] }).question).toBeNull();
  });
});

describe("a dearer error", () => {
  test("never leaves more wrong verdicts, but for what a search in steps can miss", () => {
    const starts = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
    for (const start of starts) {
      const shape = { hypotheses: 6 + (start % 3), questions: 6, classes: 3, lambda: 60 };
      const here = randomTableOf(shape, chanceFrom(start));
      const wrong = [15, 60, 240].map((lambda) => objectiveOf({ ...here, lambda }, ours).wrong);
      expect(wrong[1] ?? 1).toBeLessThanOrEqual((wrong[0] ?? 0) + 1e-9);
      expect(wrong[2] ?? 1).toBeLessThanOrEqual((wrong[1] ?? 0) + 1e-9);
    }
  });
});

describe("tables too large to search whole", () => {
  const large = randomTableOf({ hypotheses: 600, questions: 60, classes: 12, lambda: 60 }, chanceFrom(4));

  test("give the same bytes twice, and a question that tells something about the class", () => {
    const decision = nextQuestion(large);
    expect(JSON.stringify(nextQuestion(large))).toBe(JSON.stringify(decision));
    const asked = large.questions.find(({ id }) => id === decision.question);
    expect(asked && classGainBits(large, asked)).toBeGreaterThan(0);
  });

  test("are decided as small ones where many hypotheses are only a few told in different words", () => {
    const small = randomTableOf({ hypotheses: 12, questions: 8, classes: 3, lambda: 60 }, chanceFrom(5));
    const copies = Array.from({ length: 50 }, (_, copy) => copy);
    const rows = small.hypotheses.flatMap((_, row) => copies.map(() => row));
    const many = reordered(small, rows);
    const expected = nextQuestion(small);
    const decision = nextQuestion(many);
    expect(decision.question).toBe(expected.question);
    expect(decision.bestValue).toBeCloseTo(expected.bestValue, 9);
  });

  test("never stop while much belief is outside the search and an answer may still be worth its cost", () => {
    expect(nextQuestion({ ...large, lambda: 0.5 }).question).toBeNull();
    expect(nextQuestion(large).question).not.toBeNull();
  });
});
