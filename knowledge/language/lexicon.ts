// A handbook compiled for reading: its phrases indexed by their rarest word, its words for misspellings, and per
// part what helps to tell which feature a loose word belongs to. Compiled once per edition.
import type { Feature, Handbook, PartKind } from "../handbook/schema.ts";
import { cleanText } from "./clean-text.ts";
import { commonWords, isGeneralWord } from "./common-words.ts";
import { numberOf, stemWord } from "./fold-word.ts";
import { compileEars, type Ears } from "./hearing/ears.ts";
import { type Judging, learntJudging } from "./judging.ts";
import type { Meaning, Phrase } from "./meaning.ts";
import { stemsOf } from "./name-stems.ts";
import { compilePartWords, type FeatureWords, lendingNames, type PartWords } from "./part-words.ts";
import { tokenise } from "./tokens.ts";
import { compileVocabulary, type Vocabulary } from "./vocabulary.ts";

export interface Lexicon {
  readonly handbook: Handbook;
  /** What was learnt of how owners speak of it. */
  readonly ears: Ears | undefined;
  readonly judging: Judging;
  readonly phrasesByWord: ReadonlyMap<string, readonly Phrase[]>;
  readonly vocabulary: Vocabulary;
  readonly parts: ReadonlyMap<string, PartWords>;
  /** "Part", "parts", "car" or "cars" for the last words of its names of parts and of the family of cars. */
  readonly plainNouns: ReadonlyMap<string, string>;
}

interface Draft {
  readonly stems: readonly string[];
  readonly literal?: readonly string[];
  readonly meanings: Meaning[];
  /** The name is not one of those listed first for anything. */
  isSaying: boolean;
}

/** Everything the reader looks up, from one sound handbook; linear in the number of names. */
export function compileLexicon(handbook: Handbook, judging: Judging = learntJudging): Lexicon {
  const phrases = new Map<string, Draft>();
  for (const [name, meaning, isSaying = false] of allNames(handbook))
    addPhrase(phrases, name, meaning, isSaying);
  const all = Array.from(phrases.values(), (phrase) => ({
    ...phrase,
    isOrdered:
      phrase.isSaying ||
      phrase.meanings.some(({ kind }) => kind !== "state" && kind !== "feature") ||
      phrase.stems.some((stem) => /^(?:no|not|nothing|never|without|like)$/.test(stem)),
    isGeneral: phrase.stems.length === 1 && phrase.stems.every(isGeneralWord),
  }));
  const { models, trims, markets } = handbook.cars;
  const carWords = new Set(
    [handbook.cover, ...models, ...trims, ...markets].flatMap(({ name }) => stemsOf(name)),
  );
  const parts = new Map(handbook.parts.map((part) => [part.id, compilePartWords(part, carWords)]));
  return {
    handbook,
    judging,
    ears: handbook.learntWords === undefined ? undefined : compileEars(handbook.learntWords),
    phrasesByWord: byRarestWord(all),
    vocabulary: compileVocabulary(
      all.flatMap((phrase) => phrase.stems),
      all.filter((phrase) => !phrase.isSaying).flatMap((phrase) => phrase.stems),
    ),
    parts,
    plainNouns: plainNounsOf(
      parts,
      models.map((model) => stemsOf(model.name)),
      handbook.cover,
    ),
  };
}

/** What helps to read one feature of a part; undefined for those that the handbook has not. */
export function wordsOfFeature({ parts }: Lexicon, part: string, feature: string): FeatureWords | undefined {
  return parts.get(part)?.features.get(feature);
}

/** Heads of part names in both numbers, the words that every model's name holds, and what the handbook calls its things. */
function plainNounsOf(
  parts: ReadonlyMap<string, PartWords>,
  models: readonly (readonly string[])[],
  { thing = "car", things }: Handbook["cover"],
): ReadonlyMap<string, string> {
  const nouns = new Map<string, string>();
  for (const head of [...parts.values()].flatMap(({ nameHeads }) => [...nameHeads])) {
    const one = stemWord(head);
    nouns.set(one, "part").set(`${one}s`, "parts");
    if (/(?:sh|ch|x|s)$/.test(one)) nouns.set(`${one}es`, "parts");
  }
  for (const word of models[0] ?? []) {
    const isFamily = word.length > 2 && models.every((name) => name.includes(word)) && !/^mark$/.test(word);
    if (isFamily) nouns.set(word, "car").set(`${word}s`, "cars");
  }
  for (const [name, plain] of [
    [thing, "car"],
    [things ?? `${thing}s`, "cars"],
  ] as const) {
    const last = stemsOf(name).at(-1);
    if (last !== undefined && thing !== "car") nouns.set(last, plain);
  }
  return nouns;
}

/** A state's name may say two things at once ("stiff, glass fibre"; "painted or flow-coated"): each is a name. */
export function namesOfState(name: string): readonly string[] {
  const pieces = name
    .split(name.includes(",") ? "," : " or ")
    .map((piece) => piece.trim())
    .filter((piece) => piece.length > 2 && !/^(?:with|without|and|or|not) /.test(piece));
  return pieces.length > 1 ? [name, ...pieces] : [name];
}

