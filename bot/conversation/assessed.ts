/** What the case amounts to now: the identification, and the one question that is worth its effort, or none. */
import type {
  CompiledPart,
  Feature,
  Goal,
  Identification,
  PartKind,
  QuestionTable,
  ReportValue,
} from "../../knowledge/index.ts";
import type { CaseFacts } from "./case.ts";

export const carQuestions = ["car.built", "car.trim", "car.market", "car.model"] as const;
export type CarQuestion = (typeof carQuestions)[number];

type Size = Extract<ReportValue, { kind: "measurement" }>;

/** Why a question about a part is put: the search chose it, or a fact that was told needs a second look. */
export type Reason =
  | { readonly kind: "next" }
  | { readonly kind: "contradiction" }
  | { readonly kind: "outlier" };

export type NextQuestion =
  | { readonly about: "part" }
  | { readonly about: "car"; readonly ask: CarQuestion }
  | { readonly about: "unit"; readonly feature: Feature; readonly unit: string; readonly said: Size }
  | { readonly about: "feature"; readonly feature: Feature; readonly because: Reason };

export interface Assessed {
  readonly part: PartKind;
  readonly compiled: CompiledPart;
  readonly goal: Goal;
  readonly facts: CaseFacts;
  readonly identification: Identification;
  /** What may still be asked, with the present beliefs. */
  readonly table: QuestionTable;
  readonly question: NextQuestion | null;
}
