/**
 * `witness-mark simulate`: invented owners, drawn from a part kind's own tables, are asked twice: by the bot, and by a form that asks
 * everything in the handbook's order until one class stands at 95 %. It shows what the questions are worth if the tables are true.
 */
import { readOptions } from "./options.ts";
import { openPartTables, tableOptions } from "./part-tables.ts";
import { chanceFrom } from "./simulation/chance.ts";
import { drawCase } from "./simulation/drawn-case.ts";
import { questionTableOf } from "./simulation/question-table-of.ts";
import { type Scores, scoresOf } from "./simulation/scores.ts";
import { byForm, byWorth, player } from "./simulation/ways-of-asking.ts";
import { wholeNumber } from "./whole-number.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { json, n, seed, ...options } = readOptions("simulate", written, {
    ...tableOptions,
    n: "text",
    seed: "text",
  });
  const cases = wholeNumber("simulate", "n", n, { from: 1, to: 100_000, otherwise: 1000 });
  const start = wholeNumber("simulate", "seed", seed, { from: 0, to: Number.MAX_SAFE_INTEGER, otherwise: 1 });
  const { part, goal, tables } = await openPartTables("simulate", options);

  const table = questionTableOf(tables);
  const chance = chanceFrom(start);
  const drawn = Array.from({ length: cases }, () => drawCase(table, chance));
  const bot = scoresOf(drawn.map(player(table, byWorth)), table.lambda);
  const form = scoresOf(drawn.map(player(table, byForm)), table.lambda);
  const setting = { part, goal, n: cases, seed: start, lambda: table.lambda };
  process.stdout.write(
    json ? `${JSON.stringify({ ...setting, bot, form })}\n` : `${page(setting, bot, form).join("\n")}\n`,
  );
}

interface Setting {
  readonly part: string;
  readonly goal: string;
  readonly n: number;
  readonly seed: number;
  readonly lambda: number;
}

function page(setting: Setting, bot: Scores, form: Scores): readonly string[] {
  const row = (name: string, value: (scores: Scores) => number) =>
    `${name.padEnd(28)}${value(bot).toFixed(4).padStart(9)}${value(form).toFixed(4).padStart(9)}`;
  return [
    `${setting.part}, ${setting.goal}: ${setting.n} cases, seed ${setting.seed}`,
    "",
    `${" ".repeat(28)}${"bot".padStart(9)}${"form".padStart(9)}`,
    row("mean effort, looks", ({ meanEffort }) => meanEffort),
    row("mean questions", ({ meanQuestions }) => meanQuestions),
    row("first class right", ({ topOneAccuracy }) => topOneAccuracy),
    row("verdict given", ({ verdictRate }) => verdictRate),
    row("verdict given and wrong", ({ wrongVerdictRate }) => wrongVerdictRate),
    row(`effort + ${setting.lambda} x wrong`, ({ objective }) => objective),
    row("Brier score", ({ brier }) => brier),
    row("calibration error", ({ expectedCalibrationError }) => expectedCalibrationError),
    "",
    "said by the bot   cases   mean said   was so",
    ...bot.calibration.flatMap(({ from, to, cases, said, was }) =>
      said === null || was === null
        ? []
        : `${from.toFixed(1)} to ${to.toFixed(1)}      ${String(cases).padStart(8)}${said.toFixed(3).padStart(12)}${was.toFixed(3).padStart(9)}`,
    ),
  ];
}
