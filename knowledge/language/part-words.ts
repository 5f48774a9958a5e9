// Per part kind: which feature a loose word points to, and which state a word tells apart within its feature.
// These never make a fact alone; they decide between readings, and read short answers to a question just asked.
import type { Feature, PartKind, StateFeature } from "../handbook/schema.ts";
import { isGeneralWord } from "./common-words.ts";
import { tellingStems } from "./name-stems.ts";
import { type Polarity, polarityOf } from "./polarity.ts";
import { tokenise } from "./tokens.ts";

export interface FeatureWords {
  readonly feature: Feature;
  readonly polarity: Polarity;
  /** Words that speak for one of its states. */
  readonly tellingWords: ReadonlyMap<string, string>;
  /** Those of them that are all a name has to tell ("round" of "round tips"). */
  readonly soleWords: ReadonlySet<string>;
  /** Those of them that several names hold, or that are a whole name. */
  readonly often: ReadonlySet<string>;
}

export interface PartWords {
  readonly part: PartKind;
  readonly features: ReadonlyMap<string, FeatureWords>;
  /** Words of the part's own names as written: "wheel" of "steering wheel", not "wheels". */
  readonly nameWords: ReadonlySet<string>;
  /** Last words of its names: "wheel" of "steering wheel", but not the "wing" of "wing mirror". */
  readonly nameHeads: ReadonlySet<string>;
  /** All words that tell a state of any of its features. */
  readonly stateWords: ReadonlySet<string>;
  /** Words of feature names, and the features whose names hold them. */
  readonly cues: ReadonlyMap<string, ReadonlySet<string>>;
  /** The one feature whose states a word is used for. */
  readonly owners: ReadonlyMap<string, string>;
  /** Words that tell one state of one feature and stand nowhere else in the part's words. */
  readonly distinctive: ReadonlyMap<string, { readonly feature: string; readonly state: string }>;
  /** Main nouns of feature names ("mark") that speak of one feature of the part and hardly of another. */
  readonly heads: ReadonlyMap<string, string>;
}

/** `elsewhere`: words of cars and of the make, which never tell a state by themselves. */
export function compilePartWords(part: PartKind, elsewhere: ReadonlySet<string>): PartWords {
  const cues = new Map<string, Set<string>>();
  for (const feature of part.features) {
    for (const name of [feature.name, ...feature.also]) {
      for (const stem of tellingStems(name)) addTo(cues, stem, feature.id);
    }
  }
  const features = new Map(part.features.map((feature) => [feature.id, featureWords(feature)]));
  const owners = ownersOf(part);
  const nameWords = new Set(
    [part.name, ...part.also].flatMap((name) => tokenise(name).map((token) => token.folded)),
  );
  return {
    part,
    features,
    nameWords,
    nameHeads: new Set([part.name, ...part.also].map((name) => tokenise(name).at(-1)?.folded ?? "")),
    stateWords: new Set([...features.values()].flatMap(({ tellingWords }) => [...tellingWords.keys()])),
    cues,
    distinctive: distinctiveWords(features, owners, cues, elsewhere),
    owners,
    heads: mainNouns(part),
  };
}

function featureWords(feature: Feature): FeatureWords {
  const telling = tellingWords(feature);
  return {
    feature,
    polarity: polarityOf(feature),
    tellingWords: telling,
    soleWords: soleWords(feature, telling),
    often: oftenWords(feature, [...telling.keys()]),
  };
}

/** Words of two names, or of one that has no more than two words; "coin leaves a groove" lends its words to no one. */
function oftenWords(feature: Feature, stems: readonly string[]): ReadonlySet<string> {
  const names = plainNames(feature).map(tellingStems);
  return new Set(
    stems.filter((stem) => {
      const holding = names.filter((words) => words.includes(stem));
      return holding.length > 1 || holding.some((words) => words.length < 2);
    }),
  );
}

function soleWords(feature: Feature, telling: ReadonlyMap<string, string>): ReadonlySet<string> {
  const sole = new Set<string>();
  const own = ownWords(feature);
  for (const name of stateNames(feature)) {
    const words = tellingStems(name).filter((stem) => !own.has(stem) && telling.has(stem));
    const [only] = words;
    if (words.length === 1 && only !== undefined) sole.add(only);
  }
  return sole;
}

function ownersOf(part: PartKind): ReadonlyMap<string, string> {
  const uses = new Map<string, Set<string>>();
  for (const feature of part.features) {
    for (const stem of plainNames(feature).flatMap(tellingStems)) addTo(uses, stem, feature.id);
  }
  const owners = new Map<string, string>();
  for (const [stem, ids] of uses) {
    const [only] = ids;
    if (ids.size === 1 && only !== undefined) owners.set(stem, only);
  }
  return owners;
}

