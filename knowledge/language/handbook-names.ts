// Every name that a handbook gives its cars, parts, features and states, each with what it means: what the lexicon is made of.
import type { Feature, Handbook, PartKind } from "../handbook/schema.ts";
import { commonWords } from "./common-words.ts";
import type { Meaning } from "./meaning.ts";
import { stemsOf } from "./name-stems.ts";
import { lendingNames } from "./part-words.ts";

/** A name, its meaning, and whether it is a mere saying: none of those listed first for anything. */
export type MeaningfulName = readonly [name: string, meaning: Meaning, isSaying?: boolean];

/** The names of a part kind; `heads`: how many part kinds have a name that ends in a word. */
export function* partNames(
  part: PartKind,
  heads: ReadonlyMap<string | undefined, number>,
): Generator<MeaningfulName> {
  yield* named(part, { kind: "part", part: part.id });
  const noun = ownNoun(part, heads);
  if (noun !== undefined) yield [noun, { kind: "part", part: part.id }];
  for (const feature of part.features) yield* featureNames(part, feature);
  for (const variant of part.variants) {
    yield* named(variant, { kind: "variant", part: part.id, variant: variant.id });
  }
}

/** The names of models, trims and markets. */
export function* carNames({ cars }: Handbook): Generator<MeaningfulName> {
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

/** How many parts have a name that ends in a word. */
export function partsByHead(parts: readonly PartKind[]): ReadonlyMap<string | undefined, number> {
  const heads = new Map<string | undefined, number>();
  for (const { name } of parts) {
    const head = stemsOf(name).at(-1);
    heads.set(head, (heads.get(head) ?? 0) + 1);
  }
  return heads;
}

/** "The wing" for the front wing: the last word of a part's name, where no other part's name ends so. */
function ownNoun(part: PartKind, heads: ReadonlyMap<string | undefined, number>): string | undefined {
  const noun = stemsOf(part.name).at(-1);
  return heads.get(noun) === 1 ? noun : undefined;
}

function* named(
  entry: { readonly name: string; readonly also: readonly string[] },
  meaning: Meaning,
): Generator<MeaningfulName> {
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

function* featureNames(part: PartKind, feature: Feature): Generator<MeaningfulName> {
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

/** A state's name may say two things at once ("stiff, glass fibre"; "painted or flow-coated"): each is a name. */
export function namesOfState(name: string): readonly string[] {
  const pieces = name
    .split(name.includes(",") ? "," : " or ")
    .map((piece) => piece.trim())
    .filter((piece) => piece.length > 2 && !/^(?:with|without|and|or|not) /.test(piece));
  return pieces.length > 1 ? [name, ...pieces] : [name];
}
