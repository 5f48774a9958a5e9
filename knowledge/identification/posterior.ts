/**
 * Bayes' rule over any number of hypotheses, in logarithms. Identification and plain naive Bayes tables go through
 * this one sum, so that figures published for naive Bayes check the very code that names a part.
 */
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";

/** ln prior + Σ ln likelihood, one per hypothesis, added in the order given. */
export function logJoint(logPrior: Float64Array, evidence: readonly Float64Array[]): Float64Array {
  const joint = Float64Array.from(logPrior);
  for (const logs of evidence) {
    for (let h = 0; h < joint.length; h += 1) joint[h] = (joint[h] as number) + (logs[h] as number);
  }
  return joint;
}

/** P(h | evidence), summing to one; a hypothesis whose prior or likelihood is 0 stays 0. */
export function posterior(logPrior: Float64Array, evidence: readonly Float64Array[]): Float64Array {
  return normaliseLogarithms(logJoint(logPrior, evidence));
}

/** What a question's answers say: P(answer | hypothesis), row-major, hypotheses × answers. */
export interface AnswerTable {
  readonly answers: readonly string[];
  readonly likelihood: ArrayLike<number>;
}

/**
 * P(h | answers) from a prior (weights ≥ 0, need not sum to one) and tables of answers, taken as independent given
 * the hypothesis. `given`: pairs of a table and the answer heard; an answer the table does not know is no evidence.
 */
export function posteriorFromTables(
  prior: ArrayLike<number>,
  given: readonly (readonly [AnswerTable, string])[],
): Float64Array {
  const evidence = given.flatMap(([table, answer]) => {
    const column = table.answers.indexOf(answer);
    if (column < 0) return [];
    const width = table.answers.length;
    return [
      Float64Array.from({ length: prior.length }, (_, h) =>
        Math.log(table.likelihood[h * width + column] ?? 0),
      ),
    ];
  });
  return posterior(Float64Array.from(prior, Math.log), evidence);
}
