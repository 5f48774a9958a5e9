/**
 * The questions that may be asked now, as a table for the question policy: what may be true, what may be asked, what
 * each answer would be worth, and how an answer turns into a report.
 */
import type { CarDescription } from "../evidence/car-description.ts";
import { type Goal, lambdaOfGoal } from "../evidence/goal.ts";
import type { Report } from "../evidence/report.ts";
import type { Feature } from "../handbook/schema.ts";
import type { Question, QuestionTable } from "../questions/question-table.ts";
import { type Belief, beliefOf } from "./belief.ts";
import { carQuestions, carRows } from "./car-questions.ts";
import { causeRows } from "./cause-answers.ts";
import { heaviestFirst } from "./classes.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { dateAnswersOf, dateRows } from "./date-answers.ts";
import { temper } from "./evidence.ts";
import type { CarQuestion, FeatureQuestion, PlannedQuestions, QuestionPlan } from "./question-plan.ts";
import { likelihoodOfHypotheses, likelihoodOfRows, temperedRows, type VariantRows } from "./question-rows.ts";
import { expectedPurity, purityNow, rowClasses } from "./question-worth.ts";
import { sampleOfRows } from "./row-sample.ts";
import { stateProbability } from "./state-probability.ts";
import { type TableRows, tableRows } from "./table-rows.ts";

/** Effort of saying when a car was built or which trim it is, and the share of owners who do not know. */
const CAR_EFFORT = 1;
const CAR_UNKNOWN = 0.1;
/** A question whose condition is less probable than this is not offered. */
const LEAST_CONDITION = 0.05;

/** A table of up to this many cells (rows × questions) is written out whole; of a larger one, the promising questions. */
const WRITTEN_OUT = 60_000;
const PROMISING = 24;

interface OpenQuestion {
  readonly feature: Feature;
  readonly plan: FeatureQuestion;
  /** Rows by variant, or else rows by hypothesis. */
  readonly byVariant?: VariantRows;
  readonly byHypothesis?: Float64Array;
}

interface PlanInput {
  readonly car: CarDescription;
  readonly goal: Goal;
  readonly reports: readonly Report[];
  /** Questions already put, answered or not: feature ids and "car.built", "car.trim" … */
  readonly excluded?: ReadonlySet<string>;
  /** Write out every open question, however many there are. */
  readonly isWhole?: boolean;
}

/** The table and the plans of its questions. Cost: rows × answers of all open questions. */
export function planQuestions(compiled: CompiledPart, input: PlanInput): PlannedQuestions {
  const isAsBuilt = input.goal === "what-should-it-have";
  const belief = isAsBuilt
    ? asBuiltBelief(compiled, input.car)
    : beliefOf(compiled, input.car, input.reports);
  const rows = tableRows(belief, input.goal);
  const excluded = input.excluded ?? new Set<string>();
  const questions: Question[] = [];
  const plans = new Map<string, QuestionPlan>();
  const add = (plan: QuestionPlan, cost: number, cannotTell: number, likelihood: Float64Array): void => {
    questions.push({ id: plan.id, cost, cannotTell, likelihood, answers: plan.answers.map(({ id }) => id) });
    plans.set(plan.id, plan);
  };
  for (const plan of carQuestions(compiled, input.car, belief.ground.built)) {
    if (excluded.has(plan.id)) continue;
    add(plan, CAR_EFFORT, CAR_UNKNOWN, carLikelihood(belief, input.car, plan, rows));
  }
  const open = isAsBuilt ? [] : openQuestions(belief, input);
  for (const asked of input.isWhole ? open : promising(rows, open)) {
    const { effort, unsure } = asked.feature;
    add(asked.plan, effort, unsure, likelihoodOf(rows, asked));
  }
  const hypotheses = rows.ids.map((id, row) => ({
    id,
    prior: rows.probabilities[row] as number,
    class: rows.classes[row] as string,
  }));
  const table: QuestionTable = { hypotheses, questions, lambda: lambdaOfGoal[input.goal] };
  return { table, plans };
}

