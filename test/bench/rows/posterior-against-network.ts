// The posterior of a naive table beside a general inference library on the same numbers: bayesjs 0.6.5, a junction tree.

import bayes, { type ICptWithParentsItem, type INetwork } from "bayesjs";
import { posteriorFromTables } from "../../../knowledge/identification/posterior.ts";
import type { Question } from "../../../knowledge/index.ts";
import { indexAt } from "../../support/draws.ts";
import { chanceFrom, randomTableOf } from "../../support/random-tables.ts";
import { percentile, timed } from "../percentiles.ts";
import type { Row } from "../row.ts";

const VARIANTS = 50;
const FEATURES = 30;
const START = 50;
const REPEATS = 2000;
/** Answers after which many variants are still open; after all thirty hardly more than one is. */
const FEW = 4;

export const posteriorAgainstNetwork: Row = {
  name: "posterior-against-network",
  about: `posterior of ${VARIANTS} variants given ${FEATURES} answers, beside bayesjs`,
  starts: [START],
  measure: () => {
    const { network, told, ids, posterior } = sameCase();
    const all = () => posterior(told);
    for (let warm = 0; warm < REPEATS; warm += 1) all();
    const times = Array.from({ length: REPEATS }, () => timed(all).milliseconds);
    const infer = (answers: readonly Told[]) =>
      bayes.inferAll(network, heardIn(answers), { precision: 15 }).part ?? {};
    const theirs = timed(() => infer(told));
    const compare = (exact: Readonly<Record<string, number>>, own: Float64Array) =>
      ids.map((part, variant) => Math.abs((exact[part] ?? Number.NaN) - (own[variant] ?? Number.NaN)));
    const few = told.slice(0, FEW);
    const differences = [...compare(theirs.result, posterior(told)), ...compare(infer(few), posterior(few))];
    const ours = percentile(times, 0.5);
    return [
      { what: "ours, median", value: ours, unit: "ms" },
      { what: "bayesjs, all variants", value: theirs.milliseconds, unit: "ms" },
      {
        what: "times faster",
        value: theirs.milliseconds / ours,
        unit: "x",
        budget: { atLeast: 10_000 },
      },
      {
        what: "largest difference of a probability",
        value: Math.max(...differences),
        unit: "",
        budget: { atMost: 1e-9 },
      },
    ];
  },
};

/** A random table whose every question was answered, in our form and as a network of one part and its features. */
function sameCase() {
  const chance = chanceFrom(START);
  const shape = { hypotheses: VARIANTS, questions: FEATURES, classes: VARIANTS, lambda: 60 };
  const table = randomTableOf(shape, chance);
  const ids = table.hypotheses.map(({ id }) => id);
  const priors = table.hypotheses.map(({ prior }) => prior);
  const truth = indexAt(priors, chance());
  const network: INetwork = {
    part: { id: "part", states: ids, parents: [], cpt: rowOf(ids, priors) },
  };
  const told = table.questions.map((question): Told => {
    const { id, answers, likelihood } = question;
    const row = (h: number) => likelihood.subarray(h * answers.length, (h + 1) * answers.length);
    const cpt = ids.map((part, h) => conditional({ part }, rowOf(answers, row(h))));
    network[id] = { id, states: [...answers], parents: ["part"], cpt };
    return [question, answers[indexAt(row(truth), chance())] ?? ""];
  });
  return { network, told, ids, posterior: (some: readonly Told[]) => posteriorFromTables(priors, some) };
}

type Told = readonly [Question, string];

function heardIn(told: readonly Told[]): Record<string, string> {
  return Object.fromEntries(told.map(([{ id }, answer]) => [id, answer]));
}

function rowOf(states: readonly string[], chances: ArrayLike<number>): Record<string, number> {
  return Object.fromEntries(states.map((state, index) => [state, chances[index] ?? 0]));
}

/** A row of a conditional table in the library's form. */
function conditional(when: Record<string, string>, chances: Record<string, number>): ICptWithParentsItem {
  const row = new Map<string, unknown>([
    ["when", when],
    ["then", chances],
  ]);
  return Object.fromEntries(row) as unknown as ICptWithParentsItem;
}
