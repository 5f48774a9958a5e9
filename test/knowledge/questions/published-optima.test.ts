// The policy reaches optima known from outside: exact dynamic programming over open data (every row equally
// likely, no misreading), and the published order of checks by probability over cost.

import { describe, expect, test } from "vitest";
import { entropyBits } from "../../../knowledge/information/entropy.ts";
import { nextQuestion } from "../../../knowledge/questions/next-question.ts";
import type { QuestionTable } from "../../../knowledge/questions/question-table.ts";
import { questionTableOf, readDataTable } from "../../support/data-tables.ts";
import { exactOptimum } from "../../support/exact-policy.ts";
import { objectiveOf } from "../../support/policy-objective.ts";
import { classGainBits, greedyUntil } from "../../support/simple-policies.ts";

const ours = (table: QuestionTable): string | null => nextQuestion(table).question;
const greedy = greedyUntil(1 - 1e-9);

describe.each([
  ["play-tennis", "play", {}, [], 14, 24, 24, "outlook"],
  ["play-tennis", "play", { outlook: 3 }, [], 14, 52, 53, "outlook"],
  ["contact-lenses", "contact-lenses", {}, [], 24, 53, 53, "tear-prod-rate"],
  ["zoo", "type", {}, ["animal"], 101, 210, 234, "milk"],
] as const)(
  "%s, verdict %s, costs %o",
  (file, classColumn, costs, skipped, rows, optimum, greedyEffort, first) => {
    const table = questionTableOf(readDataTable(file), classColumn, 60, costs, skipped);

    test(`certainty costs ${optimum}/${rows} looks on average, beginning with ${first}`, () => {
      const objective = objectiveOf(table, ours);
      expect(objective.wrong).toBeLessThan(1e-12);
      expect(objective.effort * rows).toBeCloseTo(optimum, 9);
      expect(nextQuestion(table).question).toBe(first);
    });

    test(`greedy information per cost pays ${greedyEffort}/${rows}`, () => {
      expect(objectiveOf(table, greedy).effort * rows).toBeCloseTo(greedyEffort, 9);
    });
  },
);

describe("exclusive-or: two characters that tell nothing alone and everything together", () => {
  const rows = ["00", "01", "10", "11"];
  const table: QuestionTable = {
    hypotheses: rows.map((id) => ({ id, prior: 0.25, class: id[0] === id[1] ? "even" : "odd" })),
    questions: [0, 1].map((digit) => ({
      id: `digit ${digit}`,
      cost: 1,
      answers: ["0", "1"],
      likelihood: Float64Array.from(rows.flatMap((id) => (id[digit] === "0" ? [1, 0] : [0, 1]))),
      cannotTell: 0,
    })),
    lambda: 60,
  };

  test("asking does not stop because no single answer gains", () => {
    for (const question of table.questions) expect(classGainBits(table, question)).toBeCloseTo(0, 12);
    expect(objectiveOf(table, ours)).toMatchObject({ effort: 2, wrong: 0 });
    expect(objectiveOf(table, greedy)).toMatchObject({ effort: 0, wrong: 0.5 });
  });

  test("it does stop where both digits cost more than an even guess", () => {
    expect(nextQuestion({ ...table, lambda: 3 }).question).toBeNull();
  });
});

