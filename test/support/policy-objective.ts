// What a policy costs, exactly: its own decision tree is grown from a table, every answer and every "cannot
// tell" followed with its probability, and effort plus λ × wrong verdicts added up.

import type { Question, QuestionTable } from "../../knowledge/questions/question-table.ts";

/** A policy: the id of the question to ask, or null to stop, for a table whose priors are the belief now. */
export type Policy = (table: QuestionTable) => string | null;

export interface Objective {
  readonly effort: number;
  readonly wrong: number;
  /** effort + λ·wrong */
  readonly price: number;
  /** Different states of knowledge in the policy's tree. */
  readonly states: number;
}

interface Cost {
  readonly effort: number;
  readonly wrong: number;
}

export function heaviestClass(table: QuestionTable): { readonly share: number; readonly name: string } {
  const masses = new Map<string, number>();
  let total = 0;
  for (const { prior, class: name } of table.hypotheses) {
    masses.set(name, (masses.get(name) ?? 0) + prior);
    total += prior;
  }
  let best = { share: 0, name: "" };
  for (const [name, mass] of masses) if (mass / total > best.share) best = { share: mass / total, name };
  return best;
}

export function withoutQuestion(table: QuestionTable, id: string): QuestionTable {
  return { ...table, questions: table.questions.filter((question) => question.id !== id) };
}

/** The table after one answer, with normalised posterior, and the probability of that answer. */
export function afterAnswer(
  table: QuestionTable,
  question: Question,
  answer: number,
): { readonly table: QuestionTable; readonly probability: number } {
  const joint = table.hypotheses.map(
    ({ prior }, index) => prior * (question.likelihood[index * question.answers.length + answer] ?? 0),
  );
  const probability = joint.reduce((sum, mass) => sum + mass, 0);
  const hypotheses = table.hypotheses.map((hypothesis, index) => ({
    ...hypothesis,
    prior: probability > 0 ? (joint[index] ?? 0) / probability : 0,
  }));
  return { table: { ...withoutQuestion(table, question.id), hypotheses }, probability };
}

/** Exact objective of a policy. Priors must sum to one. States reached in several orders are asked once. */
export function objectiveOf(table: QuestionTable, policy: Policy): Objective {
  const seen = new Map<string, Cost>();
  const follow = (here: QuestionTable, told: readonly string[]): Cost => {
    const state = [...told].sort().join(" ");
    const known = seen.get(state);
    if (known !== undefined) return known;
    const cost = expand(here, told);
    seen.set(state, cost);
    return cost;
  };
  const expand = (here: QuestionTable, told: readonly string[]): Cost => {
    const wanted = policy(here);
    const asked = here.questions.find(({ id }) => id === wanted);
    if (asked === undefined) return { effort: 0, wrong: 1 - heaviestClass(here).share };
    let { effort, wrong } = { effort: asked.cost, wrong: 0 };
    const add = (probability: number, next: QuestionTable, mark: string): void => {
      if (probability <= 0) return;
      const cost = follow(next, [...told, mark]);
      effort += probability * cost.effort;
      wrong += probability * cost.wrong;
    };
    asked.answers.forEach((_, answer) => {
      const { table: next, probability } = afterAnswer(here, asked, answer);
      add(probability * (1 - asked.cannotTell), next, `${asked.id}=${answer}`);
    });
    add(asked.cannotTell, withoutQuestion(here, asked.id), `${asked.id}=?`);
    return { effort, wrong };
  };
  const { effort, wrong } = follow(table, []);
  return { effort, wrong, price: effort + table.lambda * wrong, states: seen.size };
}
