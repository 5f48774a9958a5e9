// Decides for each candidate whether it is the speaker's word on the part in hand: a logistic model over grounds that know
// no handbook. What is likely is taken, what may be meant is asked back, the rest is left. The weights are learnt.
import type { Candidate } from "./gather-observations.ts";
import { groundNames, groundsOf } from "./grounds.ts";
import { bias, judgeWeights } from "./judge-weights.ts";
import type { MessageView } from "./message-view.ts";
import { wholeOf } from "./seen-candidate.ts";

/**
 * Taken from this probability on: chosen on the development half, each writer judged by weights learnt from the others;
 * higher loses more facts than it spares assertions.
 */
const takenFrom = 0.4;
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

/** Parts the candidates of one message; `others`: facts that were taken before. */
export function judge(view: MessageView, candidates: readonly Candidate[], others = 0): Judged {
  if (candidates.length === 0) return { taken: [], doubtful: [] };
  const whole = wholeOf(view, candidates, others);
  const weighed = candidates.slice(0, mostWeighed).map((each) => ({
    ...each,
    probability: probabilityOf(groundsOf(view, each, whole)),
  }));
  const told = new Set(weighed.filter(isTaken).map(({ feature }) => feature));
  // A feature that is told keeps its doubtful rivals: "two on the left, three on the right" tells neither.
  const taken = weighed.filter((each) => isTaken(each) || (told.has(each.feature) && isAskedBack(each)));
  return { taken, doubtful: weighed.filter((each) => !taken.includes(each) && isAskedBack(each)) };
}

function isTaken({ probability }: WeighedCandidate): boolean {
  return probability >= takenFrom;
}

function isAskedBack({ probability }: WeighedCandidate): boolean {
  return probability >= askedFrom;
}

const weights: readonly number[] = groundNames.map((name) => judgeWeights[name]);

/** 1 / (1 + e^-z), z being the bias and the sum of the weighted grounds. */
function probabilityOf(grounds: readonly number[]): number {
  const logit = grounds.reduce((sum, ground, at) => sum + ground * (weights[at] ?? 0), bias);
  return 1 / (1 + Math.exp(-logit));
}
