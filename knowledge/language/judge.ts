// Decides for each candidate whether it is the speaker's word on the part in hand: a logistic model over grounds that know
// no handbook. What is likely is taken, what may be meant is asked back, the rest is left. The weights are learnt.
import type { Candidate } from "./gather-observations.ts";
import { groundsOf } from "./grounds.ts";
import type { JudgeTable } from "./judging.ts";
import type { MessageView } from "./message-view.ts";
import { type Whole, wholeOf } from "./seen-candidate.ts";

/**
 * Taken from this probability on, in a message that tells something as surely as `surelyFrom` or in figures. Chosen on the
 * development half, each writer judged by what others taught: the second figure spares four in ten of the assertions in
 * messages without a fact and loses none of F1.
 */
const takenFrom = 0.5;
const surelyFrom = 0.75;
/** Asked back from this probability on. */
const askedFrom = 0.2;

/** Most candidates weighed in one message. */
const mostWeighed = 200;

export interface WeighedCandidate extends Candidate {
  readonly probability: number;
}

export interface Judged {
  readonly taken: readonly WeighedCandidate[];
  /** Asked back rather than asserted. */
  readonly doubtful: readonly WeighedCandidate[];
}

/** Parts the candidates of one message; `others`: facts that were taken before; `figures`: sizes and dates that it tells. */
export function judge(
  view: MessageView,
  candidates: readonly Candidate[],
  { others = 0, figures = 0 }: { readonly others?: number; readonly figures?: number } = {},
): Judged {
  if (candidates.length === 0) return { taken: [], doubtful: [] };
  const whole = wholeOf(view, candidates, others);
  const weighed = asChoices(
    view,
    candidates.slice(0, mostWeighed).map((each) => ({
      ...each,
      probability: mayTell(view, each) ? probabilityOf(view, each, whole) : 0,
    })),
  );
  const isTelling = others + figures > 0 || weighed.some(({ probability }) => probability >= surelyFrom);
  const isTaken = ({ probability }: WeighedCandidate): boolean => isTelling && probability >= takenFrom;
  const told = new Set(weighed.filter(isTaken).map(({ feature }) => feature));
  // A feature that is told keeps its doubtful rivals: "two on the left, three on the right" tells neither.
  const taken = weighed.filter((each) => isTaken(each) || (told.has(each.feature) && isAskedBack(each)));
  return { taken, doubtful: weighed.filter((each) => !taken.includes(each) && isAskedBack(each)) };
}

/** "Two or three screws": who leaves it open tells both or neither. */
function asChoices(view: MessageView, weighed: readonly WeighedCandidate[]): readonly WeighedCandidate[] {
  const isEither = (one: WeighedCandidate, other: WeighedCandidate): boolean =>
    one.feature === other.feature &&
    one.clause === other.clause &&
    one.state !== other.state &&
    !one.isDenied &&
    !other.isDenied &&
    view.tokens
      .slice(Math.min(one.to, other.to), Math.max(one.from, other.from) + 1)
      .some(({ folded }) => folded === "or");
  return weighed.map((each) => {
    const others = weighed.filter((other) => isEither(each, other)).map(({ probability }) => probability);
    return { ...each, probability: Math.max(each.probability, ...others) };
  });
}

/** What others say, wishes and supposes is nobody's word on the part, however it is put. */
function mayTell({ stances }: MessageView, { clause }: Candidate): boolean {
  return stances[clause]?.mayTell ?? true;
}

function isAskedBack({ probability }: WeighedCandidate): boolean {
  return probability >= askedFrom;
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

function probabilityOf(view: MessageView, candidate: Candidate, whole: Whole): number {
  const { plain, heard } = view.lexicon.judging;
  const { values, isHeard } = groundsOf(view, candidate, whole);
  const [odds, unheard] = [oddsBy(heard, values), oddsBy(plain, values)];
  if (!isHeard) return shareOf(unheard);
  const isShort = view.tokens.length <= mostPlainWords || isNamedAlone(view, candidate, whole);
  const isPlain = candidate.finder !== "heard" && isShort && whole.share.foreign <= mostForeign;
  const isOwn = view.stances[candidate.clause]?.aside === undefined;
  return shareOf(
    isPlain && isOwn && unheard >= plainFrom && odds >= leastHeard ? Math.max(odds, unheard) : odds,
  );
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

/** The bias and the sum of the weighted grounds. */
function oddsBy({ bias, weights }: JudgeTable, values: readonly number[]): number {
  return values.reduce((sum, ground, at) => sum + ground * (weights[at] ?? 0), bias);
}

/** 1 / (1 + e^-z). */
function shareOf(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}
