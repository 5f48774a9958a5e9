// To whom a word of a message belongs when one part is spoken of: the names of the part, its features and states; the
// prose its historians wrote about it; talk that goes with anything; figures; or none of these, which is foreign.
import type { Feature } from "../handbook/schema.ts";
import { glueWords } from "./common-words.ts";
import { numberOf } from "./fold-word.ts";
import type { MessageView } from "./message-view.ts";
import { lendingNames, type PartWords } from "./part-words.ts";
import { plainTalk } from "./plain-talk.ts";
import { foldedAt, type Token, tokenise } from "./tokens.ts";

export type WordClass = "own" | "prose" | "talk" | "figure" | "foreign";

interface KnownWords {
  readonly own: ReadonlySet<string>;
  readonly prose: ReadonlySet<string>;
}

/** Gathered once for each part of an edition. */
const known = new WeakMap<PartWords, KnownWords>();

/** The class of each token of the message, for the part its clause speaks of; what something is likened to is talk. */
export function classesOf(view: MessageView): readonly WordClass[] {
  let likened = -1;
  return view.tokens.map((token, at) => {
    if (isLikening(view, at)) likened = view.clauseOf[at] ?? -1;
    else if (likened === view.clauseOf[at]) return "talk";
    const part = view.partOf[view.clauseOf[at] ?? 0];
    const words = part === undefined ? undefined : view.lexicon.parts.get(part);
    return classOf(token, view.words[at] ?? token.stem, words, view.phrasesAt.has(at));
  });
}

/** "Like a sofa", "as a board", "as if". */
function isLikening({ tokens }: MessageView, at: number): boolean {
  const word = foldedAt(tokens, at);
  if (word !== "like" && word !== "as") return false;
  return /^(?:an?|the|some|those|my|your|if|though|in|on|when)$/.test(foldedAt(tokens, at + 1));
}

function classOf(token: Token, word: string, part: PartWords | undefined, isHeld: boolean): WordClass {
  if (numberOf(token.folded) !== undefined) return "figure";
  const { own, prose } = part === undefined ? nothing : knownWords(part);
  const isTalk = plainTalk.has(token.folded) || glueWords.has(token.folded);
  if (isHeld && !isTalk) return "own";
  if (!isTalk && (own.has(word) || own.has(token.stem))) return "own";
  if (isTalk) return "talk";
  return prose.has(token.stem) ? "prose" : "foreign";
}

const nothing: KnownWords = { own: new Set(), prose: new Set() };

function knownWords(words: PartWords): KnownWords {
  const found = known.get(words);
  if (found !== undefined) return found;
  const { part } = words;
  const own = new Set([part.name, ...part.also, ...part.features.flatMap(namesOf)].flatMap(stemsIn));
  const prose = new Set(
    textsIn({ ...part, also: [], features: part.features.map(withoutNames) }).flatMap(stemsIn),
  );
  const made = { own, prose };
  known.set(words, made);
  return made;
}

function namesOf(feature: Feature): readonly string[] {
  const states = feature.kind === "states" ? feature.states.flatMap(lendingNames) : [];
  return [feature.name, ...feature.also, ...states];
}

/** A feature without the sayings of its states. */
function withoutNames(feature: Feature): unknown {
  if (feature.kind !== "states") return feature;
  return { ...feature, states: feature.states.map((state) => ({ ...state, also: [] })) };
}

function stemsIn(text: string): readonly string[] {
  return tokenise(text).map(({ stem }) => stem);
}

function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}
