// A part kind as large as anybody will ever write down, with invented names that read like words, so that the whole turn
// can be timed on it: the reader of messages, the arithmetic, the next question, the reply.

import type { Handbook } from "../../knowledge/handbook/schema.ts";
import { even, pick } from "./draws.ts";
import { type Chance, chanceFrom } from "./random-tables.ts";
import {
  dateFeature,
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
  type WrittenFeature,
  type WrittenVariant,
} from "./small-handbook.ts";

export interface SyntheticShape {
  readonly variants: number;
  /** One in fifteen is measured, one is a date mark, the rest have two to four states. */
  readonly features: number;
  readonly start: number;
}

const ONSETS = [
  "b",
  "br",
  "d",
  "dr",
  "f",
  "fl",
  "g",
  "gr",
  "k",
  "l",
  "m",
  "n",
  "p",
  "pl",
  "r",
  "s",
  "st",
  "t",
  "tr",
  "v",
];
const VOWELS = ["a", "e", "i", "o", "u", "ai", "ea", "oo"];
const CODAS = [
  "b",
  "ck",
  "d",
  "ft",
  "g",
  "l",
  "ll",
  "m",
  "nd",
  "ng",
  "nt",
  "p",
  "rd",
  "rn",
  "sk",
  "st",
  "t",
  "x",
];
const WORDS = ["always", "nearly always", "usually", "often", "sometimes"];
const ORIGINS = ["production", "production", "production", "service", "reproduction", "other-maker"] as const;

/** Every variant makes a claim about every feature: nothing is left out that would have to be kept or read. */
export function syntheticHandbook({ variants, features, start }: SyntheticShape): Handbook {
  const chance = chanceFrom(start);
  const name = namer(chance);
  const written = Array.from({ length: features }, (_, index) => feature(chance, name, index));
  return smallHandbook({
    features: written,
    variants: Array.from({ length: variants }, (_, index) => syntheticVariant(chance, name, written, index)),
    cars: {
      models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from: "1960-01", to: "1981-12" }],
    },
  });
}

/** Words of two syllables, never the same twice. */
function namer(chance: Chance): () => string {
  const used = new Set<string>();
  return () => {
    for (;;) {
      const word = pick(chance, ONSETS) + pick(chance, VOWELS) + pick(chance, ONSETS) + pick(chance, VOWELS);
      const whole = word + pick(chance, CODAS);
      if (used.has(whole)) continue;
      used.add(whole);
      return whole;
    }
  };
}

function feature(chance: Chance, name: () => string, index: number): WrittenFeature {
  const named = { name: `${name()} ${name()}`, effort: 1 + (index % 8), unsure: 0.2 * chance() };
  if (index === 0) return dateFeature("cast", named);
  if (index % 15 === 0) return measurementFeature(`m${index}`, named);
  const states = Array.from({ length: 2 + Math.floor(3 * chance()) }, (_, state) => ({
    id: `s${state}`,
    name: name(),
  }));
  return stateFeature(`f${index}`, [], { ...named, states });
}

function syntheticVariant(
  chance: Chance,
  name: () => string,
  features: readonly WrittenFeature[],
  index: number,
): WrittenVariant {
  const tells = features.flatMap((one): [string, Record<string, number> | Record<string, string>][] => {
    if (one.kind === "date") return [];
    if (one.kind === "measurement") {
      return [[one.id, { mean: Math.round(even(chance, 100, 300)), spread: even(chance, 1, 4) }]];
    }
    return [[one.id, { [pick(chance, one.states).id]: pick(chance, WORDS) }]];
  });
  const from = 1960 + Math.floor(20 * chance());
  const origin = pick(chance, ORIGINS);
  const period = { from: `${from}`, to: `${from + 2}` };
  return variant(`v${index}`, {
    name: `${name()} ${name()}`,
    origin,
    ...(origin === "production" ? { fitted: [period] } : { sold: [period] }),
    tells: Object.fromEntries(tells) as WrittenVariant["tells"],
  });
}

/** What its members write: one to three features with a state or a size, a build date now and then, small talk. */
export function syntheticMessage(handbook: Handbook, chance: Chance): string {
  const [part] = handbook.parts;
  if (part === undefined || chance() < 0.05)
    return "no idea, I will have a look on saturday when the light is better";
  const told = Array.from({ length: 1 + Math.floor(3 * chance()) }, () => {
    const feature = pick(chance, part.features);
    if (feature.kind === "states") return `the ${feature.name} is ${pick(chance, feature.states).name}`;
    const size = Math.round(even(chance, 100, 300));
    return feature.kind === "measurement" ? `${feature.name} ${size} mm` : `${feature.name} says 4/72`;
  });
  return [...told, ...(chance() < 0.1 ? ["the car was built in May 1971"] : [])].join(", ");
}
