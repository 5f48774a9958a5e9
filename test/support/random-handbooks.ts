/** Random small handbooks of every kind of claim, and random reports on them, repeatable from a number. */
import type { Report } from "../../knowledge/evidence/report.ts";
import type { Handbook } from "../../knowledge/handbook/schema.ts";
import type { Chance } from "./random-tables.ts";
import {
  smallHandbook,
  stateFeature,
  variant,
  type WrittenFeature,
  type WrittenVariant,
} from "./small-handbook.ts";
import { sees } from "./worked-examples.ts";

const words = ["always", "nearly always", "usually", "often", "about half", "sometimes", "rarely", "never"];
const origins = ["production", "production", "production", "service", "reproduction", "other-maker"] as const;

function pick<T>(chance: Chance, from: readonly T[]): T {
  return from[Math.floor(chance() * from.length)] as T;
}

function frequency(chance: Chance): string {
  if (chance() < 0.7) return pick(chance, words);
  const of = 1 + Math.floor(chance() * 20);
  return `${Math.floor(chance() * (of + 1))} of ${of}`;
}

function claim(chance: Chance, states: readonly string[]): Record<string, string> {
  const named = states.filter(() => chance() < 0.6);
  return Object.fromEntries(named.map((state) => [state, frequency(chance)]));
}

export interface RandomHandbook {
  readonly handbook: Handbook;
  readonly features: readonly string[];
  readonly stateOf: (feature: string) => readonly string[];
}

/** State features alone, some of them conditional; `isCaused`: the first three are governed by a hidden cause. */
export function randomHandbook(chance: Chance, isCaused: boolean): RandomHandbook {
  const features = Array.from({ length: 4 }, (_, index): WrittenFeature => {
    const states = ["p", "q", "r", "s"].slice(0, 2 + Math.floor(chance() * 3));
    const conditional = index === 3 && chance() < 0.5 ? { none: "there is none" } : {};
    return stateFeature(`f${index}`, states, { misread: 0.2 * chance(), ...conditional });
  });
  const statesOf = (feature: WrittenFeature): readonly string[] =>
    feature.kind === "states" ? feature.states.map(({ id }) => id) : [];
  const variants = Array.from({ length: 3 + Math.floor(chance() * 3) }, (_, index): WrittenVariant => {
    const origin = index === 0 ? "production" : pick(chance, origins);
    const from = 1977 + Math.floor(chance() * 4);
    const tells = Object.fromEntries(
      features
        .map((feature) => {
          const lacks = feature.none !== undefined && chance() < 0.4;
          return [feature.id, lacks ? { "not-there": "always" } : claim(chance, statesOf(feature))] as const;
        })
        .filter(([, row]) => Object.keys(row).length > 0),
    );
    const fitted = origin === "production" ? [{ from: `${from}-01`, to: `${from + 1}-06` }] : [];
    const sold = chance() < 0.5 ? [{ from: "1980", to: "1990" }] : [];
    return variant(`v${index}`, { origin, fitted, sold, tells });
  });
  const causes = isCaused ? [randomCause(chance, features.slice(0, 3), variants, statesOf)] : [];
  const handbook = smallHandbook({ features, variants, rest: { causes } });
  return {
    handbook,
    features: features.map(({ id }) => id),
    stateOf: (id) => statesOf(features.find((feature) => feature.id === id) ?? stateFeature("none", [])),
  };
}

function randomCause(
  chance: Chance,
  features: readonly WrittenFeature[],
  variants: readonly WrittenVariant[],
  statesOf: (feature: WrittenFeature) => readonly string[],
) {
  const states = ["old-tool", "new-tool"];
  return {
    id: "tool",
    name: "which tool",
    states,
    variants: Object.fromEntries(variants.map(({ id }) => [id, { "old-tool": frequency(chance) }])),
    features: Object.fromEntries(
      features.map((feature) => [
        feature.id,
        Object.fromEntries(states.map((state) => [state, claim(chance, statesOf(feature))])),
      ]),
    ),
  };
}

/** One firm, fair or doubtful report on about three of four features; `people` may speak about the first. */
export function randomReports(chance: Chance, book: RandomHandbook, people: number): readonly Report[] {
  return book.features.flatMap((feature, index) =>
    Array.from({ length: index === 0 ? people : 1 }, (_, person) =>
      sees(feature, pick(chance, book.stateOf(feature)), {
        by: `person ${person}`,
        certainty: pick(chance, [1, 0.75, 0.5]),
      }),
    ).filter(() => chance() < 0.75),
  );
}
