// What the bot asks of an owner beside a printed form in the handbook's order, on the same invented owners of every demo
// part kind: how much effort, and how often the answer is wrong.

import { drawCase } from "../../../adapters/command-line/simulation/drawn-case.ts";
import { questionTableOf } from "../../../adapters/command-line/simulation/question-table-of.ts";
import { type Scores, scoresOf } from "../../../adapters/command-line/simulation/scores.ts";
import { byForm, byWorth, player } from "../../../adapters/command-line/simulation/ways-of-asking.ts";
import { type Goal, modelTables, type QuestionTable } from "../../../knowledge/index.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { mean } from "../percentiles.ts";
import type { Figure, Row } from "../row.ts";

const OWNERS = 400;
const START = 1;
/** How many times dearer an error is made for the bot, one after the other, until it errs no more often than the form. */
const DEARER = [1, 2, 4, 8, 16, 32];
const GOALS = ["which-variant", "right-for-car"] as const;

export const policyAgainstForm: Row = {
  name: "policy-against-form",
  about: `effort at no more errors than a form until 95 %, ${OWNERS} owners of each demo part kind`,
  starts: [START],
  measure: () => GOALS.flatMap(figuresOf),
};

function figuresOf(goal: Goal): readonly Figure[] {
  const plain = comparedAt(goal, 1);
  let careful = plain;
  for (const times of DEARER) {
    careful = times === 1 ? plain : comparedAt(goal, times);
    if (careful.wrong <= careful.formWrong) break;
  }
  return [
    {
      what: `${goal}: effort over the form's, at no more errors`,
      value: careful.effort,
      unit: "x",
      budget: { atMost: 0.6 },
      remark: `λ times ${careful.times}, worst ${careful.worst}`,
    },
    {
      what: `${goal}: wrong more often than the form, same`,
      value: 100 * (careful.wrong - careful.formWrong),
      unit: "%",
      budget: { atMost: 0 },
    },
    {
      what: `${goal}: effort over the form's, as it is set`,
      value: plain.effort,
      unit: "x",
      remark: `worst ${plain.worst}`,
    },
    { what: `${goal}: wrong, the bot, as it is set`, value: 100 * plain.wrong, unit: "%" },
    { what: `${goal}: wrong, the form`, value: 100 * plain.formWrong, unit: "%" },
    {
      what: `${goal}: effort + λ·wrong over the form's, as it is set`,
      value: plain.objective,
      unit: "x",
      budget: { atMost: 1 },
    },
  ];
}

/** Both ways on every part kind, the price of a wrong verdict multiplied for the bot's choice alone. */
function comparedAt(goal: Goal, times: number) {
  const { handbook, compiled } = demoKnowledge();
  const compared = handbook.parts.flatMap(({ id }) => {
    const part = compiled(id);
    return part === undefined
      ? []
      : [{ id, ...bothWays(questionTableOf(modelTables(part, {}, goal)), times) }];
  });
  const over = (value: (scores: Scores) => number) =>
    mean(compared.map(({ bot }) => value(bot))) / mean(compared.map(({ form }) => value(form)));
  const worst = compared.reduce((one, other) => (ratio(other) > ratio(one) ? other : one));
  return {
    times,
    effort: over(({ meanEffort }) => meanEffort),
    objective: over(({ objective }) => objective),
    worst: `${worst.id} ${ratio(worst).toFixed(2)}`,
    wrong: mean(compared.map(({ bot }) => wrongShare(bot))),
    formWrong: mean(compared.map(({ form }) => wrongShare(form))),
  };
}

function bothWays(table: QuestionTable, times: number): { readonly bot: Scores; readonly form: Scores } {
  const chance = chanceFrom(START);
  const drawn = Array.from({ length: OWNERS }, () => drawCase(table, chance));
  const careful = { ...table, lambda: table.lambda * times };
  return {
    bot: scoresOf(drawn.map(player(careful, byWorth)), table.lambda),
    form: scoresOf(drawn.map(player(table, byForm)), table.lambda),
  };
}

function ratio({ bot, form }: { readonly bot: Scores; readonly form: Scores }): number {
  return bot.meanEffort / form.meanEffort;
}

/** Mean belief against the verdict: the tables being true, the same in expectation as counting errors, and less noisy. */
function wrongShare({ calibration }: Scores): number {
  const cases = calibration.reduce((sum, bin) => sum + bin.cases, 0);
  return 1 - calibration.reduce((sum, bin) => sum + bin.cases * (bin.said ?? 0), 0) / cases;
}
