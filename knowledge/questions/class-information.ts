// Shannon information that a question's answer is expected to give about the class (the verdict), not about
// the hypothesis: telling apart two hypotheses that lead to the same verdict is worth nothing. It is for
// showing and ranking; the search itself scores by the Gini index, which needs no logarithm.

import type { BeliefsByClass } from "./beliefs-by-class.ts";
import type { Question } from "./question-table.ts";

function timesOwnLogarithm(mass: number): number {
  return mass > 0 ? mass * Math.log2(mass) : 0;
}

/**
 * I(class; answer) in bits, given that something is told: H(A) + H(C) − H(A,C) over m[a][c] = Σ_{h in c} p(h)·P(a|h)
 * (T. M. Cover & J. A. Thomas, Elements of Information Theory, 2006, equation 2.45). Never below 0; no beliefs: 0.
 * Cost: hypotheses × answers.
 */
export function classInformationBits(beliefs: BeliefsByClass, question: Question): number {
  const { order, weights, classEnds } = beliefs;
  const { likelihood } = question;
  const answers = question.answers.length;
  const answerMass = new Float64Array(answers);
  const joint = new Float64Array(answers);
  let total = 0;
  let bits = 0;
  let place = 0;
  for (const end of classEnds) {
    let mass = 0;
    joint.fill(0);
    for (; place < end; place += 1) {
      const weight = weights[place] as number;
      const row = (order[place] as number) * answers;
      mass += weight;
      for (let a = 0; a < answers; a += 1) (joint[a] as number) += weight * (likelihood[row + a] as number);
    }
    total += mass;
    bits -= timesOwnLogarithm(mass);
    for (let a = 0; a < answers; a += 1) {
      (answerMass[a] as number) += joint[a] as number;
      bits += timesOwnLogarithm(joint[a] as number);
    }
  }
  for (const mass of answerMass) bits -= timesOwnLogarithm(mass);
  return total > 0 ? Math.max(0, (bits + timesOwnLogarithm(total)) / total) : 0;
}
