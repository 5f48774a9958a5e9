// Policies played side by side on tables too large for a proven optimum: the same true hypothesis and the same
// luck of the answers for each policy (common random numbers), so that small differences show early.

import type { QuestionTable } from "../../knowledge/questions/question-table.ts";
import type { Policy } from "../support/policy-objective.ts";
import { afterAnswer, heaviestClass, withoutQuestion } from "../support/policy-objective.ts";
import type { Chance } from "../support/random-tables.ts";

export interface PlayedPolicy {
  readonly meanEffort: number;
  /** Mean belief against the verdict at the end: the same in expectation as counting wrong verdicts, less noisy. */
  readonly wrongShare: number;
  /** Mean effort + λ × wrongShare. */
  readonly objective: number;
  readonly questionsAsked: number;
  /** Wall-clock milliseconds of each decision; for reporting only. */
  readonly decisionMilliseconds: readonly number[];
}

interface Draw {
  readonly truth: number;
  /** By question of the table: luck of being told anything, luck of the answer. */
  readonly luck: ReadonlyMap<string, readonly [number, number]>;
}

function drawIndex(shares: readonly number[], luck: number): number {
  let left = luck * shares.reduce((sum, share) => sum + share, 0);
  for (const [index, share] of shares.entries()) {
    left -= share;
    if (left < 0) return index;
  }
  return shares.length - 1;
}

function drawCase(table: QuestionTable, chance: Chance): Draw {
  const truth = drawIndex(
    table.hypotheses.map((hypothesis) => hypothesis.prior),
    chance(),
  );
  return { truth, luck: new Map(table.questions.map(({ id }) => [id, [chance(), chance()]])) };
}

function play(table: QuestionTable, draw: Draw, policy: Policy) {
  let here = table;
  let effort = 0;
  const milliseconds: number[] = [];
  for (;;) {
    const from = performance.now();
    const asked = policy(here);
    milliseconds.push(performance.now() - from);
    const question = here.questions.find(({ id }) => id === asked);
    if (question === undefined) break;
    effort += question.cost;
    const [told, answerLuck] = draw.luck.get(question.id) ?? [1, 0];
    const answers = question.answers.length;
    const row = question.likelihood.subarray(draw.truth * answers, (draw.truth + 1) * answers);
    const isTold = told >= question.cannotTell;
    here = isTold
      ? afterAnswer(here, question, drawIndex([...row], answerLuck)).table
      : withoutQuestion(here, question.id);
  }
  return { effort, wrong: 1 - heaviestClass(here).share, milliseconds };
}

/** Each policy over the same `cases` cases of one table. */
export function playPolicies(
  table: QuestionTable,
  policies: Readonly<Record<string, Policy>>,
  cases: number,
  chance: Chance,
): Record<string, PlayedPolicy> {
  const draws = Array.from({ length: cases }, () => drawCase(table, chance));
  const results = Object.entries(policies).map(([name, policy]): [string, PlayedPolicy] => {
    const played = draws.map((draw) => play(table, draw, policy));
    const meanEffort = played.reduce((sum, one) => sum + one.effort, 0) / cases;
    const wrongShare = played.reduce((sum, one) => sum + one.wrong, 0) / cases;
    const decisionMilliseconds = played.flatMap((one) => one.milliseconds);
    const questionsAsked = decisionMilliseconds.length / cases - 1;
    return [
      name,
      {
        meanEffort,
        wrongShare,
        objective: meanEffort + table.lambda * wrongShare,
        questionsAsked,
        decisionMilliseconds,
      },
    ];
  });
  return Object.fromEntries(results);
}