// J. B. Kadane & H. A. Simon, "Optimal strategies for a class of constrained sequential problems", Annals of
// Statistics 5 (1977): one fault among n, each place is checked at its own cost, cheapest in the order of falling
// p ÷ c. It maps onto a question table when each place is a hypothesis and a class of its own, "is it here?" is a
// faultless question, and "none of these" is a rare hypothesis more: without it the last place would be known
// by elimination and never checked. λ is so high that no check is skipped. With ε for "none of these", which
// pays all checks, the mean effort is (1 − ε)·8.6 + ε·21.
describe("one fault among four places, p = .5 .3 .15 .05, c = 10 2 1 8", () => {
  const none = 0.02;
  const places = ["1", "2", "3", "4"];
  const shares = [0.5, 0.3, 0.15, 0.05];
  const costs = [10, 2, 1, 8];
  const table: QuestionTable = {
    hypotheses: [
      ...places.map((id, at) => ({ id, prior: (1 - none) * (shares[at] ?? 0), class: id })),
      { id: "none", prior: none, class: "none" },
    ],
    questions: places.map((id, at) => ({
      id,
      cost: costs[at] ?? 0,
      answers: ["here", "not here"],
      likelihood: Float64Array.from([...places, "none"].flatMap((place) => (place === id ? [1, 0] : [0, 1]))),
      cannotTell: 0,
    })),
    lambda: 10_000,
  };

  test("the checks come in the order 2, 3, 1, 4 and cost 8.6 where there is a fault", () => {
    const asked: string[] = [];
    let open = table;
    for (let next = ours(open); next !== null; next = ours(open)) {
      asked.push(next);
      const found = next;
      open = {
        ...open,
        hypotheses: open.hypotheses.map((place) => (place.id === found ? { ...place, prior: 0 } : place)),
        questions: open.questions.filter(({ id }) => id !== found),
      };
    }
    expect(asked).toEqual(["2", "3", "1", "4"]);
    expect(objectiveOf(table, ours).price).toBeCloseTo((1 - none) * 8.6 + none * 21, 9);
    expect(exactOptimum(table, 10_000)).toBeCloseTo((1 - none) * 8.6 + none * 21, 9);
  });
});

// T. M. Cover & J. A. Thomas, Elements of Information Theory, examples 1.1.2 and 5.6.1; S. Dasgupta, C. H. Papadimitriou & U. V.
// Vazirani, Algorithms, p. 156, as corrected (its third, 420 bits for 200 symbols, is a misprint of 400). Where any set of the
// hypotheses may be asked for, the fewest questions on average are the length of Huffman's code, and lie between H and H + 1.
describe("yes or no, of any set of the hypotheses: the length of Huffman's code", () => {
  const anySubset = (prior: readonly number[]): QuestionTable => ({
    hypotheses: prior.map((share, id) => ({ id: String(id), prior: share, class: String(id) })),
    // The first hypothesis is never in the set: a set and its complement are one question.
    questions: Array.from({ length: 2 ** (prior.length - 1) - 1 }, (_, at) => {
      const isIn = (hypothesis: number): boolean => ((2 * (at + 1)) >> hypothesis) % 2 === 1;
      return {
        id: `set ${at + 1}`,
        cost: 1,
        answers: ["no", "yes"],
        likelihood: Float64Array.from(prior.flatMap((_share, id) => (isIn(id) ? [0, 1] : [1, 0]))),
        cannotTell: 0,
      };
    }),
    lambda: 60,
  });

  test.each([
    ["Cover & Thomas, example 5.6.1", [0.25, 0.25, 0.2, 0.15, 0.15], 2.3],
    ["Cover & Thomas, the horse race, four of its horses", [1 / 2, 1 / 4, 1 / 8, 1 / 8], 1.75],
    ["Dasgupta, first", [0.15, 0.1, 0.7, 0.05], 1.45],
    ["Dasgupta, second", [0.3, 0.05, 0.25, 0.4], 1.9],
    ["Dasgupta, third", [0.2, 0.3, 0.3, 0.2], 2],
  ] as const)("%s: %j takes %f questions", (_, prior, expected) => {
    const objective = objectiveOf(anySubset(prior), ours);
    expect(objective.wrong).toBeLessThan(1e-12);
    expect(objective.effort).toBeCloseTo(expected, 9);
    const bits = entropyBits(prior);
    expect(objective.effort).toBeGreaterThanOrEqual(bits - 1e-9);
    expect(objective.effort).toBeLessThan(bits + 1);
  });

  test("the horse race of eight, of which 127 questions are too many to search: two on average", () => {
    const prior = [1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 64, 1 / 64, 1 / 64, 1 / 64];
    const objective = objectiveOf(anySubset(prior), ours);
    expect(objective.wrong).toBeLessThan(1e-12);
    expect(objective.effort).toBeCloseTo(2, 9);
  });
});
