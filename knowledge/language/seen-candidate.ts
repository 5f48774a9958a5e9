// A candidate as it stands in its message: its clause, the subject of that clause, the words beside it, and what else of
// the message speaks of its feature and its part. Gathered once, so that the grounds only look.
import type { Clause } from "./clauses.ts";
import { glueWords } from "./common-words.ts";
import type { Candidate } from "./gather-observations.ts";
import { groundWords } from "./ground-words.ts";
import type { HeardState } from "./hearing/hearing.ts";
import type { MessageView } from "./message-view.ts";
import { isOtherThing } from "./other-things.ts";
import type { PartWords } from "./part-words.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt, stemAt } from "./tokens.ts";
import { classesOf, type WordClass } from "./word-classes.ts";

/** What one message offers to all its candidates. */
export interface Whole {
  readonly classes: readonly WordClass[];
  /** The share of each class among its words, 0 to 1. */
  readonly share: Readonly<Record<WordClass, number>>;
  /** Features that are told, by candidates or otherwise. */
  readonly told: number;
  /** Parts that are named. */
  readonly partsNamed: ReadonlySet<string>;
  /** Sentences that ask. */
  readonly asked: ReadonlySet<number>;
  /** Phrases that name a state, by the id of its feature. */
  readonly statesNamed: ReadonlyMap<string, readonly Spotted[]>;
  /** The first places where a thing stands that may be another. */
  readonly things: readonly number[];
}

/** What the subject of a clause is: the feature, another feature or the part, a thing of another kind, somebody. */
export type Subject =
  | "thing"
  | "feature"
  | "other feature"
  | "part"
  | "own"
  | "foreign"
  | "pronoun"
  | "first"
  | "third";

export interface Seen extends Whole {
  readonly view: MessageView;
  readonly candidate: Candidate;
  readonly clause: Clause;
  readonly words: PartWords | undefined;
  /** The phrase that names the state, if one does. */
  readonly spotted: Spotted | undefined;
  /** Places of the clause outside the candidate. */
  readonly beside: readonly number[];
  /** Places of the candidate's telling words. */
  readonly said: readonly number[];
  /** Foreign words beside it. */
  readonly foreign: number;
  readonly subject: Subject | undefined;
  /** The place of the clause's verb, -1 without one. */
  readonly verb: number;
  /** The feature is named in the clause, in the message, or another of its states is. */
  readonly isNamedHere: boolean;
  readonly isNamed: boolean;
  /** A word that names this feature alone stands in the candidate itself: "no week mark". */
  readonly isNamedWithin: boolean;
  readonly isSpokenOf: boolean;
  readonly isPartNamed: boolean;
  readonly isAsked: boolean;
  /** How it is heard by the words that were learnt of its state; undefined where none were. */
  readonly heard: SeenHeard | undefined;
}

/** Logarithms of odds, nats. */
export interface SeenHeard {
  readonly odds: number;
  /** Of the likeliest other state of its feature, and of another feature, in the same sentence. */
  readonly otherState: number;
  readonly otherFeature: number;
  /** Of the sentence telling anything, and of the most telling sentence of the message. */
  readonly telling: number;
  readonly mostTelling: number;
  readonly tellingAtAll: number;
}

/** Odds below which one is as unheard as another. */
const unheard = -6;

function heardOf(
  { heard }: MessageView,
  { part, feature, state, clause, isDenied }: Candidate,
): SeenHeard | undefined {
  const sentence = heard.find(({ first, last }) => first <= clause && clause <= last);
  const own = sentence?.states.find(
    (each) => each.feature === feature && each.state === state && (part === null || each.part === part),
  );
  if (sentence === undefined || own === undefined || isDenied) return undefined;
  const best = (isMeant: (each: HeardState) => boolean): number =>
    Math.max(unheard, sentence.states.find(isMeant)?.odds ?? unheard);
  return {
    odds: Math.max(unheard, own.odds),
    otherState: best((each) => each.feature === feature && each.state !== state),
    otherFeature: best((each) => each.feature !== feature),
    telling: sentence.telling,
    tellingAtAll: sentence.tellingAtAll,
    mostTelling: Math.max(...heard.map(({ telling }) => telling)),
  };
}

