// The same on the part kinds of the demo handbook. Whole they are too large to prove, so each is cut down in a fixed way: the
// questions that alone tell most about the class for their price are kept, as many as the exact solver can prove.

import { questionTableOf } from "../../../adapters/command-line/simulation/question-table-of.ts";
import { modelTables, nextQuestion, type QuestionTable } from "../../../knowledge/index.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { exactOptimum } from "../../support/exact-policy.ts";
import { objectiveOf } from "../../support/policy-objective.ts";
import { classGainBits } from "../../support/simple-policies.ts";
import type { Figure, Row } from "../row.ts";

const MOST_QUESTIONS = 9;
const LEAST_QUESTIONS = 3;
/** States the solver may expand: a count, so that the same tables are always proven. */
const STATES = 60_000;
const GOALS = ["which-variant", "right-for-car", "genuine"] as const;

export const policyOnDemo: Row = {
  name: "policy-on-demo",
  about: "the same on the demo handbook's part kinds, cut down to the best questions that can be proven",
  starts: [],
  measure: () => {
    const proven = demoTables().flatMap(({ name, table }) => provenRatio(name, table) ?? []);
    const ratios = proven.map(({ ratio }) => ratio);
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    const worst = proven.reduce((one, other) => (other.ratio > one.ratio ? other : one));
    const sizes = proven.map(({ questions }) => questions);
    const cut = `${Math.min(...sizes)} to ${Math.max(...sizes)} questions kept`;
    const figures: readonly Figure[] = [
      { what: "part kinds and goals proven", value: proven.length, unit: "", budget: { atLeast: 18 } },
      { what: "our questions: mean", value: mean, unit: "x", budget: { atMost: 1.005 }, remark: cut },
      {
        what: "our questions: worst",
        value: worst.ratio,
        unit: "x",
        budget: { atMost: 1.05 },
        remark: worst.name,
      },
    ];
    return figures;
  },
};

function demoTables(): readonly { readonly name: string; readonly table: QuestionTable }[] {
  const { handbook, compiled } = demoKnowledge();
  return handbook.parts.flatMap(({ id }) => {
    const part = compiled(id);
    if (part === undefined) return [];
    return GOALS.map((goal) => ({
      name: `${id}, ${goal}`,
      table: questionTableOf(modelTables(part, {}, goal)),
    }));
  });
}

interface Proven {
  readonly name: string;
  readonly questions: number;
  readonly ratio: number;
}

function provenRatio(name: string, table: QuestionTable): Proven | undefined {
  for (let questions = MOST_QUESTIONS; questions >= LEAST_QUESTIONS; questions -= 1) {
    const small = withBestQuestions(table, questions);
    const optimum = exactOptimum(small, STATES);
    if (optimum === undefined) continue;
    const { price } = objectiveOf(small, (here) => nextQuestion(here).question);
    return { name, questions, ratio: price / optimum };
  }
  return undefined;
}

function withBestQuestions(table: QuestionTable, count: number): QuestionTable {
  const worth = new Map(
    table.questions.map((question) => [
      question.id,
      (classGainBits(table, question) * (1 - question.cannotTell)) / question.cost,
    ]),
  );
  const best = [...table.questions]
    .sort((one, other) => (worth.get(other.id) ?? 0) - (worth.get(one.id) ?? 0))
    .slice(0, count)
    .map(({ id }) => id);
  return { ...table, questions: table.questions.filter(({ id }) => best.includes(id)) };
}
