// Turns in a community that holds a hundred thousand accepted observations, beside the same turns in an empty one; something is
// accepted now and then, and the next answer has it.

import { learntKnowledge } from "../../../bot/community/observations/learnt-knowledge.ts";
import { observationKind } from "../../../bot/community/observations/observations-view.ts";
import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { pick } from "../../support/draws.ts";
import { playTurns, type Talk } from "../../support/long-conversation.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { seenCar, seenId } from "../../support/seen-cars.ts";
import { figuresOfTimes } from "../figures-of-times.ts";
import { timed } from "../percentiles.ts";
import type { Figure, Row } from "../row.ts";

const OBSERVATIONS = 100_000;
const TURNS = 1500;
const WARM_UP = 500;
/** One is accepted before so many turns. */
const BETWEEN = 50;
const START = 31;

function observed(number: number, chance: () => number) {
  const { parts } = demoKnowledge().handbook;
  const part = pick(chance, parts);
  const variants = part.variants.filter(({ origin }) => origin === "production");
  const { id: variant } = pick(chance, variants);
  const month = Math.floor(105 * chance()) + 8;
  const trim = pick(chance, demoKnowledge().handbook.cars.trims).id;
  const observation = seenCar(number, {
    part: part.id,
    variant,
    year: 1976 + Math.floor(month / 12),
    month: (month % 12) + 1,
    grade: pick(chance, ["documented-from-new", "one-owner", "history-unknown"] as const),
    car: { trim },
  });
  const states = part.features.flatMap((feature) => (feature.kind === "states" ? [feature] : []));
  const reports = [pick(chance, states), pick(chance, states)].map(({ id, states: known }) => ({
    feature: id,
    by: "x",
    certainty: 1,
    words: "",
    value: { kind: "state" as const, state: pick(chance, known).id },
  }));
  return { ...observation, saw: { ...observation.saw, reports } };
}

interface Times {
  readonly turns: readonly number[];
  /** Of them those right after something was accepted. */
  readonly after: readonly number[];
  /** Of taking in what was accepted. */
  readonly taking: readonly number[];
}

function times(count: number): Times {
  const view = observationKind.emptyView();
  const chance = chanceFrom(START);
  const accept = (number: number) =>
    observationKind.take(view, seenId(number), undefined, observed(number, chance));
  for (let number = 0; number < count; number += 1) accept(number);
  const turns: number[] = [];
  const after: number[] = [];
  const taking: number[] = [];
  let turn = 0;
  const talk: Talk = {
    knowledge: demoKnowledge(),
    today: demoToday,
    texts: annotatedMessages("development").map(({ text }) => text),
    length: 12,
    chance: chanceFrom(START + 1),
    around(work) {
      const isAfter = count > 0 && turn % BETWEEN === 0 && turn > 0;
      if (isAfter) taking.push(timed(() => accept(count + turn)).milliseconds);
      const { milliseconds, result } = timed(work);
      turn += 1;
      if (turn > WARM_UP) turns.push(milliseconds);
      if (turn > WARM_UP && isAfter) after.push(milliseconds);
      return result;
    },
  };
  const knowledge = {
    ...talk.knowledge,
    compiled: (part: string) => learntKnowledge(talk.knowledge, view).compiled(part),
  };
  playTurns({ ...talk, knowledge }, WARM_UP + TURNS);
  return { turns, after, taking };
}

export const hundredThousandObservations: Row = {
  name: "hundred-thousand-observations",
  about: `turns beside ${OBSERVATIONS} accepted observations, one more before every ${BETWEEN}th, against none`,
  starts: [START],
  measure: () => {
    const empty = times(0);
    const full = times(OBSERVATIONS);
    const p99 = (sorted: readonly number[]) =>
      [...sorted].sort((one, other) => one - other)[Math.floor(0.99 * sorted.length)] ?? 0;
    const ratio = p99(full.turns) / p99(empty.turns);
    const figures: readonly Figure[] = [
      { what: "p99 against the empty store's", value: ratio, unit: "x", budget: { atMost: 2 } },
      { what: "p99 of the empty store", value: p99(empty.turns), unit: "ms" },
      {
        what: "turns right after something was accepted, p99",
        value: p99(full.after),
        unit: "ms",
        remark: "of any part",
      },
      { what: "taking in what was accepted, p99", value: p99(full.taking), unit: "ms" },
    ];
    return [...figuresOfTimes(full.turns, 1000), ...figures];
  },
};
