// A part kind as large as the handbook's schema is meant for: how long a turn takes, from the reports to the verdict
// and the table of the next question. Wall-clock figures are for reporting; a test asks only for the order of size.

import type { Goal } from "../../knowledge/evidence/goal.ts";
import type { Report } from "../../knowledge/evidence/report.ts";
import type { Handbook } from "../../knowledge/handbook/schema.ts";
import { compilePart } from "../../knowledge/identification/compiled-part.ts";
import { identify } from "../../knowledge/identification/identify.ts";
import { planQuestions } from "../../knowledge/identification/plan-questions.ts";
import { chanceFrom } from "../support/random-tables.ts";
import {
  dateFeature,
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
  type WrittenVariant,
} from "../support/small-handbook.ts";
import { measures, sees } from "../support/worked-examples.ts";

const words = ["always", "nearly always", "usually", "often", "sometimes"];

/** `variants` over twenty years, `features` of which one in fifteen is measured and one is a date mark. */
export function largeHandbook(variants: number, features: number): Handbook {
  const chance = chanceFrom(2_000_300);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(chance() * from.length)] as T;
  const measured = Math.floor(features / 15);
  const states = Array.from({ length: features - measured - 1 }, (_, index) => ({
    id: `f${index}`,
    states: ["p", "q", "r", "s"].slice(0, 2 + Math.floor(chance() * 3)),
  }));
  const sizes = Array.from({ length: measured }, (_, index) => `m${index}`);
  const tellsOf = (): WrittenVariant["tells"] => ({
    ...Object.fromEntries(
      states
        .filter(() => chance() < 0.7)
        .map((feature) => [feature.id, { [pick(feature.states)]: pick(words) }]),
    ),
    ...Object.fromEntries(
      sizes
        .filter(() => chance() < 0.7)
        .map((id) => [id, { mean: Math.round(100 + 200 * chance()), spread: 1 + Math.floor(3 * chance()) }]),
    ),
  });
  return smallHandbook({
    features: [
      ...states.map(({ id, states: named }, index) => stateFeature(id, named, { effort: 1 + (index % 8) })),
      ...sizes.map((id) => measurementFeature(id)),
      dateFeature("cast"),
    ],
    variants: Array.from({ length: variants }, (_, index) => {
      const from = 1960 + Math.floor(20 * chance());
      const isCopy = index % 10 === 9;
      return variant(`v${index}`, {
        origin: isCopy ? "reproduction" : "production",
        fitted: isCopy ? [] : [{ from: `${from}`, to: `${from + 2}` }],
        sold: index % 3 === 0 ? [{ from: `${from + 1}`, to: `${from + 12}` }] : [],
        tells: tellsOf(),
      });
    }),
    rest: { groups: [{ id: "mould", coupling: "close", features: ["f0", "f1", "f2"], reason: "one mould" }] },
    cars: { models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from: "1960-01", to: "1981-12" }] },
  });
}

export interface TurnTimes {
  readonly compileMilliseconds: number;
  /** Verdict and table of the next question together, one a turn, after the engine has warmed up. */
  readonly turnMilliseconds: readonly number[];
}

/** Plays the same case of twelve facts over and over; the first round warms up and is not counted. */
export function turnTimes(handbook: Handbook, goal: Goal, rounds: number): TurnTimes {
  const started = performance.now();
  const compiled = compilePart(handbook, "foot");
  const compileMilliseconds = performance.now() - started;
  if (!compiled) throw new Error("the handbook has a part kind named foot");
  const told: Report[] = compiled.part.features
    .filter(({ kind }) => kind !== "date")
    .filter((_, index, all) => index % Math.ceil(all.length / 12) === 0)
    .map((feature) => (feature.kind === "states" ? sees(feature.id, "p") : measures(feature.id, 200)));
  const turnMilliseconds: number[] = [];
  for (let round = 0; round <= rounds; round += 1) {
    for (let count = 0; count <= told.length; count += 1) {
      const asked = { car: {}, goal, reports: told.slice(0, count) };
      const from = performance.now();
      identify(compiled, asked);
      planQuestions(compiled, asked);
      if (round > 0) turnMilliseconds.push(performance.now() - from);
    }
  }
  return { compileMilliseconds, turnMilliseconds };
}
