// Finds the handbook's phrases in a message: windows of neighbouring words in any order with at most one word
// between them, misspellings through the vocabulary; the longest phrases win, and no word is used twice.
import { glueWords } from "./common-words.ts";
import { cueWords } from "./cue-words.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Phrase } from "./meaning.ts";
import { isPreposition, joinSplit, splitJoined } from "./split-words.ts";
import { foldedAt, type Token } from "./tokens.ts";
import type { WordLookUp, WordMatch } from "./vocabulary.ts";

/** A phrase found at words `from` to `to` (inclusive, positions among the message's tokens). */
export interface Spotted {
  readonly phrase: Phrase;
  readonly from: number;
  readonly to: number;
  /** Positions of the tokens it uses. */
  readonly used: readonly number[];
  readonly edits: number;
}

/** One word that may be part of a phrase, with the known words it may stand for. */
interface Slot {
  readonly token: number;
  /** The last token it covers: a split word ("wind screen") covers two. */
  readonly lastToken: number;
  readonly stretch: number;
  /** Its place among the telling words. */
  readonly place: number;
  readonly matches: readonly WordMatch[];
  readonly isUncertain: boolean;
}

/**
 * Every place where a phrase of the lexicon fits, overlapping or not. `taken`: tokens read as numbers or dates; `lookUp`: the
 * known words that a word may stand for.
 */
export function findPhrases(
  tokens: readonly Token[],
  lexicon: Lexicon,
  taken: ReadonlySet<number>,
  lookUp: WordLookUp,
): readonly Spotted[] {
  const slots = slotsOf(tokens, lexicon, taken, lookUp);
  const said = new Set(slots.flatMap(({ matches }) => matches.map(({ stem }) => stem)));
  const byPlace = new Map<number, Slot[]>();
  for (const slot of slots) byPlace.set(slot.place, [...(byPlace.get(slot.place) ?? []), slot]);
  return slots.flatMap((slot) => matchesAt(slot, lexicon, said, byPlace, tokens));
}

function matchesAt(
  slot: Slot,
  lexicon: Lexicon,
  said: ReadonlySet<string>,
  byPlace: ReadonlyMap<number, readonly Slot[]>,
  tokens: readonly Token[],
): readonly Spotted[] {
  return slot.matches.flatMap(({ stem }) =>
    (lexicon.phrasesByWord.get(stem) ?? []).flatMap((phrase) => {
      // Most phrases that share a word with a message are out of it by their others.
      if (!phrase.stems.every((each) => said.has(each))) return [];
      return matchAround(slot, stem, phrase, byPlace, tokens) ?? [];
    }),
  );
}

/** The longest phrases that do not overlap, in order of place. */
export function longestFirst(found: readonly Spotted[]): readonly Spotted[] {
  const ranked = found
    .map((match, order) => ({ match, order }))
    .sort(
      (one, other) =>
        other.match.phrase.stems.length - one.match.phrase.stems.length ||
        one.match.edits - other.match.edits ||
        one.match.to - one.match.from - (other.match.to - other.match.from) ||
        one.order - other.order,
    );
  const used = new Map<number, Spotted>();
  const kept: Spotted[] = [];
  for (const { match } of ranked) {
    const isFree = (token: number): boolean => {
      const holder = used.get(token);
      return holder === undefined || (namesState(match) && (isVariant(holder) || isHeadOf(match, holder)));
    };
    if (!match.used.every(isFree)) continue;
    for (const token of match.used) used.set(token, match);
    kept.push(match);
  }
  return kept.sort((one, other) => one.from - other.from || one.to - other.to);
}

/** "six-screw spoiler" names a variant and tells the fixing as well: a variant's words stay free for states. */
function isVariant({ phrase }: Spotted): boolean {
  return phrase.meanings.some((meaning) => meaning.kind === "variant");
}

