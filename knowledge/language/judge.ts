// Decides for each candidate whether it is the speaker's word on the part in hand. What is likely is taken, in a message that
// is likely to tell anything at all; what may be meant is asked back, the rest is left. The weights are learnt.
import type { Candidate } from "./gather-observations.ts";
import { messageGroundsOf } from "./message-grounds.ts";
import type { MessageView } from "./message-view.ts";
import { type Whole, wholeOf } from "./seen-candidate.ts";
import { oddsBy, shareOf, type WeighedCandidate, weighCandidates } from "./weighed-candidates.ts";

/** Taken from this probability on. */
export const takenFrom = 0.5;
/**
 * In a message that tells anything with this probability: chosen on the development half, each writer judged by what others
 * taught. It spares half of the assertions in messages without a fact and costs .004 of F1. See `message-grounds.ts`.
 */
const tellingFrom = 0.8;
/** Asked back from this probability on. */
const askedFrom = 0.2;

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
  const weighed = weighCandidates(view, candidates, whole);
  const isTelling = others > 0 || tells(view, weighed, whole, figures);
  const isTaken = ({ probability }: WeighedCandidate): boolean => isTelling && probability >= takenFrom;
  const told = new Set(weighed.filter(isTaken).map(({ feature }) => feature));
  // A feature that is told keeps its doubtful rivals: "two on the left, three on the right" tells neither.
  const taken = weighed.filter((each) => isTaken(each) || (told.has(each.feature) && isAskedBack(each)));
  return { taken, doubtful: weighed.filter((each) => !taken.includes(each) && isAskedBack(each)) };
}

function isAskedBack({ probability }: WeighedCandidate): boolean {
  return probability >= askedFrom;
}

/** "The drain notches are still there": a feature that is said to be there or not is spoken of. */
const presentFrom = 0.75;
/** "IIRC it had two screws": so few words hold no other that could speak for the message. */
const mostOfStatement = 6;
const stated = { from: 0.88, oddsByNames: 1.75 };

function isStatement(
  view: MessageView,
  { finder, isPlain, unheard, probability }: WeighedCandidate,
): boolean {
  if (finder === "presence" && probability >= presentFrom) return true;
  const isBrief = view.tokens.length <= mostOfStatement;
  return isBrief && isPlain && unheard >= stated.oddsByNames && probability >= stated.from;
}

/** Whether a message is likely to tell anything of the part in hand. */
function tells(
  view: MessageView,
  weighed: readonly WeighedCandidate[],
  whole: Whole,
  figures: number,
): boolean {
  if (weighed.some((each) => isStatement(view, each))) return true;
  const { values, isHeard } = messageGroundsOf(view, weighed, whole, figures);
  const { plainMessages, heardMessages } = view.lexicon.judging;
  return shareOf(oddsBy(isHeard ? heardMessages : plainMessages, values)) >= tellingFrom;
}
