// The policies ours is held against: what a form does, and what a greedy assistant with a bare threshold does.

import { mutualInformationBits } from "../../knowledge/information/mutual-information.ts";
import type { Question, QuestionTable } from "../../knowledge/questions/question-table.ts";
import type { Policy } from "./policy-objective.ts";
import { heaviestClass } from "./policy-objective.ts";

function classAnswerTable(table: QuestionTable, question: Question): number[][] {
  const byClass = new Map<string, number[]>();
  table.hypotheses.forEach(({ prior, class: name }, index) => {
    if (prior <= 0) return;
    const row = byClass.get(name) ?? question.answers.map(() => 0);
    byClass.set(
      name,
      row.map(
        (mass, answer) => mass + prior * (question.likelihood[index * question.answers.length + answer] ?? 0),
      ),
    );
  });
  return [...byClass.values()];
}

/** I(class; answer) in bits of a question, by the plain published formula. */
export function classGainBits(table: QuestionTable, question: Question): number {
  return mutualInformationBits(classAnswerTable(table, question));
}

/** The question of most information on the class per effort; ties go to the first; null when none tells anything. */
export function greedyChoice(table: QuestionTable): string | null {
  let best: string | null = null;
  let bestScore = 0;
  for (const question of table.questions) {
    const gain = classGainBits(table, question);
    const score = (gain * (1 - question.cannotTell)) / question.cost;
    if (gain < 1e-9 || score <= bestScore * (1 + 1e-12)) continue;
    best = question.id;
    bestScore = score;
  }
  return best;
}

/** Greedy until one class holds `share` of the belief. */
export function greedyUntil(share: number): Policy {
  return (table) => (heaviestClass(table).share >= share ? null : greedyChoice(table));
}

/** The questions in the table's own order until one class holds `share` of the belief. */
export function fixedOrderUntil(share: number): Policy {
  return (table) => (heaviestClass(table).share >= share ? null : (table.questions[0]?.id ?? null));
}
