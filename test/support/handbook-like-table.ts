// Random tables built as a handbook's are: every variant in several ways it came to the car, each with a kin that
// is not in the handbook; most questions look at the variant, some at how it came. Much of it cannot be resolved.

import type { Question, QuestionTable } from "../../knowledge/questions/question-table.ts";
import type { Chance } from "./random-tables.ts";

export interface HandbookShape {
  readonly variants: number;
  readonly ways: number;
  readonly questions: number;
  /** "variant": which variant; "right for car": variant group and whether it came from the works. */
  readonly goal: "variant" | "right for car";
  readonly lambda: number;
}

interface Origin {
  readonly variant: number;
  readonly way: number;
  readonly isKin: boolean;
}

const COSTS = [1, 2, 3, 5, 8];
const KIN_SHARE = 0.06;

function originsOf(shape: HandbookShape): Origin[] {
  const kinds = [false, true];
  return Array.from({ length: shape.variants }, (_, variant) =>
    Array.from({ length: shape.ways }, (_, way) => kinds.map((isKin) => ({ variant, way, isKin }))),
  ).flat(2);
}

function classOf({ variant, way, isKin }: Origin, goal: HandbookShape["goal"]): string {
  if (isKin) return "not in the handbook";
  return goal === "variant" ? `variant ${variant}` : `group ${variant % 4}, ${way === 0 ? "works" : "later"}`;
}

function handbookQuestion(index: number, origins: readonly Origin[], chance: Chance): Question {
  const states = 2 + Math.floor(chance() * 4);
  const misread = 0.02 + 0.13 * chance();
  const looksAtWay = chance() < 0.25;
  const usual = Math.floor(chance() * states);
  const stateOf = origins.map(() => (chance() < 0.5 ? usual : Math.floor(chance() * states)));
  const likelihood = origins.flatMap(({ variant, way, isKin }) => {
    const state = stateOf[looksAtWay ? way : variant];
    return Array.from({ length: states }, (_, answer) => {
      const plain = answer === state ? 1 - misread : misread / (states - 1);
      return isKin ? 0.5 * plain + 0.5 / states : plain;
    });
  });
  return {
    id: `q${String(index).padStart(3, "0")}`,
    cost: COSTS[Math.floor(chance() * COSTS.length)] ?? 1,
    answers: Array.from({ length: states }, (_, answer) => `a${answer}`),
    likelihood: Float64Array.from(likelihood),
    cannotTell: 0.25 * chance(),
  };
}

/** A table of variants × ways × 2 hypotheses with skewed priors that sum to one. */
export function handbookLikeTable(shape: HandbookShape, chance: Chance): QuestionTable {
  const origins = originsOf(shape);
  const variantWeights = Array.from({ length: shape.variants }, () => 0.02 + chance() ** 3);
  const wayWeights = Array.from({ length: shape.ways }, () => 0.1 + chance() ** 2);
  const weights = origins.map(
    ({ variant, way, isKin }) =>
      (variantWeights[variant] ?? 0) * (wayWeights[way] ?? 0) * (isKin ? KIN_SHARE : 1 - KIN_SHARE),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    hypotheses: origins.map((origin, index) => ({
      id: `${origin.variant}-${origin.way}-${origin.isKin ? "kin" : "known"}`,
      prior: (weights[index] ?? 0) / total,
      class: classOf(origin, shape.goal),
    })),
    questions: Array.from({ length: shape.questions }, (_, index) =>
      handbookQuestion(index, origins, chance),
    ),
    lambda: shape.lambda,
  };
}