/** "Grained black plastic" tells the finish, and its last word the material. */
function isHeadOf(match: Spotted, holder: Spotted): boolean {
  if (match.from !== holder.to || match.phrase.stems.length >= holder.phrase.stems.length) return false;
  // "The joint is plastic" tells of the joint alone.
  if (holder.to - holder.from + 1 > holder.used.length) return false;
  const features = new Set(
    holder.phrase.meanings.flatMap((each) => ("feature" in each ? [each.feature] : [])),
  );
  return match.phrase.meanings.every((each) => !("feature" in each && features.has(each.feature)));
}

function namesState({ phrase }: Spotted): boolean {
  return !phrase.isGeneral && phrase.meanings.some((meaning) => meaning.kind === "state");
}

function slotsOf(
  tokens: readonly Token[],
  lexicon: Lexicon,
  taken: ReadonlySet<number>,
  lookUp: WordLookUp,
): readonly Slot[] {
  const slots: Slot[] = [];
  let stretch = 0;
  tokens.forEach((token, at) => {
    if (token.breakBefore !== "none") stretch += 1;
    if (taken.has(at) || glueWords.has(token.folded) || isPreposition(token, tokens[at + 1])) return;
    const place = (slots.at(-1)?.place ?? 0) + 1;
    const slot = { token: at, lastToken: at, stretch, place, isUncertain: false };
    const matches = lookUp(token.folded);
    slots.push({ ...slot, matches, isUncertain: matches.length > 1 });
    const halves = matches.length === 0 ? splitJoined(token.folded, lexicon) : undefined;
    if (halves !== undefined) slots.push({ ...slot, matches: halves });
    const joined = joinSplit(token, tokens[at + 1], lexicon);
    if (joined !== undefined) slots.push({ ...slot, lastToken: at + 1, matches: [joined] });
  });
  return slots;
}

/** The phrase laid over the words around one of its words; undefined when it does not fit there. */
function matchAround(
  slot: Slot,
  stem: string,
  phrase: Phrase,
  byPlace: ReadonlyMap<number, readonly Slot[]>,
  tokens: readonly Token[],
): Spotted | undefined {
  const reach = phrase.stems.length;
  const chosen: Slot[] = [];
  let edits = 0;
  for (const wanted of phrase.stems) {
    const isHere = wanted === stem && !chosen.includes(slot);
    const near = isHere ? slot : nearestSlot(wanted, slot, reach, byPlace, chosen);
    if (near === undefined) return undefined;
    edits += near.matches.find((match) => match.stem === wanted)?.edits ?? 0;
    chosen.push(near);
  }
  if (phrase.isSaying && edits > 0) return undefined;
  if (!isTrustworthy(chosen, phrase, edits, tokens)) return undefined;
  if (phrase.literal !== undefined && !standsLiterally(phrase.literal, stem, slot.token, tokens))
    return undefined;
  const used = Array.from(new Set(chosen.flatMap((each) => [each.token, each.lastToken])));
  if (!isTogether(chosen, phrase, used, tokens)) return undefined;
  // "No backing, just bare metal" is no bare metal back: words of another form or meaning, turned round, must touch.
  if (edits > 0 && !isInOrder(chosen) && hasGap(chosen)) return undefined;
  return { phrase, from: Math.min(...used), to: Math.max(...used), used, edits };
}

/** At most one word in between, none that parts, and in order where the name asks for it. */
function isTogether(
  chosen: readonly Slot[],
  phrase: Phrase,
  used: readonly number[],
  tokens: readonly Token[],
): boolean {
  const places = chosen.map((each) => each.place);
  const between = gapsIn(places);
  const isName = phrase.meanings.every(({ kind }) => /^(?:part|model|trim)$/.test(kind));
  // "A Shrike at the autojumble with one" is no Shrike One.
  if (isOfCar(phrase) && !placesBetween(used).every((at) => withinName.test(foldedAt(tokens, at))))
    return false;
  if (between > (places.length > 1 && !isName ? 1 : 0) || (between > 0 && isParted(phrase, used, tokens)))
    return false;
  // "Mirror folds flat" is no flat mirror: turned round, the words must touch.
  if (between > 0 && places.length === 2 && (places[0] ?? 0) > (places[1] ?? 0)) return false;
  return !phrase.isOrdered || isInOrder(chosen);
}

