// The grounds that hearing gives, by the words learnt of a state: how it is heard, and how rather than the others of its sentence.
// Beside the other grounds, because they are nothing for a state that no words were learnt of.
import { groundWords } from "./ground-words.ts";
import { isUngrounded, placesFrom, type Seen, type SeenHeard, wordAt } from "./seen-candidate.ts";

export type Ground = (seen: Seen) => number | boolean;

/** A number as a share of a largest one, from -1 to 1. */
function within(value: number, largest: number): number {
  return Math.max(-1, Math.min(1, value / largest));
}

const largestOdds = 6;

/** A ground by how the state is heard; nothing where no words of it were learnt. */
function hearing(of: (heard: SeenHeard, seen: Seen) => number): Ground {
  return (seen) => (seen.heard === undefined ? 0 : of(seen.heard, seen));
}

/** The same for what nothing but hearing found. */
function hearingAlone(of: (heard: SeenHeard, seen: Seen) => number): Ground {
  return (seen) => (seen.candidate.finder === "heard" && seen.heard !== undefined ? of(seen.heard, seen) : 0);
}

export const groundsOfHearing = {
  "heard so": hearing(({ odds }) => within(odds, largestOdds)),
  "heard surely": hearing(({ odds }) => within(Math.max(0, odds), largestOdds)),
  unheard: hearing(({ odds }) => Number(odds <= -largestOdds)),
  "heard rather than another state": hearing(({ odds, otherState }) =>
    within(odds - otherState, largestOdds),
  ),
  "heard rather than another feature": hearing(({ odds, otherFeature }) =>
    within(odds - otherFeature, largestOdds),
  ),
  "sentence tells": hearing(({ telling }) => within(telling, largestOdds)),
  "message tells": hearing(({ mostTelling }) => within(mostTelling, largestOdds)),
  "heard, asked about it": hearing(({ odds }, { isAsked }) => (isAsked ? within(odds, largestOdds) : 0)),
  "heard, denied words": hearing(({ odds }, { view, candidate: { from, to } }) =>
    placesFrom(from, to).some((at) => groundWords.negations.has(wordAt(view, at)))
      ? within(odds, largestOdds)
      : 0,
  ),
  "heard alone so": hearingAlone(({ odds }) => within(odds, largestOdds)),
  "heard alone surely": hearingAlone(({ odds }) => within(Math.max(0, odds), largestOdds)),
  "heard alone, rather than another state": hearingAlone(({ odds, otherState }) =>
    within(odds - otherState, largestOdds),
  ),
  "heard alone, sentence tells": hearingAlone(({ telling }) => within(telling, largestOdds)),
  "heard alone, asked about it": hearingAlone((_, { isAsked }) => Number(isAsked)),
  "heard alone, asked about another": hearingAlone((_, { view, isAsked }) =>
    Number(view.context.askedFeature !== undefined && !isAsked),
  ),
  "heard alone, feature named": hearingAlone((_, { isNamed }) => Number(isNamed)),
  "heard alone, other facts": hearingAlone((_, { told }) => Math.min(4, Math.max(0, told - 1)) / 4),
  "heard alone, ungrounded": hearingAlone((_, seen) => Number(isUngrounded(seen))),
  "heard alone, one word": hearingAlone((_, { candidate: { from, to } }) => Number(from === to)),
} as const satisfies Readonly<Record<string, Ground>>;