function addPhrase(phrases: Map<string, Draft>, name: string, meaning: Meaning, isSaying: boolean): void {
  const words = tokenise(cleanText(name).text).map((token) => token.stem);
  // A bracketed name (">ABS<") is a mark as moulded; its bare letters mean something else.
  const stems = /[<>]/.test(name) ? [] : stemsOf(name);
  if (stems.length === 0 || stems.length > 8) return;
  // "2+1" as a saying would be found in every "2.1".
  if (isSaying && stems.length > 1 && stems.every((stem) => numberOf(stem) !== undefined)) return;
  // "Bonded on" must be said so: its one telling word alone means less.
  const literal = stems.length === 1 && words.length > 1 && meaning.kind !== "part" ? { literal: words } : {};
  const key = literal.literal === undefined ? [...stems].sort().join(" ") : `= ${words.join(" ")}`;
  const known = phrases.get(key);
  if (known === undefined) {
    phrases.set(key, { stems, ...literal, meanings: [meaning], isSaying });
    return;
  }
  known.isSaying &&= isSaying;
  if (!known.meanings.some((other) => isSame(other, meaning))) known.meanings.push(meaning);
}

function isSame(one: Meaning, other: Meaning): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function* allNames(handbook: Handbook): Generator<readonly [string, Meaning, boolean?]> {
  yield* carNames(handbook);
  for (const part of handbook.parts) {
    yield* named(part, { kind: "part", part: part.id });
    const noun = ownNoun(part, handbook.parts);
    if (noun !== undefined) yield [noun, { kind: "part", part: part.id }];
    for (const feature of part.features) yield* featureNames(part, feature);
    for (const variant of part.variants) {
      yield* named(variant, { kind: "variant", part: part.id, variant: variant.id });
    }
  }
}

function* carNames({ cars }: Handbook): Generator<readonly [string, Meaning, boolean?]> {
  for (const kind of ["model", "trim", "market"] as const) {
    for (const entry of cars[`${kind}s`]) yield* named(entry, { kind, id: entry.id });
  }
  for (const { id, name } of cars.markets) {
    for (const said of marketNames(name)) yield [said, { kind: "market", id }];
  }
}

/** "Continental market" is said "continental spec" and "continental car" as well. */
function marketNames(name: string): readonly string[] {
  const place = /^(\w{5,}) market$/i.exec(name)?.[1]?.toLowerCase();
  if (place === undefined || commonWords.has(place)) return [];
  return ["spec", "car", "model", "version", "export"].map((noun) => `${place} ${noun}`);
}

/** "The wing" for the front wing: the last word of a part's name, where no other part's name ends so. */
function ownNoun(part: PartKind, parts: readonly PartKind[]): string | undefined {
  const noun = stemsOf(part.name).at(-1);
  const isShared = parts.some((other) => other.id !== part.id && stemsOf(other.name).at(-1) === noun);
  return isShared ? undefined : noun;
}

function* named(
  entry: { readonly name: string; readonly also: readonly string[] },
  meaning: Meaning,
): Generator<readonly [string, Meaning, boolean?]> {
  for (const name of [entry.name, ...entry.also]) yield [name, meaning];
}

function keyOf(name: string): string {
  return [...stemsOf(name)].sort().join(" ");
}

/** What people say for a dimension when they give its figure. */
const measuringWords: ReadonlyMap<string, readonly string[]> = new Map([
  ["width", ["wide", "large"]],
  ["height", ["high", "tall"]],
  ["length", ["long"]],
  ["depth", ["deep"]],
  ["thickness", ["thick"]],
  ["diameter", ["across"]],
  ["mass", ["heavy", "weighing", "weigh"]],
  ["weight", ["heavy", "weighing", "weigh"]],
]);

function* featureNames(part: PartKind, feature: Feature): Generator<readonly [string, Meaning, boolean?]> {
  const meaning = { kind: "feature", part: part.id, feature: feature.id } as const;
  yield* named(feature, meaning);
  if (feature.kind === "measurement") for (const word of wordsForSize(feature)) yield [word, meaning];
  if (feature.none !== undefined) yield [feature.none, { ...meaning, kind: "state", state: "not-there" }];
  if (feature.kind !== "states") return;
  const own = new Set([feature.name, ...feature.also].map(keyOf));
  for (const state of feature.states) {
    const stateMeaning = { ...meaning, kind: "state", state: state.id } as const;
    // "Has drain notches" is the feature's name once "has" is gone: presence.ts reads it, a mere mention says nothing.
    const isMention = (name: string): boolean => own.has(keyOf(name)) && /^(?:has|have|with)\b/i.test(name);
    const usual = new Set([...namesOfState(state.name), ...lendingNames(state)]);
    const names = [...usual, ...state.also].filter((name) => !isMention(name));
    for (const name of names) yield [name, stateMeaning, !usual.has(name)];
  }
}

function wordsForSize(feature: Feature): readonly string[] {
  const words = feature.also.flatMap((name) => measuringWords.get(name) ?? []);
  return /\b(?:spacing|distance|centres)\b/.test(feature.name) ? [...words, "apart"] : words;
}

/** A phrase is looked up under its rarest word, so that a word common to thousands of variants costs nothing. */
function byRarestWord(phrases: readonly Phrase[]): ReadonlyMap<string, readonly Phrase[]> {
  const uses = new Map<string, number>();
  for (const phrase of phrases) {
    for (const stem of phrase.stems) uses.set(stem, (uses.get(stem) ?? 0) + 1);
  }
  const index = new Map<string, Phrase[]>();
  for (const phrase of phrases) {
    const rarest = phrase.stems.reduce((best, stem) =>
      (uses.get(stem) ?? 0) < (uses.get(best) ?? 0) ? stem : best,
    );
    const listed = index.get(rarest);
    if (listed === undefined) index.set(rarest, [phrase]);
    else listed.push(phrase);
  }
  return index;
}
