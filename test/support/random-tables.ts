// Random question tables like those of real part kinds: a few variants with skewed priors in a few verdict
// classes, questions of two to five answers misread now and then, some that cannot always be told.

import type { Hypothesis, Question, QuestionTable } from "../../knowledge/questions/question-table.ts";

export type Chance = () => number;

/** Repeatable numbers in [0, 1): the 32-bit mixer "mulberry32" (public domain, T. Ettinger, from memory). */
export function chanceFrom(start: number): Chance {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function between(chance: Chance, low: number, high: number): number {
  return low + Math.floor(chance() * (high - low + 1));
}

export interface TableShape {
  readonly hypotheses: number;
  readonly questions: number;
  readonly classes: number;
  readonly lambda: number;
}

const COSTS = [1, 2, 3, 5, 8] as const;

function randomQuestion(chance: Chance, index: number, hypotheses: number): Question {
  const states = between(chance, 2, 5);
  const misread = 0.01 + 0.14 * chance();
  const likelihood = new Float64Array(hypotheses * states).fill(misread / (states - 1));
  for (let hypothesis = 0; hypothesis < hypotheses; hypothesis += 1) {
    likelihood[hypothesis * states + between(chance, 0, states - 1)] = 1 - misread;
  }
  return {
    id: `q${String(index).padStart(3, "0")}`,
    cost: COSTS[between(chance, 0, COSTS.length - 1)] ?? 1,
    answers: Array.from({ length: states }, (_, state) => `a${state}`),
    likelihood,
    cannotTell: 0.25 * chance(),
  };
}

/** A table of the given shape; priors fall off like the square of an even draw. */
export function randomTableOf(shape: TableShape, chance: Chance): QuestionTable {
  const draws = Array.from({ length: shape.hypotheses }, () => 0.02 + chance() ** 2);
  const total = draws.reduce((sum, draw) => sum + draw, 0);
  const hypotheses = draws.map(
    (draw, index): Hypothesis => ({
      id: `h${index}`,
      prior: draw / total,
      class: `c${index < shape.classes ? index : between(chance, 0, shape.classes - 1)}`,
    }),
  );
  const questions = Array.from({ length: shape.questions }, (_, index) =>
    randomQuestion(chance, index, shape.hypotheses),
  );
  return { hypotheses, questions, lambda: shape.lambda };
}

/** 4–14 hypotheses in 2–5 classes, 5–14 questions of 2–5 answers, λ = 60. */
export function randomTable(chance: Chance): QuestionTable {
  const hypotheses = between(chance, 4, 14);
  const questions = between(chance, 5, 14);
  const classes = between(chance, 2, Math.min(5, hypotheses));
  return randomTableOf({ hypotheses, questions, classes, lambda: 60 }, chance);
}
