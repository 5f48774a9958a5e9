/**
 * Two ways of asking the same owner: the bot's (which question, or stop, by what it is worth) and a printed form (every
 * question in the handbook's order, put down once one class stands at 95 %).
 */
import { nextQuestion, type Question, type QuestionTable } from "../../../knowledge/index.ts";
import { type DrawnCase, rowOf } from "./drawn-case.ts";

/** The next question, or null to stop, given the belief in each hypothesis and what has not been asked yet. */
export type WayOfAsking = (table: QuestionTable) => string | null;

export interface PlayedCase {
  readonly effort: number;
  readonly questions: number;
  /** Probability of each class at the end; sums to one. */
  readonly classes: ReadonlyMap<string, number>;
  readonly trueClass: string;
}

/** With the ids of the questions put, in their order. */
export interface AskedCase extends PlayedCase {
  readonly asked: readonly string[];
}

const FORM_STOPS_AT = 0.95;

export const byWorth: WayOfAsking = (table) => nextQuestion(table).question;

export const byForm: WayOfAsking = (table) => {
  const surest = Math.max(...classShares(table).values());
  return surest >= FORM_STOPS_AT ? null : (table.questions[0]?.id ?? null);
};

/**
 * A way of asking that remembers: the same answers so far lead to the same next question, so that thousands of cases share
 * the search near the root. The order of the answers does not matter to the belief, and is kept out of the key.
 */
export function player(table: QuestionTable, way: WayOfAsking): (drawn: DrawnCase) => AskedCase {
  const decided = new Map<string, string | null>();
  return (drawn) => {
    let present = table;
    let effort = 0;
    const told = new Map<string, number | null>();
    for (;;) {
      const key = keyOf(table, told);
      const known = decided.get(key);
      const next = known === undefined ? way(present) : known;
      decided.set(key, next);
      const question = present.questions.find(({ id }) => id === next);
      if (question === undefined) break;
      const answer = drawn.answers.get(question.id) ?? null;
      effort += question.cost;
      told.set(question.id, answer);
      present = after(present, question, answer);
    }
    return {
      effort,
      questions: told.size,
      classes: classShares(present),
      trueClass: drawn.trueClass,
      asked: [...told.keys()],
    };
  };
}

/** Bayes' rule, scaled so that the beliefs sum to one; "cannot tell" moves nothing. The question is not asked again. */
function after(table: QuestionTable, question: Question, answer: number | null): QuestionTable {
  const questions = table.questions.filter((other) => other !== question);
  if (answer === null) return { ...table, questions };
  const weights = table.hypotheses.map(({ prior }, index) => prior * (rowOf(question, index)[answer] ?? 0));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const hypotheses = table.hypotheses.map((hypothesis, index) => ({
    ...hypothesis,
    prior: (weights[index] ?? 0) / total,
  }));
  return { ...table, hypotheses, questions };
}

function classShares(table: QuestionTable): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  const total = table.hypotheses.reduce((sum, { prior }) => sum + prior, 0);
  for (const hypothesis of table.hypotheses) {
    shares.set(hypothesis.class, (shares.get(hypothesis.class) ?? 0) + hypothesis.prior / total);
  }
  return shares;
}

function keyOf(table: QuestionTable, told: ReadonlyMap<string, number | null>): string {
  return table.questions.map(({ id }) => (told.has(id) ? `${told.get(id) ?? "?"}` : "")).join(",");
}
