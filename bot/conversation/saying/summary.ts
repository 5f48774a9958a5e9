/** The state of a case in the terms that scripts read; field names are fixed, blocks say the same to people. */
import { featureById, type Handbook, type Report } from "../../../knowledge/index.ts";
import type { CaseSummary, QuestionBlock } from "../../reply.ts";
import { carInWords } from "../apply-car.ts";
import type { Assessed, NextQuestion } from "../assessed.ts";
import type { Case } from "../case.ts";
import { cautionLines } from "./say-cautions.ts";
import { questionBlock } from "./say-question.ts";
import { sayValue } from "./say-value.ts";
import { sourcesBehind } from "./sources-behind.ts";

/** Ranking entries below this are left out, to keep one line a line. */
const leastShown = 0.001;
const mostRemaining = 5;

export function summaryOf(
  handbook: Handbook,
  kept: Case,
  assessed: Assessed | undefined,
  question: NextQuestion | null,
): CaseSummary {
  const { facts } = kept;
  const block = question === null ? null : questionBlock(handbook, facts, question);
  return {
    case: kept.id,
    part: facts.part,
    goal: facts.goal,
    car: carInWords(handbook.cars, facts.car),
    understood: facts.reports.flatMap((report) => understoodEntry(assessed, report)),
    ranking: (assessed?.identification.ranking ?? []).filter((one) => one.probability >= leastShown),
    verdict: assessed?.identification.verdict ?? null,
    question: block === null ? null : questionEntry(block),
    done: assessed !== undefined && question === null,
    uncertainty: uncertaintyOf(assessed),
    pinned: [],
    cautions: question?.about === "feature" ? cautionLines(question.feature.cautions) : [],
    sources: assessed === undefined ? [] : sourcesBehind(assessed, question),
  };
}

function understoodEntry(assessed: Assessed | undefined, report: Report): CaseSummary["understood"] {
  const { feature, certainty, words, value } = report;
  if (value.kind === "cannot-tell") return [];
  if (value.kind === "state") return [{ feature, state: value.state, certainty, words }];
  const known = assessed === undefined ? undefined : featureById(assessed.part, feature);
  return [{ feature, reading: known === undefined ? words : sayValue(known, value), certainty, words }];
}

function questionEntry(block: QuestionBlock): CaseSummary["question"] {
  const { feature, text, effort } = block;
  return { feature, text, effort, answers: block.answers.map(({ id, label }) => ({ id, label })) };
}

function uncertaintyOf(assessed: Assessed | undefined): CaseSummary["uncertainty"] {
  if (assessed === undefined) return { bits: 0, remaining: [] };
  const { identification } = assessed;
  const remaining = identification.ranking
    .filter((one) => one.probability >= 0.01)
    .slice(0, mostRemaining)
    .map(({ variant, probability }) => ({
      variant,
      probability,
      toldApartBy: identification.toldApartBy.find((one) => one.variant === variant)?.features ?? [],
    }));
  return { bits: identification.entropyBits, remaining };
}
