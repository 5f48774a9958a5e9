/**
 * What a way of asking reached over many cases: its price, how often it was right, and whether its numbers mean what they
 * say. Brier (1950), "Verification of forecasts expressed in terms of probability", Monthly Weather Review 78:1, eq. 2.
 */
import type { PlayedCase } from "./ways-of-asking.ts";

export interface CalibrationBin {
  readonly from: number;
  readonly to: number;
  readonly cases: number;
  /** Mean probability of the first class; null in an empty bin. */
  readonly said: number | null;
  /** Share in which the first class was true; null in an empty bin. */
  readonly was: number | null;
}

export interface Scores {
  readonly meanEffort: number;
  readonly meanQuestions: number;
  /** Share of cases whose first class was the true one. */
  readonly topOneAccuracy: number;
  /** Share of cases in which a verdict was given (first class at one half or more) and was wrong. */
  readonly wrongVerdictRate: number;
  /** Share of cases in which a verdict was given. */
  readonly verdictRate: number;
  /** Mean effort + λ · share of cases whose first class is wrong: what the policy minimises. */
  readonly objective: number;
  /** Mean over cases of Σ (p − truth)² over the classes; 0 perfect, 2 worst. */
  readonly brier: number;
  /** Σ over bins |Σ (p − hit)| / n, for the first class. */
  readonly expectedCalibrationError: number;
  readonly calibration: readonly CalibrationBin[];
}

const BINS = 10;
const VERDICT_FROM = 0.5;

/** The scores of at least one played case. Ties for the first class go to the one named first in the table. */
export function scoresOf(played: readonly PlayedCase[], lambda: number): Scores {
  const outcomes = played.map(outcomeOf);
  const mean = (value: (outcome: Outcome) => number) =>
    outcomes.reduce((sum, outcome) => sum + value(outcome), 0) / outcomes.length;
  const meanEffort = mean(({ effort }) => effort);
  const topOneAccuracy = mean(({ isRight }) => Number(isRight));
  const calibration = binsOf(outcomes);
  return {
    meanEffort,
    meanQuestions: mean(({ questions }) => questions),
    topOneAccuracy,
    wrongVerdictRate: mean(({ surest, isRight }) => Number(surest >= VERDICT_FROM && !isRight)),
    verdictRate: mean(({ surest }) => Number(surest >= VERDICT_FROM)),
    objective: meanEffort + lambda * (1 - topOneAccuracy),
    brier: mean(({ brier }) => brier),
    expectedCalibrationError: calibration.reduce(
      (sum, bin) => sum + (Math.abs((bin.said ?? 0) - (bin.was ?? 0)) * bin.cases) / outcomes.length,
      0,
    ),
    calibration,
  };
}

interface Outcome {
  readonly effort: number;
  readonly questions: number;
  readonly surest: number;
  readonly isRight: boolean;
  readonly brier: number;
}

function outcomeOf(played: PlayedCase): Outcome {
  let first = "";
  let surest = -1;
  let brier = 0;
  for (const [name, probability] of played.classes) {
    brier += (probability - Number(name === played.trueClass)) ** 2;
    if (probability > surest) {
      surest = probability;
      first = name;
    }
  }
  const { effort, questions } = played;
  return { effort, questions, surest, isRight: first === played.trueClass, brier };
}

function binsOf(outcomes: readonly Outcome[]): readonly CalibrationBin[] {
  return Array.from({ length: BINS }, (_, index) => {
    const inside = outcomes.filter(({ surest }) => Math.min(BINS - 1, Math.floor(surest * BINS)) === index);
    const share = (value: (outcome: Outcome) => number) =>
      inside.length === 0 ? null : inside.reduce((sum, outcome) => sum + value(outcome), 0) / inside.length;
    return {
      from: index / BINS,
      to: (index + 1) / BINS,
      cases: inside.length,
      said: share(({ surest }) => surest),
      was: share(({ isRight }) => Number(isRight)),
    };
  });
}
