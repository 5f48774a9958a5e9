// Per part kind: which feature a loose word points to, and which state a word tells apart within its feature.
// These never make a fact alone; they decide between readings, and read short answers to a question just asked.
import type { Feature, PartKind } from "../handbook/schema.ts";
import { glueWords } from "./common-words.ts";
import { type Polarity, polarityOf } from "./polarity.ts";
import { tokenise } from "./tokens.ts";

export interface FeatureWords {
  readonly feature: Feature;
  readonly polarity: Polarity;
  /** Words found in the names of exactly one of its states. */
  readonly tellingWords: ReadonlyMap<string, string>;
}

export interface PartWords {
  readonly part: PartKind;
  readonly features: ReadonlyMap<string, FeatureWords>;
  /** Words of feature names, and the features whose names hold them. */
  readonly cues: ReadonlyMap<string, ReadonlySet<string>>;
  /** Main nouns of feature names ("mark") that speak of one feature of the part and hardly of another. */
  readonly heads: ReadonlyMap<string, string>;
}

export function compilePartWords(part: PartKind): PartWords {
  const cues = new Map<string, Set<string>>();
  for (const feature of part.features) {
    for (const name of [feature.name, ...feature.also]) {
      for (const stem of tellingStems(name)) addTo(cues, stem, feature.id);
    }
  }
  const features = new Map(part.features.map((feature) => [feature.id, featureWords(feature)]));
  return { part, features, cues, heads: mainNouns(part) };
}

function featureWords(feature: Feature): FeatureWords {
  return { feature, polarity: polarityOf(feature), tellingWords: tellingWords(feature) };
}

function tellingWords(feature: Feature): ReadonlyMap<string, string> {
  if (feature.kind !== "states") return new Map();
  const states = new Map<string, Set<string>>();
  for (const state of feature.states) {
    for (const name of [state.name, ...state.also]) {
      for (const stem of tellingStems(name)) addTo(states, stem, state.id);
    }
  }
  const telling = new Map<string, string>();
  for (const [stem, ids] of states) {
    const [only] = ids;
    if (ids.size === 1 && only !== undefined) telling.set(stem, only);
  }
  return telling;
}

/** A last word of at least two of a feature's names that is used more there than in the states of others. */
function mainNouns(part: PartKind): ReadonlyMap<string, string> {
  const uses = new Map<string, Map<string, number>>();
  const inStates = new Map<string, Map<string, number>>();
  for (const feature of part.features) {
    for (const name of [feature.name, ...feature.also]) count(uses, tellingStems(name).at(-1), feature.id);
    for (const name of stateNames(feature)) {
      for (const stem of tellingStems(name)) count(inStates, stem, feature.id);
    }
  }
  const heads = new Map<string, string>();
  for (const [stem, byFeature] of uses) {
    const [entry] = byFeature;
    if (byFeature.size !== 1 || entry === undefined) continue;
    const [feature, times] = entry;
    if (times >= 2 && times > usesOutside(inStates.get(stem), feature)) heads.set(stem, feature);
  }
  return heads;
}

function stateNames(feature: Feature): readonly string[] {
  return feature.kind === "states" ? feature.states.flatMap((state) => [state.name, ...state.also]) : [];
}

function usesOutside(byFeature: ReadonlyMap<string, number> | undefined, feature: string): number {
  return Array.from(byFeature ?? []).reduce((sum, [id, times]) => (id === feature ? sum : sum + times), 0);
}

function tellingStems(name: string): readonly string[] {
  return tokenise(name)
    .filter((token) => !glueWords.has(token.folded))
    .map((token) => token.stem);
}

function addTo(sets: Map<string, Set<string>>, key: string, value: string): void {
  const set = sets.get(key);
  if (set === undefined) sets.set(key, new Set([value]));
  else set.add(value);
}

function count(counts: Map<string, Map<string, number>>, key: string | undefined, within: string): void {
  if (key === undefined) return;
  const inner = counts.get(key) ?? new Map<string, number>();
  inner.set(within, (inner.get(within) ?? 0) + 1);
  counts.set(key, inner);
}
