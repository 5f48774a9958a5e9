/**
 * One invented owner: what is true of the part, and what they would answer to every question. All answers are drawn before
 * any is asked for, so that two ways of asking meet the very same owner (common random numbers).
 */
import type { Question, QuestionTable } from "../../../knowledge/index.ts";
import type { Chance } from "./chance.ts";

export interface DrawnCase {
  /** The class the drawn hypothesis belongs to: what a right verdict says. */
  readonly trueClass: string;
  /** By question: the row of the answer, or null for "cannot tell". */
  readonly answers: ReadonlyMap<string, number | null>;
}

/** A case drawn from the table's own priors and likelihoods. Always the same number of draws, whatever comes out. */
export function drawCase(table: QuestionTable, chance: Chance): DrawnCase {
  const hypothesis = drawIndex(
    table.hypotheses.map(({ prior }) => prior),
    chance(),
  );
  const answers = table.questions.map((question): [string, number | null] => {
    const isTold = chance() >= question.cannotTell;
    const answer = drawIndex(rowOf(question, hypothesis), chance());
    return [question.id, isTold ? answer : null];
  });
  return { trueClass: table.hypotheses[hypothesis]?.class ?? "", answers: new Map(answers) };
}

/** P(answer | hypothesis) for the answers of one question. */
export function rowOf(question: Question, hypothesis: number): Float64Array {
  const width = question.answers.length;
  return question.likelihood.subarray(hypothesis * width, (hypothesis + 1) * width);
}

/** The index whose share of the weights holds `point` (in [0, 1)); the last one with weight when rounding falls beyond. */
function drawIndex(weights: Iterable<number>, point: number): number {
  const list = [...weights];
  let left = point * list.reduce((sum, weight) => sum + weight, 0);
  let last = 0;
  for (const [index, weight] of list.entries()) {
    if (weight <= 0) continue;
    last = index;
    left -= weight;
    if (left < 0) return index;
  }
  return last;
}