function distinctiveWords(
  features: ReadonlyMap<string, FeatureWords>,
  owners: ReadonlyMap<string, string>,
  cues: ReadonlyMap<string, ReadonlySet<string>>,
  elsewhere: ReadonlySet<string>,
): PartWords["distinctive"] {
  const distinctive = new Map<string, { feature: string; state: string }>();
  for (const [stem, feature] of owners) {
    const state = features.get(feature)?.tellingWords.get(stem);
    if (state === undefined || cues.has(stem) || elsewhere.has(stem) || isGeneralWord(stem)) continue;
    if (!(features.get(feature)?.often.has(stem) ?? false)) continue;
    distinctive.set(stem, { feature, state });
  }
  return distinctive;
}

/**
 * A word tells a state when it stands in at least three times as many of its names as of any other state's; twice is
 * enough for a word that is all a name has to tell.
 */
function tellingWords(feature: Feature): ReadonlyMap<string, string> {
  const often = leadingWords(feature, 3);
  const leading = leadingWords(feature, 2);
  const sole = soleWords(feature, leading);
  const own = ownWords(feature);
  return new Map(
    [...leading].filter(
      ([stem, state]) =>
        (often.has(stem) || sole.has(stem)) && !(own.has(stem) && !isInName(feature, state, stem)),
    ),
  );
}

/** "RIVADEN" of "Rivaden stamp" is the name of a state as well; the "lamp" of "warning lamps" is not. */
function isInName(feature: Feature, id: string, stem: string): boolean {
  const state = feature.kind === "states" ? feature.states.find((each) => each.id === id) : undefined;
  return state !== undefined && tellingStems(state.name).includes(stem);
}

/** "Symbols or words" names the feature by its states: those words are still the states' own. */
function ownWords(feature: Feature): ReadonlySet<string> {
  return new Set([feature.name, ...feature.also].filter((name) => !/ or /.test(name)).flatMap(tellingStems));
}

/** A historian lists the usual words first; what stands further down is a saying, read whole and never by a word of it. */
const mostLending = 36;

/** The names of a state whose single words may tell it: its own and the first thirty-six others. */
export function lendingNames({ name, also }: StateFeature["states"][number]): readonly string[] {
  return [name, ...also.slice(0, mostLending)];
}

/** A name that says what is not there. */
export const denyingName = /\b(?:no|not|nothing|none|never|without|cannot|cant|can't|missing)\b/i;

function leadingWords(feature: Feature, times: number): ReadonlyMap<string, string> {
  const uses = new Map<string, Map<string, number>>();
  for (const state of feature.kind === "states" ? feature.states : []) {
    // The "cast" of "nothing cast in" speaks for no state.
    const names = lendingNames(state).filter((name) => !denyingName.test(name) && !isComparison(name));
    for (const stem of names.flatMap((name) => [...new Set(tellingStems(name))])) count(uses, stem, state.id);
  }
  const leading = new Map<string, string>();
  for (const [stem, byState] of uses) {
    const [first, second] = [...byState].sort(([, one], [, other]) => other - one);
    if (first !== undefined && first[1] >= times * (second?.[1] ?? 0)) leading.set(stem, first[0]);
  }
  return leading;
}

/** A last word of at least two of a feature's names that is used more there than in the states of others. */
function mainNouns(part: PartKind): ReadonlyMap<string, string> {
  const uses = new Map<string, Map<string, number>>();
  const inStates = new Map<string, Map<string, number>>();
  for (const feature of part.features) {
    for (const name of [feature.name, ...feature.also]) count(uses, mainNoun(name), feature.id);
    for (const name of stateNames(feature)) {
      for (const stem of tellingStems(name)) count(inStates, stem, feature.id);
    }
  }
  const heads = new Map<string, string>();
  for (const [stem, byFeature] of uses) {
    const [entry, rival] = [...byFeature].sort(([, one], [, other]) => other - one);
    if (entry === undefined) continue;
    const [feature, times] = entry;
    const others = Math.max(1.5 * (rival?.[1] ?? 0), 1 + usesOutside(inStates.get(stem), feature), 2);
    if (times >= others) heads.set(stem, feature);
  }
  return heads;
}

/** The last word before "of", "on", "under" …: the mark in "mark on the back"; none in "made of", "held on with". */
function mainNoun(name: string): string | undefined {
  if (/ (?:of|on|in|with|from|by)$/.test(name)) return undefined;
  return tellingStems(
    name.split(/ (?:of|on|in|under|at|for|to|with|over|through|between|from) /, 1)[0] ?? name,
  ).at(-1);
}

function stateNames(feature: Feature): readonly string[] {
  return feature.kind === "states" ? feature.states.flatMap(lendingNames) : [];
}

/** "Like a worn coin": its words tell nothing by themselves. */
function isComparison(name: string): boolean {
  return /\blike\b/.test(name);
}

function plainNames(feature: Feature): readonly string[] {
  return stateNames(feature).filter((name) => !isComparison(name));
}

function usesOutside(byFeature: ReadonlyMap<string, number> | undefined, feature: string): number {
  return Array.from(byFeature ?? []).reduce((sum, [id, times]) => (id === feature ? sum : sum + times), 0);
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
