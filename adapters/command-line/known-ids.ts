/**
 * Whether the ids in a script's answer exist. A person's slip gets a reply in words; a script's slip is a fault in the
 * script, and answering it kindly would hide it.
 */

import type { PressedAnswer } from "../../bot/index.ts";
import { type Feature, type Handbook, notThere } from "../../knowledge/index.ts";
import { closestName } from "../closest-name.ts";

/** "unit:width" answers the question whether a width was meant in the proposed unit. */
const UNIT_PREFIX = "unit:";

/**
 * What is unknown in `answer`, in words fit to be shown, or undefined when all of it exists. `part`: the part kind the case is
 * about, or null while that is open; then a feature of any part kind will do.
 */
export function unknownId(
  handbook: Handbook,
  part: string | null,
  answer: PressedAnswer,
): string | undefined {
  const { feature } = answer;
  const state = "state" in answer ? answer.state : undefined;
  const choices = choicesBesideFeatures(handbook);
  const given = choices.get(feature);
  if (given !== undefined)
    return state === undefined ? undefined : unknown(`state of ${feature}`, state, given);

  const parts = part === null ? handbook.parts : handbook.parts.filter(({ id }) => id === part);
  const features = parts.flatMap((kind) => kind.features);
  const id = feature.startsWith(UNIT_PREFIX) ? feature.slice(UNIT_PREFIX.length) : feature;
  const found = features.filter((one) => one.id === id);
  if (found.length === 0) {
    const known = [...features.map((one) => one.id), ...choices.keys()];
    return unknown(part === null ? "feature" : `feature of ${part}`, feature, known);
  }
  if (state === undefined) return undefined;
  const states = feature === id ? found.flatMap(statesOf) : ["yes", "no"];
  return unknown(`state of ${feature}`, state, states);
}

/** Questions that are not about a feature, and the states they may be answered by. */
function choicesBesideFeatures({ cars, parts }: Handbook): ReadonlyMap<string, readonly string[]> {
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);
  return new Map([
    ["part", ids(parts)],
    ["car.model", ids(cars.models)],
    ["car.trim", ids(cars.trims)],
    ["car.market", ids(cars.markets)],
    ["car.built", []],
  ]);
}

function statesOf(feature: Feature): readonly string[] {
  const states = feature.kind === "states" ? feature.states.map(({ id }) => id) : [];
  return [...states, notThere];
}

function unknown(what: string, typed: string, known: readonly string[]): string | undefined {
  if (known.includes(typed)) return undefined;
  const meant = closestName(typed, [...new Set(known)]);
  return `unknown ${what}: ${JSON.stringify(typed)}${meant === undefined ? "" : `, did you mean "${meant}"`}`;
}
