// A handbook compiled for reading: its phrases indexed by their rarest word, its words for misspellings, and per
// part what helps to tell which feature a loose word belongs to. Compiled once per edition.
import { atOnce, type InPieces } from "../handbook/in-pieces.ts";
import type { Handbook } from "../handbook/schema.ts";
import { cleanText } from "./clean-text.ts";
import { isGeneralWord } from "./common-words.ts";
import { numberOf, stemWord } from "./fold-word.ts";
import { carNames, type MeaningfulName, partNames, partsByHead } from "./handbook-names.ts";
import { compileEars, type Ears } from "./hearing/ears.ts";
import { type Judging, learntJudging } from "./judging.ts";
import type { Meaning, Phrase } from "./meaning.ts";
import { stemsOf } from "./name-stems.ts";
import { compilePartWords, type FeatureWords, type PartWords } from "./part-words.ts";
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
  return atOnce(compilingLexicon(handbook, judging));
}

/** The same, giving way after each part kind. */
export function* compilingLexicon(handbook: Handbook, judging: Judging = learntJudging): InPieces<Lexicon> {
  const { models, trims, markets } = handbook.cars;
  const carWords = new Set(
    [handbook.cover, ...models, ...trims, ...markets].flatMap(({ name }) => stemsOf(name)),
  );
  const phrases = new Map<string, Draft>();
  for (const name of carNames(handbook)) addPhrase(phrases, name);
  const heads = partsByHead(handbook.parts);
  const parts = new Map<string, PartWords>();
  for (const part of handbook.parts) {
    for (const name of partNames(part, heads)) addPhrase(phrases, name);
    // Beside its names, while these are still known as stems.
    parts.set(part.id, compilePartWords(part, carWords));
    yield;
  }
  const all = Array.from(phrases.values(), finished);
  yield;
  const phrasesByWord = byRarestWord(all);
  yield;
  const vocabulary = compileVocabulary(
    all.flatMap((phrase) => phrase.stems),
    all.filter((phrase) => !phrase.isSaying).flatMap((phrase) => phrase.stems),
  );
  yield;
  return {
    handbook,
    judging,
    ears: handbook.learntWords === undefined ? undefined : compileEars(handbook.learntWords),
    phrasesByWord,
    vocabulary,
    parts,
    plainNouns: plainNounsOf(
      parts,
      models.map((model) => stemsOf(model.name)),
      handbook.cover,
    ),
  };
}

function finished(phrase: Draft): Phrase {
  return {
    ...phrase,
    isOrdered:
      phrase.isSaying ||
      phrase.meanings.some(({ kind }) => kind !== "state" && kind !== "feature") ||
      phrase.stems.some((stem) => /^(?:no|not|nothing|never|without|like)$/.test(stem)),
    isGeneral: phrase.stems.length === 1 && phrase.stems.every(isGeneralWord),
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

function addPhrase(phrases: Map<string, Draft>, [name, meaning, isSaying = false]: MeaningfulName): void {
  // A bracketed name (">ABS<") is a mark as moulded; its bare letters mean something else.
  const stems = /[<>]/.test(name) ? [] : stemsOf(name);
  if (stems.length === 0 || stems.length > 8) return;
  // "2+1" as a saying would be found in every "2.1".
  if (isSaying && stems.length > 1 && stems.every((stem) => numberOf(stem) !== undefined)) return;
  // "Bonded on" must be said so: its one telling word alone means less.
  const words = stems.length === 1 && meaning.kind !== "part" ? wordsOf(name) : [];
  const literal = words.length > 1 ? { literal: words } : {};
  const key = words.length > 1 ? `= ${words.join(" ")}` : [...stems].sort().join(" ");
  const before = phrases.get(key);
  if (before === undefined) {
    phrases.set(key, { stems, ...literal, meanings: [meaning], isSaying });
    return;
  }
  before.isSaying &&= isSaying;
  if (!isAmongLast(meaning, before.meanings)) before.meanings.push(meaning);
}

/** A phrase common to many part kinds has hundreds of meanings; those of one part kind come together. */
function isAmongLast(meaning: Meaning, meanings: readonly Meaning[]): boolean {
  const part = partOf(meaning);
  const other = meanings.findLastIndex((each) => partOf(each) !== part);
  return meanings.slice(other + 1).some((each) => isSame(each, meaning));
}

function partOf(meaning: Meaning): string | undefined {
  return "part" in meaning ? meaning.part : undefined;
}

function isSame(one: Meaning, other: Meaning): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function wordsOf(name: string): readonly string[] {
  return tokenise(cleanText(name).text).map((token) => token.stem);
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
