// What speaks for and against taking a candidate as the speaker's word on the part in hand. No ground names a word of a
// handbook, so that weights learnt with one handbook serve another. The judge weighs them; nothing is decided here.

import { isTagged } from "./asking-clauses.ts";
import type { Clause } from "./clauses.ts";
import { commonWords, isGeneralWord } from "./common-words.ts";
import { numberOf } from "./fold-word.ts";
import type { Candidate } from "./gather-observations.ts";
import { groundWords } from "./ground-words.ts";
import { type Ground, groundsOfHearing } from "./grounds-of-hearing.ts";
import type { MessageView } from "./message-view.ts";
import { isThingAt, isUngrounded, type Seen, seenIn, type Whole, wordAt } from "./seen-candidate.ts";
import { foldedAt, stemAt } from "./tokens.ts";
import type { WordClass } from "./word-classes.ts";

const holds =
  (words: ReadonlySet<string>): Ground =>
  ({ view, beside }) =>
    beside.some((at) => words.has(wordAt(view, at)));
const isFoundBy =
  (finder: Candidate["finder"]): Ground =>
  ({ candidate }) =>
    candidate.finder === finder;
const isSubject =
  (subject: Seen["subject"]): Ground =>
  (seen) =>
    seen.subject === subject;
const isAside =
  (aside: string): Ground =>
  ({ view, candidate }) =>
    view.stances[candidate.clause]?.aside === aside;
const isNext =
  (wanted: WordClass): Ground =>
  ({ view, candidate: { to }, classes }) =>
    touches(view, to + 1) && classes[to + 1] === wanted;

function touches(view: MessageView, at: number): boolean {
  return view.tokens[at]?.breakBefore === "none";
}

function isThing({ view, words, classes, candidate }: Seen, at: number): boolean {
  return isThingAt(view, at, classes, words, candidate.feature);
}

/** The share of its telling words that are everyday English or figures. */
function everyday({ view, said }: Seen): number {
  const isEveryday = (word: string): boolean => commonWords.has(word) || numberOf(word) !== undefined;
  return said.length === 0 ? 0 : said.filter((at) => isEveryday(wordAt(view, at))).length / said.length;
}

function isAskedSentence({ view, clause, candidate, asked }: Seen): boolean {
  // "Mark? none": the question is a heading. "Two screws, right?" wants a nod.
  const isAsking =
    asked.has(clause.sentence) && candidate.finder !== "presence" && !isStatedBefore(view, clause);
  return isAsking && !isTagged(view.clauses, candidate.clause);
}

/** "Three screws, plastic, is it right?", "what is this mirror with two screws?": stated or described, and asked of something else. */
function isStatedBefore({ clauses, tokens }: MessageView, clause: Clause): boolean {
  const first = clauses.find(({ sentence }) => sentence === clause.sentence);
  const isOwnStatement =
    first !== undefined && !clause.isAsked && !groundWords.asking.has(foldedAt(tokens, first.from));
  return isOwnStatement || isDescribing(first);
}

function isDescribing(clause: Clause | undefined): boolean {
  return clause !== undefined && describing.test(clause.text);
}

const describing =
  /^(?:(?:so|and|hi|hello|please|can|could|anyone|somebody|someone|you|tell|me|know) )*(?:what|which)\b(?: \w+){0,6} with\b/;

function opensAsking({ view, clause }: Seen): boolean {
  return groundWords.asking.has(wordAt(view, clause.from)) && !isDescribing(clause);
}

function hasForeignBehind({ view, candidate: { to }, clause, classes }: Seen): boolean {
  for (let at = to + 1; at < clause.to; at += 1) {
    if (!groundWords.prepositions.has(wordAt(view, at))) continue;
    if ([at + 1, at + 2, at + 3].some((noun) => noun <= clause.to && classes[noun] === "foreign"))
      return true;
  }
  return false;
}

