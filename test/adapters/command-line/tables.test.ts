import { expect, test } from "vitest";
import type { ModelTables } from "../../../knowledge/index.ts";
import { commandLine, run, shrike } from "../program.ts";

async function model(...words: readonly string[]): Promise<ModelTables> {
  const given = ["model", "--handbook", shrike, "--part", "rear-spoiler", ...words, "--json"];
  const { status, out, err } = await run(commandLine, given);
  expect({ status, err }).toEqual({ status: 0, err: "" });
  return JSON.parse(out);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

test("the printed tables are probabilities: priors and every row of answers sum to one", async () => {
  const { hypotheses, questions, lambda } = await model();
  expect(lambda).toBeGreaterThan(0);
  expect(sum(hypotheses.map(({ prior }) => prior))).toBeCloseTo(1, 9);
  expect(questions.length).toBeGreaterThan(0);
  for (const { likelihood, answers, cannotTell, cost } of questions) {
    expect(likelihood).toHaveLength(hypotheses.length);
    for (const row of likelihood) {
      expect(row).toHaveLength(answers.length);
      expect(sum(row)).toBeCloseTo(1, 9);
    }
    expect(cannotTell).toBeGreaterThanOrEqual(0);
    expect(cannotTell).toBeLessThan(1);
    expect(cost).toBeGreaterThan(0);
  }
});

test("a goal changes the classes, a car changes the priors", async () => {
  const plain = await model();
  const genuine = await model("--goal", "genuine");
  expect(genuine.hypotheses.some((hypothesis) => hypothesis.class === "genuine")).toBe(true);
  const early = await model("--car", "built 1978-05");
  expect(early.hypotheses.map(({ prior }) => prior)).not.toEqual(plain.hypotheses.map(({ prior }) => prior));
});

test("a car that is not understood and a part kind that does not exist are refused", async () => {
  const words = ["model", "--handbook", shrike, "--part"];
  const car = await run(commandLine, [...words, "rear-spoiler", "--car", "a nice one"]);
  expect(car).toMatchObject({ status: 2, out: "" });
  expect(car.err).toMatch(/^--car: nothing of a car was understood[^\n]*\n$/u);
  const part = await run(commandLine, [...words, "rear-spolier"]);
  expect(part).toMatchObject({
    status: 2,
    out: "",
    err: 'unknown part kind: "rear-spolier", did you mean rear-spoiler\n',
  });
});

const simulate = ["simulate", "--handbook", shrike, "--part", "rear-spoiler", "--n", "60", "--json"];

test("the same seed plays the same cases to the byte, another seed others", async () => {
  const once = await run(commandLine, [...simulate, "--seed", "7"]);
  const again = await run(commandLine, [...simulate, "--seed", "7"]);
  const other = await run(commandLine, [...simulate, "--seed", "8"]);
  expect(once.status).toBe(0);
  expect(again.out).toBe(once.out);
  expect(other.out).not.toBe(once.out);
});

test("on the same owners the bot's questions cost less than the form's, errors counted", async () => {
  const { out } = await run(commandLine, [...simulate, "--seed", "3"]);
  const { bot, form, n } = JSON.parse(out);
  expect(n).toBe(60);
  expect(bot.objective).toBeLessThan(form.objective);
  expect(bot.meanEffort).toBeLessThan(form.meanEffort);
  expect(sum(bot.calibration.map(({ cases }: { cases: number }) => cases))).toBe(60);
});

test("without --json the same numbers stand in a table", async () => {
  const { out } = await run(commandLine, simulate.slice(0, -1));
  expect(out).toMatch(/^rear-spoiler, which-variant: 60 cases, seed 1$/mu);
  expect(out).toMatch(/^mean effort, looks +\d+\.\d{4} +\d+\.\d{4}$/mu);
});
