// How likely each candidate is the speaker's word on the part in hand: a logistic model over grounds that know no handbook.
import type { Candidate } from "./gather-observations.ts";
import { groundsOf } from "./grounds.ts";
import type { JudgeTable } from "./judging.ts";
import type { MessageView } from "./message-view.ts";
import type { Whole } from "./seen-candidate.ts";

export interface WeighedCandidate extends Candidate {
  readonly probability: number;
  /** Words of its state were learnt. */
  readonly isHeard: boolean;
  /** Odds by the grounds that know no learnt words, nats. */
  readonly unheard: number;
  /** Said in a few plain words. */
  readonly isPlain: boolean;
}

/** Odds of what cannot tell. */
const largestOdds = 6;

/** Most candidates weighed in one message. */
const mostWeighed = 200;

/** The candidates of one message with their probabilities, in their order. */
export function weighCandidates(
  view: MessageView,
  candidates: readonly Candidate[],
  whole: Whole,
): readonly WeighedCandidate[] {
  return asChoices(
    view,
    candidates.slice(0, mostWeighed).map((each) => weighed(view, each, whole)),
  );
}

function weighed(view: MessageView, candidate: Candidate, whole: Whole): WeighedCandidate {
  // What others say, wishes and supposes is nobody's word on the part, however it is put.
  const mayTell = view.stances[candidate.clause]?.mayTell ?? true;
  if (!mayTell)
    return { ...candidate, probability: 0, isHeard: false, unheard: -largestOdds, isPlain: false };
  const { plain, heard } = view.lexicon.judging;
  const { values, isHeard } = groundsOf(view, candidate, whole);
  const unheard = oddsBy(plain, values);
  const isSaidPlainly = unheard >= plainFrom && isPlain(view, candidate, whole);
  const seen = { ...candidate, isHeard, unheard, isPlain: isSaidPlainly };
  if (!isHeard) return { ...seen, probability: shareOf(unheard) };
  const odds = oddsBy(heard, values);
  const isBelieved = isSaidPlainly && odds >= leastHeard;
  return { ...seen, probability: shareOf(isBelieved ? Math.max(odds, unheard) : odds) };
}

/** "Two or three screws": who leaves it open tells both or neither. */
function asChoices(view: MessageView, candidates: readonly WeighedCandidate[]): readonly WeighedCandidate[] {
  const isEither = (one: WeighedCandidate, other: WeighedCandidate): boolean =>
    one.feature === other.feature &&
    one.clause === other.clause &&
    one.state !== other.state &&
    !one.isDenied &&
    !other.isDenied &&
    view.tokens
      .slice(Math.min(one.to, other.to), Math.max(one.from, other.from) + 1)
      .some(({ folded }) => folded === "or");
  return candidates.map((each) => {
    const others = candidates.filter((other) => isEither(each, other)).map(({ probability }) => probability);
    return { ...each, probability: Math.max(each.probability, ...others) };
  });
}

/**
 * A few plain words about the part are what they say, though nobody put them so among those who taught their words, and so
 * are a clause's only words: "rear spoiler, rough inside, …". What only hearing found has no such words.
 */
const mostPlainWords = 14;
const mostForeign = 0.2;
/** Nats from which on the plain table is believed of them, and at least for the words that were learnt. */
const plainFrom = 1.5;
const leastHeard = -2.5;

function isPlain(view: MessageView, candidate: Candidate, whole: Whole): boolean {
  if (candidate.finder === "heard" || whole.share.foreign > mostForeign) return false;
  if (view.stances[candidate.clause]?.aside !== undefined) return false;
  return view.tokens.length <= mostPlainWords || isNamedAlone(view, candidate, whole);
}

/** Whether its clause says nothing but the state's own name, talk aside, in a message that names the part. */
function isNamedAlone(
  view: MessageView,
  { clause, part, finder, from, to }: Candidate,
  whole: Whole,
): boolean {
  const place = view.clauses[clause];
  if (place === undefined || part === null || finder !== "name" || !whole.partsNamed.has(part)) return false;
  const isBeside = (_: unknown, at: number): boolean =>
    at >= place.from && at <= place.to && (at < from || at > to);
  return view.tokens.every((token, at) => !isBeside(token, at) || whole.classes[at] === "talk");
}

/** The bias and the sum of the weighted grounds, nats. */
export function oddsBy({ bias, weights }: JudgeTable, values: readonly number[]): number {
  return values.reduce((sum, ground, at) => sum + ground * (weights[at] ?? 0), bias);
}

/** 1 / (1 + e^-z). */
export function shareOf(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}