/** "He says two screws, mine has three." */
function isSetAgainst({ view, candidate, clause }: Seen): boolean {
  const { stances } = view;
  const isOwn = stances[candidate.clause]?.aside === undefined;
  const isOthers = stances.some(({ aside }) => aside === "hearsay" || aside === "another-car");
  return isOwn && isOthers && /\b(?:mine|my|i|ours|on this one)\b/.test(clause.text);
}

function isAmbiguous({ spotted, candidate }: Seen): boolean {
  const features = (spotted?.phrase.meanings ?? []).flatMap((each) =>
    each.kind === "state" && each.part === candidate.part ? [each.feature] : [],
  );
  return new Set(features).size > 1;
}

function namesAnotherFeature({ view, candidate, isNamedHere, beside }: Seen): boolean {
  const isOther = (each: MessageView["spotted"][number]): boolean =>
    each.phrase.meanings.every(
      (meaning) =>
        meaning.kind === "feature" &&
        meaning.part === candidate.part &&
        meaning.feature !== candidate.feature,
    );
  return !isNamedHere && beside.some((at) => view.phrasesAt.get(at)?.some(isOther) === true);
}

const grounds = {
  "asked about it": ({ isAsked }) => isAsked,
  "asked about another": ({ view, isAsked }) => view.context.askedFeature !== undefined && !isAsked,
  "feature named in clause": ({ isNamedHere }) => isNamedHere,
  "feature named in message": ({ isNamed }) => isNamed,
  "feature named within": ({ isNamedWithin }) => isNamedWithin,
  "feature spoken of": ({ isSpokenOf }) => isSpokenOf,
  "cue in clause": ({ view, beside, words, candidate }) =>
    beside.some((at) => words?.cues.get(stemAt(view.tokens, at))?.has(candidate.feature) === true),
  "another feature named": namesAnotherFeature,
  "part named in message": ({ isPartNamed }) => isPartNamed,
  "other part named": ({ partsNamed, candidate }) => [...partsNamed].some((each) => each !== candidate.part),
  "no case in hand": ({ view }) => view.context.part === undefined,
  ungrounded: isUngrounded,
  "ungrounded, one word": (seen) => isUngrounded(seen) && seen.said.length <= 1,
  "ungrounded, no other fact": (seen) => isUngrounded(seen) && seen.told <= 1,
  "ungrounded, foreign words": (seen) => isUngrounded(seen) && seen.foreign > 0,
  "ungrounded, everyday words": (seen) => (isUngrounded(seen) ? everyday(seen) : 0),
  "two words": ({ said }) => said.length === 2,
  "three words": ({ said }) => said.length > 2,
  "general word": ({ view, said }) => said.length === 1 && isGeneralWord(wordAt(view, said[0] ?? 0)),
  "everyday words": everyday,
  "figures alone": ({ view, said }) =>
    said.length > 0 && said.every((at) => numberOf(wordAt(view, at)) !== undefined),
  misspelt: ({ view, spotted, said }) =>
    (spotted?.edits ?? 0) > 0 || said.some((at) => view.words[at] !== view.tokens[at]?.stem),
  saying: ({ spotted }) => spotted?.phrase.isSaying === true,
  "saying of one word": ({ spotted }) =>
    spotted?.phrase.isSaying === true && spotted.phrase.stems.length === 1,
  stretched: ({ spotted }) => spotted !== undefined && spotted.to - spotted.from > spotted.used.length,
  ambiguous: isAmbiguous,
  loose: isFoundBy("loose"),
  carried: isFoundBy("carried"),
  "named feature": isFoundBy("named"),
  presence: isFoundBy("presence"),
  "heard alone": isFoundBy("heard"),
  ...groundsOfHearing,
  "answer by word": isFoundBy("word"),
  "answer by nod": isFoundBy("nod"),
  "answer by nearness": isFoundBy("nearness"),
  denied: ({ candidate }) => candidate.isDenied,
  "foreign words in clause": ({ foreign }) => Math.min(foreign, 5) / 5,
  "any foreign word in clause": ({ foreign }) => foreign > 0,
  "foreign share of clause": ({ foreign, beside }) => (beside.length === 0 ? 0 : foreign / beside.length),
  "foreign share of message": ({ share }) => share.foreign,
  "own share of message": ({ share }) => share.own,
  "prose share of message": ({ share }) => share.prose,
  "subject: the feature": isSubject("feature"),
  "subject: another feature": isSubject("other feature"),
  "subject: the part": isSubject("part"),
  "subject: a word of the part": isSubject("own"),
  "subject: another thing": isSubject("thing"),
  "subject: foreign": isSubject("foreign"),
  "subject: pronoun": isSubject("pronoun"),
  "subject: speaker": isSubject("first"),
  "subject: somebody": isSubject("third"),
  "state within subject": ({ subject, verb, candidate }) => subject !== undefined && verb > candidate.to,
  "other thing in clause": (seen) => seen.beside.some((at) => isThing(seen, at)),
  "other thing owned": (seen) =>
    seen.beside.some((at) => isThing(seen, at) && groundWords.owners.has(wordAt(seen.view, at - 1))),
  "other things in message": (seen) => Math.min(3, seen.things.filter((at) => isThing(seen, at)).length) / 3,
  "other thing follows": (seen) =>
    touches(seen.view, seen.candidate.to + 1) && isThing(seen, seen.candidate.to + 1),
  "foreign word follows": isNext("foreign"),
  "own word follows": isNext("own"),
  "prose word follows": isNext("prose"),
  "foreign word before": ({ view, candidate: { from }, classes }) =>
    touches(view, from) && classes[from - 1] === "foreign",
  "foreign place behind": hasForeignBehind,
  "foreign word owned": ({ view, beside, classes }) =>
    beside.some((at) => classes[at] === "foreign" && groundWords.owners.has(wordAt(view, at - 1))),
  "foreign word with article": ({ view, beside, classes }) =>
    beside.some((at) => classes[at] === "foreign" && /^(?:the|a|an)$/.test(wordAt(view, at - 1))),
  "other facts": ({ told }) => Math.min(4, Math.max(0, told - 1)) / 4,
  "no other fact": ({ told }) => told <= 1,
  "short message": ({ view }) => view.tokens.length <= 6,
  "long message": ({ view }) => view.tokens.length > 25,
  "asked sentence": isAskedSentence,
  "opens asking": opensAsking,
  "asks outright": (seen) => isAskedSentence(seen) && opensAsking(seen),
  doubted: ({ view, candidate }) => (view.stances[candidate.clause]?.certainty ?? 1) < 1,
  "verb before": ({ view, candidate: { from }, clause }) =>
    [1, 2, 3].some((back) => from - back >= clause.from && groundWords.verbs.has(wordAt(view, from - back))),
  "first person": holds(groundWords.firstPerson),
  "second person": holds(groundWords.secondPerson),
  "third person": holds(groundWords.thirdPerson),
  past: holds(groundWords.past),
  business: holds(groundWords.business),
  times: holds(groundWords.times),
  generic: holds(groundWords.generic),
  wish: holds(groundWords.wishes),
  negation: holds(groundWords.negations),
  hearsay: isAside("hearsay"),
  question: isAside("question"),
  "another car": isAside("another-car"),
  "set against another's word": isSetAgainst,
  "nothing but talk beside": ({ beside, classes }) => beside.every((at) => classes[at] === "talk"),
} as const satisfies Readonly<Record<string, Ground>>;

export type GroundName = keyof typeof grounds;

/** The names of all grounds, in the order of the table. */
export const groundNames = Object.keys(grounds) as readonly GroundName[];

/** The grounds of a candidate in the order of their names, each between -1 and 1. */
export interface Grounds {
  readonly values: readonly number[];
  /** Words of its state were learnt: other weights hold then. */
  readonly isHeard: boolean;
}

export function groundsOf(view: MessageView, candidate: Candidate, whole: Whole): Grounds {
  const seen = seenIn(view, candidate, whole);
  return {
    values: groundNames.map((name) => Number(grounds[name](seen))),
    isHeard: seen.heard !== undefined,
  };
}