/** Most things counted in a message, and words looked at on either side of a candidate. */
const mostThings = 12;
const reach = 30;

/** The message as a whole; `others`: facts told that are no candidates. Linear in its words. */
export function wholeOf(view: MessageView, candidates: readonly Candidate[], others: number): Whole {
  const classes = classesOf(view);
  const share: Record<WordClass, number> = { own: 0, prose: 0, talk: 0, figure: 0, foreign: 0 };
  const one = 1 / Math.max(1, classes.length);
  for (const each of classes) share[each] += one;
  const isThing = (at: number): boolean => classes[at] !== "talk" && isOtherThing(stemAt(view.tokens, at));
  return {
    classes,
    share,
    told: new Set(candidates.map(({ feature }) => feature)).size + others,
    partsNamed: new Set(view.mentioned.filter((part) => part !== undefined)),
    asked: new Set(
      view.clauses.filter((each) => each.isAsked && !each.isDoubted).map(({ sentence }) => sentence),
    ),
    statesNamed: statesBySpotted(view),
    things: placesFrom(0, view.tokens.length - 1)
      .filter(isThing)
      .slice(0, mostThings),
  };
}

function statesBySpotted(view: MessageView): ReadonlyMap<string, readonly Spotted[]> {
  const found = new Map<string, Spotted[]>();
  for (const spotted of view.spotted) {
    for (const meaning of spotted.phrase.meanings) {
      if (meaning.kind !== "state") continue;
      const known = found.get(meaning.feature);
      if (known === undefined) found.set(meaning.feature, [spotted]);
      else known.push(spotted);
    }
  }
  return found;
}

/** One candidate in its place. A short answer of the whole message has no words of its own: `from` stands behind `to`. */
export function seenIn(view: MessageView, candidate: Candidate, whole: Whole): Seen {
  const { from, to, feature, part } = candidate;
  const clause = within(
    (from > to ? undefined : view.clauses[candidate.clause]) ?? wholeMessage(view),
    from,
    to,
  );
  const isOutside = (at: number): boolean => at < from || to < at;
  const beside = placesFrom(clause.from, clause.to).filter(isOutside);
  const mentions = view.featuresNamed.get(feature) ?? [];
  const words = part === null ? undefined : view.lexicon.parts.get(part);
  const spotted = (view.phrasesAt.get(to) ?? []).find(
    (each) => each.to === to && namesStateOf(each, part, feature),
  );
  const verb = placesFrom(clause.from, clause.to).find((at) => groundWords.verbs.has(wordAt(view, at))) ?? -1;
  const said = placesFrom(spotted?.from ?? from, to).filter((at) => !glueWords.has(wordAt(view, at)));
  return {
    ...whole,
    view,
    candidate,
    clause,
    words,
    spotted,
    beside,
    verb,
    said,
    foreign: beside.filter((at) => whole.classes[at] === "foreign").length,
    subject: subjectOf(view, clause, verb, whole.classes, words, feature),
    isNamedHere: mentions.some(
      (each) => isOutside(each.from) && view.clauseOf[each.from] === candidate.clause,
    ),
    isNamed:
      mentions.some((each) => isOutside(each.from)) ||
      candidate.finder === "presence" ||
      candidate.finder === "named",
    isNamedWithin:
      said.length > 1 && said.some((at) => isOwnCue(words?.cues.get(stemAt(view.tokens, at)), feature)),
    isSpokenOf: (whole.statesNamed.get(feature) ?? []).some(
      (each) => isOutside(each.from) && namesStateOf(each, part, feature),
    ),
    isPartNamed: part !== null && whole.partsNamed.has(part),
    isAsked: view.context.askedFeature === feature,
    heard: heardOf(view, candidate),
  };
}

