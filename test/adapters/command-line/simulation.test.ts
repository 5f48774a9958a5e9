import { expect, test } from "vitest";
import { chanceFrom } from "../../../adapters/command-line/simulation/chance.ts";
import { type DrawnCase, drawCase } from "../../../adapters/command-line/simulation/drawn-case.ts";
import { scoresOf } from "../../../adapters/command-line/simulation/scores.ts";
import { byForm, byWorth, player } from "../../../adapters/command-line/simulation/ways-of-asking.ts";
import type { QuestionTable } from "../../../knowledge/index.ts";

function tableOf(
  priors: readonly number[],
  questions: readonly {
    readonly id: string;
    readonly cost: number;
    readonly rows: readonly number[];
    readonly cannotTell?: number;
  }[],
): QuestionTable {
  return {
    hypotheses: priors.map((prior, index) => ({ id: `h${index}`, prior, class: `c${index}` })),
    questions: questions.map(({ id, cost, rows, cannotTell = 0 }) => ({
      id,
      cost,
      answers: ["yes", "no"],
      likelihood: Float64Array.from(rows.flatMap((yes) => [yes, 1 - yes])),
      cannotTell,
    })),
    lambda: 60,
  };
}

const idle = { id: "idle", cost: 1, rows: [0.5, 0.5] };
const telling = { id: "telling", cost: 2, rows: [1, 0] };

function drawn(trueClass: string, answers: Record<string, number | null>): DrawnCase {
  return { trueClass, answers: new Map(Object.entries(answers)) };
}

test("the bot asks only what tells something; the form asks in its order until 95 %", () => {
  const table = tableOf([0.5, 0.5], [idle, telling]);
  const owner = drawn("c0", { idle: 1, telling: 0 });
  expect(player(table, byWorth)(owner)).toMatchObject({ effort: 2, questions: 1 });
  expect(player(table, byForm)(owner)).toMatchObject({ effort: 3, questions: 2 });
});

test("an answer moves the classes by Bayes' rule", () => {
  // Worked by hand: prior 1/3 and 2/3, P(yes) .9 and .3: (.3) / (.3 + .2) = .6.
  const table = tableOf([1 / 3, 2 / 3], [{ id: "q", cost: 1, rows: [0.9, 0.3] }]);
  const { classes } = player(table, byForm)(drawn("c0", { q: 0 }));
  expect(classes.get("c0")).toBeCloseTo(0.6, 12);
  expect(classes.get("c1")).toBeCloseTo(0.4, 12);
});

test("cannot tell costs its effort, moves nothing and is not asked again", () => {
  const table = tableOf([0.5, 0.5], [{ ...telling, cannotTell: 0.3 }]);
  const played = player(table, byForm)(drawn("c0", { telling: null }));
  expect(played).toMatchObject({ effort: 2, questions: 1 });
  expect(played.classes.get("c0")).toBe(0.5);
});

test("owners are drawn as often as the table says", () => {
  const table = tableOf([0.2, 0.8], [{ id: "q", cost: 1, rows: [0.9, 0.1], cannotTell: 0.25 }]);
  const chance = chanceFrom(41);
  const owners = Array.from({ length: 20_000 }, () => drawCase(table, chance));
  const share = (counts: (owner: DrawnCase) => boolean, among = owners) =>
    among.filter(counts).length / among.length;
  // Deviations of these shares are below .004: five of them.
  expect(Math.abs(share(({ trueClass }) => trueClass === "c0") - 0.2)).toBeLessThan(0.02);
  expect(Math.abs(share(({ answers }) => answers.get("q") === null) - 0.25)).toBeLessThan(0.02);
  const told = owners.filter(({ trueClass, answers }) => trueClass === "c1" && answers.get("q") !== null);
  expect(Math.abs(share(({ answers }) => answers.get("q") === 0, told) - 0.1)).toBeLessThan(0.02);
});

test("Brier's rain forecasts score his 0.19", () => {
  // Brier (1950), Monthly Weather Review 78:1, Table 1, from memory: rain on the second, third and fourth occasion.
  const rain = [0.7, 0.9, 0.8, 0.4, 0.2, 0, 0, 0, 0, 0.1];
  const played = rain.map((probability, index) => ({
    effort: 0,
    questions: 0,
    trueClass: index >= 1 && index <= 3 ? "rain" : "dry",
    classes: new Map([
      ["rain", probability],
      ["dry", 1 - probability],
    ]),
  }));
  expect(scoresOf(played, 60).brier).toBeCloseTo(0.19, 12);
});

test("a wrong first class below one half is no wrong verdict", () => {
  const classes = new Map([
    ["a", 0.4],
    ["b", 0.35],
    ["c", 0.25],
  ]);
  const scores = scoresOf([{ effort: 3, questions: 2, trueClass: "b", classes }], 60);
  expect(scores).toMatchObject({
    topOneAccuracy: 0,
    wrongVerdictRate: 0,
    verdictRate: 0,
    meanEffort: 3,
    meanQuestions: 2,
    objective: 63,
  });
});

test("calibration bins hold every case once, and a bin that says what was has no error", () => {
  const classes = new Map([
    ["a", 0.75],
    ["b", 0.25],
  ]);
  const played = ["a", "a", "a", "b"].map((trueClass) => ({ effort: 1, questions: 1, trueClass, classes }));
  const scores = scoresOf(played, 60);
  expect(scores.expectedCalibrationError).toBeCloseTo(0, 12);
  expect(scores.calibration.filter(({ cases }) => cases > 0)).toEqual([
    { from: 0.7, to: 0.8, cases: 4, said: 0.75, was: 0.75 },
  ]);
});
