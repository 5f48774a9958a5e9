// What the bot asks of an owner beside a printed form in the handbook's order, on the same invented owners of every demo
// part kind: how much effort, and how often the answer is wrong.

import { drawCase } from "../../../adapters/command-line/simulation/drawn-case.ts";
import { questionTableOf } from "../../../adapters/command-line/simulation/question-table-of.ts";
import { type Scores, scoresOf } from "../../../adapters/command-line/simulation/scores.ts";
import { byForm, byWorth, player } from "../../../adapters/command-line/simulation/ways-of-asking.ts";
import { type Goal, modelTables, type QuestionTable } from "../../../knowledge/index.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import type { Figure, Row } from "../row.ts";

const OWNERS = 1000;
const START = 1;
const GOALS = ["which-variant", "right-for-car"] as const;

export const policyAgainstForm: Row = {
  name: "policy-against-form",
  about: `${OWNERS} owners of each demo part kind, asked by the bot and by a form until 95 %`,
  starts: [START],
  measure: () => GOALS.flatMap(figuresOf),
};

function figuresOf(goal: Goal): readonly Figure[] {
  const { handbook, compiled } = demoKnowledge();
  const compared = handbook.parts.flatMap(({ id }) => {
    const part = compiled(id);
    return part === undefined ? [] : [{ id, ...bothWays(questionTableOf(modelTables(part, {}, goal))) }];
  });
  const mean = (value: (one: (typeof compared)[number]) => number) =>
    compared.reduce((sum, one) => sum + value(one), 0) / compared.length;
  const effort = mean(({ bot }) => bot.meanEffort) / mean(({ form }) => form.meanEffort);
  const worst = compared.reduce((one, other) => (ratio(other) > ratio(one) ? other : one));
  const [wrong, formWrong] = [mean(({ bot }) => error(bot)), mean(({ form }) => error(form))];
  return [
    { what: `${goal}: effort over the form's`, value: effort, unit: "x", budget: { atMost: 0.6 } },
    { what: `${goal}: the same, worst part kind`, value: ratio(worst), unit: "x", remark: worst.id },
    {
      what: `${goal}: wrong more often than the form`,
      value: 100 * (wrong - formWrong),
      unit: "%",
      budget: { atMost: 0 },
      remark: `${(100 * wrong).toFixed(2)} % and ${(100 * formWrong).toFixed(2)} %`,
    },
  ];
}

function bothWays(table: QuestionTable): { readonly bot: Scores; readonly form: Scores } {
  const chance = chanceFrom(START);
  const drawn = Array.from({ length: OWNERS }, () => drawCase(table, chance));
  const play = (way: typeof byForm) => scoresOf(drawn.map(player(table, way)), table.lambda);
  return { bot: play(byWorth), form: play(byForm) };
}

function ratio({ bot, form }: { readonly bot: Scores; readonly form: Scores }): number {
  return bot.meanEffort / form.meanEffort;
}

function error({ topOneAccuracy }: Scores): number {
  return 1 - topOneAccuracy;
}
