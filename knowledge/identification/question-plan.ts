/** A question as the conversation puts it: its answers, what they are called, and what pressing one reports. */
import type { CarDescription } from "../evidence/car-description.ts";
import type { QuestionTable } from "../questions/question-table.ts";
import type { PlannedAnswer } from "./answer-rows.ts";

/** A question about a feature of the part; its words stand in the handbook. */
export interface FeatureQuestion {
  readonly kind: "states" | "measurement" | "date";
  readonly id: string;
  readonly feature: string;
  readonly answers: readonly PlannedAnswer[];
}

/** What of the car may be asked. */
export const carFields = ["built", "model", "trim", "market"] as const;
export type CarField = (typeof carFields)[number];

/** An answer about the car is merged into its description. */
export interface PlannedCarAnswer {
  readonly id: string;
  readonly label: string;
  readonly car: Partial<CarDescription>;
}
/** A question about the car; its id is "car.built", "car.model", "car.trim" or "car.market". */
export interface CarQuestion {
  readonly kind: "car";
  readonly id: string;
  readonly field: CarField;
  readonly answers: readonly PlannedCarAnswer[];
}

export type QuestionPlan = FeatureQuestion | CarQuestion;

/** The table for the question policy and, by question id, how to put each question and read its answer. */
export interface PlannedQuestions {
  readonly table: QuestionTable;
  readonly plans: ReadonlyMap<string, QuestionPlan>;
}
