// A quick score for picking the promising questions among hundreds: the expected rise of Σ P(class)², the
// Gini index, needs no logarithm and reads the table once. Shannon's gain would cost several times as much.

import type { BeliefsByClass } from "./beliefs-by-class.ts";
import type { Question } from "./question-table.ts";

/** Σ_c m_c² / Σ_c m_c for the masses m_c of the classes together with one answer; 0 for an impossible answer. */
function concentrationWith(beliefs: BeliefsByClass, question: Question, answer: number): number {
  const { order, weights, classEnds } = beliefs;
  const { likelihood } = question;
  const answers = question.answers.length;
  let place = 0;
  let total = 0;
  let squares = 0;
  for (let c = 0; c < classEnds.length; c += 1) {
    const end = classEnds[c] as number;
    let mass = 0;
    for (; place < end; place += 1) {
      mass +=
        (weights[place] as number) * (likelihood[(order[place] as number) * answers + answer] as number);
    }
    total += mass;
    squares += mass * mass;
  }
  return total > 0 ? squares / total : 0;
}

/** The same for an answer and the next one together: two at a time run faster than one after the other. */
function concentrationWithTwo(beliefs: BeliefsByClass, question: Question, answer: number): number {
  const { order, weights, classEnds } = beliefs;
  const { likelihood } = question;
  const answers = question.answers.length;
  let place = 0;
  let total = 0;
  let squares = 0;
  let nextTotal = 0;
  let nextSquares = 0;
  for (let c = 0; c < classEnds.length; c += 1) {
    const end = classEnds[c] as number;
    let mass = 0;
    let nextMass = 0;
    for (; place < end; place += 1) {
      const weight = weights[place] as number;
      const cell = (order[place] as number) * answers + answer;
      mass += weight * (likelihood[cell] as number);
      nextMass += weight * (likelihood[cell + 1] as number);
    }
    total += mass;
    squares += mass * mass;
    nextTotal += nextMass;
    nextSquares += nextMass * nextMass;
  }
  return (total > 0 ? squares / total : 0) + (nextTotal > 0 ? nextSquares / nextTotal : 0);
}

/** Σ_c m_c² / Σ_c m_c of the classes before any answer; 0 without beliefs. */
export function giniConcentration(beliefs: BeliefsByClass): number {
  let place = 0;
  let total = 0;
  let squares = 0;
  for (const end of beliefs.classEnds) {
    let mass = 0;
    for (; place < end; place += 1) mass += beliefs.weights[place] as number;
    total += mass;
    squares += mass * mass;
  }
  return total > 0 ? squares / total : 0;
}

/**
 * Expected concentration of the classes after the answer, Σ_a Σ_c m[a][c]² / P(a) with
 * m[a][c] = Σ_{h in c} p(h)·P(a|h), in [0, 1]; less `giniConcentration` it is the expected drop of the Gini index
 * (L. Breiman et al., Classification and Regression Trees, 1984, section 4.3). Cost: hypotheses × answers.
 */
export function giniConcentrationAfter(beliefs: BeliefsByClass, question: Question): number {
  const answers = question.answers.length;
  let after = 0;
  for (let answer = 0; answer + 1 < answers; answer += 2)
    after += concentrationWithTwo(beliefs, question, answer);
  return answers % 2 === 1 ? after + concentrationWith(beliefs, question, answers - 1) : after;
}