function isOwnCue(features: ReadonlySet<string> | undefined, feature: string): boolean {
  return features?.size === 1 && features.has(feature);
}

/** The clause as far as it stands within reach of the candidate: a message without a stop is one clause. */
function within(clause: Clause, from: number, to: number): Clause {
  return { ...clause, from: Math.max(clause.from, from - reach), to: Math.min(clause.to, to + reach) };
}

function wholeMessage(view: MessageView): Clause {
  const isAsked = view.clauses.some((each) => each.isAsked);
  const to = view.tokens.length - 1;
  return { from: 0, to, join: "sentence", sentence: 0, isAsked, isDoubted: false, text: "" };
}

function namesStateOf({ phrase }: Spotted, part: string | null, feature: string): boolean {
  return phrase.meanings.some(
    (each) => each.kind === "state" && each.feature === feature && (part === null || each.part === part),
  );
}

function subjectOf(
  view: MessageView,
  clause: Clause,
  verb: number,
  classes: readonly WordClass[],
  words: PartWords | undefined,
  feature: string,
): Subject | undefined {
  if (verb < 0) return undefined;
  if (/^(?:its|theyre)$/.test(wordAt(view, verb))) return "pronoun";
  const head = headBefore(view, clause.from, verb, classes, words);
  if (head >= 0) return kindOfNoun(view, head, classes, words, feature);
  const before = placesFrom(clause.from, verb - 1).map((at) => wordAt(view, at));
  if (before.some((word) => groundWords.firstPerson.has(word))) return "first";
  return before.some((word) => groundWords.thirdPerson.has(word)) ? "third" : "pronoun";
}

/** The last noun before the verb, or before "of", "on", "in" where the subject goes on so; -1 without one. */
function headBefore(
  view: MessageView,
  from: number,
  verb: number,
  classes: readonly WordClass[],
  words: PartWords | undefined,
): number {
  let head = -1;
  for (let at = from; at < verb; at += 1) {
    if (head >= 0 && groundWords.prepositions.has(wordAt(view, at))) break;
    if (classes[at] !== "talk" || words?.cues.has(stemAt(view.tokens, at)) === true) head = at;
  }
  return head;
}

function kindOfNoun(
  view: MessageView,
  at: number,
  classes: readonly WordClass[],
  words: PartWords | undefined,
  feature: string,
): Subject {
  if (isNameHead(view, at, words)) return "part";
  if (isThingAt(view, at, classes, words, feature)) return "thing";
  const cues = words?.cues.get(stemAt(view.tokens, at));
  if (cues !== undefined) return cues.has(feature) ? "feature" : "other feature";
  return classes[at] === "own" || classes[at] === "figure" ? "own" : "foreign";
}

/** Whether a word names a thing of another kind, and neither the part nor the feature. */
export function isThingAt(
  view: MessageView,
  at: number,
  classes: readonly WordClass[],
  words: PartWords | undefined,
  feature: string,
): boolean {
  const stem = stemAt(view.tokens, at);
  if (classes[at] === "talk" || !isOtherThing(stem)) return false;
  return !isNameHead(view, at, words) && words?.cues.get(stem)?.has(feature) !== true;
}

/** "The mirrors" of a door mirror. */
function isNameHead(view: MessageView, at: number, words: PartWords | undefined): boolean {
  const heads = words?.nameHeads;
  return heads?.has(stemAt(view.tokens, at)) === true || heads?.has(wordAt(view, at)) === true;
}

/** The folded word at a place; empty beyond the ends. */
export function wordAt(view: MessageView, at: number): string {
  return foldedAt(view.tokens, at);
}

/** The places from one to another, both included; none when the second stands before the first. */
export function placesFrom(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);
}

/** Nothing but the word itself speaks for the part: neither is named, nor was it asked about. */
export function isUngrounded(seen: Seen): boolean {
  return !(seen.isNamed || seen.isNamedWithin || seen.isSpokenOf || seen.isPartNamed || seen.isAsked);
}