/** Only the works' mix: what the car should have does not depend on what it has. */
function asBuiltBelief(compiled: CompiledPart, car: CarDescription): Belief {
  const belief = beliefOf(compiled, car, []);
  const { space } = compiled;
  const probabilities = Float64Array.from(space.ways, (way, h) =>
    way === "works" && belief.ground.isFitted
      ? (belief.ground.mix.average[space.variants[h] as number] as number)
      : 0,
  );
  return { ...belief, probabilities };
}

function carLikelihood(
  belief: Belief,
  car: CarDescription,
  plan: CarQuestion,
  rows: TableRows,
): Float64Array {
  return likelihoodOfHypotheses(rows, carRows(belief, car, plan), plan.answers.length);
}

/** Features not yet told or put whose condition may still hold. "Cannot tell" counts as put. */
function openFeatures(belief: Belief, input: PlanInput): readonly Feature[] {
  const put = new Set([
    ...belief.answered,
    ...(input.excluded ?? []),
    ...input.reports.filter(({ value }) => value.kind === "cannot-tell").map(({ feature }) => feature),
  ]);
  return belief.compiled.part.features.filter((feature) => !put.has(feature.id) && mayApply(belief, feature));
}

function mayApply(belief: Belief, feature: Feature): boolean {
  return Object.entries(feature.when).every(
    ([named, states]) => (stateProbability(belief, named, states) ?? 1) >= LEAST_CONDITION,
  );
}

/** The question a feature makes; undefined where the handbook tells no variant from another by it. */
function featureQuestion(belief: Belief, feature: Feature): OpenQuestion | undefined {
  const { compiled } = belief;
  const { id, kind } = feature;
  if (kind === "date") {
    const answers = dateAnswersOf(compiled, id);
    const byHypothesis = dateRows(belief, id, answers);
    return { feature, plan: { kind, id, feature: id, answers }, byHypothesis };
  }
  const expected = compiled.answers.get(id);
  const cause = compiled.causes.get(id);
  if (!expected || (expected.rowCount < 2 && !cause)) return undefined;
  const byVariant = cause
    ? causeRows(belief, cause, id, expected)
    : temperedRows(expected, temper(compiled, id, belief.answered));
  return { feature, plan: { kind, id, feature: id, answers: expected.answers }, byVariant };
}

function openQuestions(belief: Belief, input: PlanInput): readonly OpenQuestion[] {
  return openFeatures(belief, input).flatMap((feature) => featureQuestion(belief, feature) ?? []);
}

function likelihoodOf(rows: TableRows, asked: OpenQuestion): Float64Array {
  if (asked.byVariant) return likelihoodOfRows(rows, asked.byVariant);
  return likelihoodOfHypotheses(rows, asked.byHypothesis ?? new Float64Array(0), asked.plan.answers.length);
}

/**
 * Of very many questions the ones that tell most for their price, in the handbook's order: the policy looks into a
 * handful at a time, and writing out the rest would cost more than the search. Date marks always stay.
 */
function promising(rows: TableRows, open: readonly OpenQuestion[]): readonly OpenQuestion[] {
  if (open.length * rows.ids.length <= WRITTEN_OUT || open.length <= PROMISING) return open;
  const sample = sampleOfRows(rows);
  const classes = rowClasses(sample);
  const now = purityNow(sample, classes);
  const worth = open.map(({ byVariant, feature }) => {
    if (!byVariant) return Number.POSITIVE_INFINITY;
    const gain = expectedPurity(sample, classes, byVariant) - now;
    return (gain * (1 - feature.unsure)) / feature.effort;
  });
  const kept = new Set(heaviestFirst(worth).slice(0, PROMISING));
  return open.filter((_, index) => kept.has(index));
}