/** Small words within a name of a car: "series one of the Shrike". */
const withinName = /^(?:a|an|the|of)$/;

/** The places from the first to the last that the phrase does not use. */
function placesBetween(used: readonly number[]): readonly number[] {
  const first = Math.min(...used);
  return Array.from({ length: Math.max(...used) - first }, (_, step) => first + step).filter(
    (at) => !used.includes(at),
  );
}

function isOfCar({ meanings }: Phrase): boolean {
  return meanings.every(({ kind }) => kind === "model" || kind === "trim");
}

function hasGap(chosen: readonly Slot[]): boolean {
  return gapsIn(chosen.map((each) => each.place)) > 0;
}

/** Telling words inside the stretch that are none of the phrase's. */
function gapsIn(places: readonly number[]): number {
  return Math.max(...places) - Math.min(...places) + 1 - new Set(places).size;
}

function isInOrder(chosen: readonly Slot[]): boolean {
  return chosen.every((each, at) => each.place >= (chosen[at - 1]?.place ?? 0));
}

function nearestSlot(
  wanted: string,
  around: Slot,
  reach: number,
  byPlace: ReadonlyMap<number, readonly Slot[]>,
  chosen: readonly Slot[],
): Slot | undefined {
  for (let step = 0; step <= reach; step += 1) {
    for (const place of step === 0 ? [around.place] : [around.place + step, around.place - step]) {
      const slot = (byPlace.get(place) ?? []).find(
        (each) =>
          each.stretch === around.stretch &&
          !chosen.includes(each) &&
          each.matches.some((match) => match.stem === wanted),
      );
      if (slot !== undefined) return slot;
    }
  }
  // A joined word stands for two words of the phrase at once.
  const joined = chosen.find(
    (each) => each.matches.length > 1 && each.matches.some((match) => match.stem === wanted),
  );
  return joined !== undefined && !joined.isUncertain ? joined : undefined;
}

/** "No clock it has notches": here the speaker starts anew, and what was denied is over. */
const startingAnew: ReadonlySet<string> = new Set("it its i they theyre theres".split(" "));

/** Whether a word in between parts the phrase: a number, a negation or a conjunction does. */
function isParted({ stems }: Phrase, used: readonly number[], tokens: readonly Token[]): boolean {
  const denies = stems.some((stem) => cueWords.negations.has(stem));
  for (let at = Math.min(...used); at <= Math.max(...used); at += 1) {
    const word = foldedAt(tokens, at);
    const parts = cueWords.parting.has(word) || (denies && startingAnew.has(word));
    if (parts && !used.includes(at)) return true;
  }
  return false;
}

function standsLiterally(
  literal: readonly string[],
  stem: string,
  token: number,
  tokens: readonly Token[],
): boolean {
  const first = token - literal.indexOf(stem);
  return literal.every((word, at) => word === stem || tokens[first + at]?.stem === word);
}

/** A lone misspelt word must be long and have one reading only; a lone short name must be written in capitals. */
function isTrustworthy(
  chosen: readonly Slot[],
  phrase: Phrase,
  edits: number,
  tokens: readonly Token[],
): boolean {
  const [only] = chosen;
  if (phrase.stems.length !== 1 || only === undefined) return edits <= phrase.stems.length;
  const token = tokens[only.token];
  if (token === undefined) return false;
  if (!isBestMatch(only, phrase)) return false;
  if (token.folded.length === 1) return token.isCapital && foldedAt(tokens, only.token - 1) === "the";
  return edits === 0 || token.folded.length >= 5;
}

/** The word itself, or its one likely correction; other forms of a known word count in longer phrases only. */
function isBestMatch(slot: Slot, phrase: Phrase): boolean {
  const least = Math.min(...slot.matches.map((match) => match.edits));
  const best = slot.matches.filter((match) => match.edits === least);
  return best.length === 1 && best[0]?.stem === phrase.stems[0];
}
