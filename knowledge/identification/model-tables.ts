/** The compiled tables as plain JSON, for whoever wants to check the arithmetic with another program. */

import type { CarDescription } from "../evidence/car-description.ts";
import type { Goal } from "../evidence/goal.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { planQuestions } from "./plan-questions.ts";

export interface ModelTables {
  readonly hypotheses: readonly { readonly id: string; readonly prior: number; readonly class: string }[];
  readonly questions: readonly {
    readonly id: string;
    readonly cost: number;
    readonly answers: readonly string[];
    /** One row per hypothesis: P(answer | hypothesis), given that something was told. */
    readonly likelihood: readonly (readonly number[])[];
    readonly cannotTell: number;
  }[];
  readonly lambda: number;
}

/** The tables before anything was said of the part. */
export function modelTables(compiled: CompiledPart, car: CarDescription, goal: Goal): ModelTables {
  const { table } = planQuestions(compiled, { car, goal, reports: [], isWhole: true });
  return {
    hypotheses: table.hypotheses.map(({ id, prior, class: named }) => ({ id, prior, class: named })),
    questions: table.questions.map(({ id, cost, answers, likelihood, cannotTell }) => ({
      id,
      cost,
      answers,
      likelihood: table.hypotheses.map((_, h) => [
        ...likelihood.subarray(h * answers.length, (h + 1) * answers.length),
      ]),
      cannotTell,
    })),
    lambda: table.lambda,
  };
}
