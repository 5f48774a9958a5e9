// Decides for each candidate whether it is the speaker's word on the part in hand: a logistic model over grounds that know
// no handbook. What is likely is taken, what may be meant is asked back, the rest is left. The weights are learnt.
import type { Candidate } from "./gather-observations.ts";
import { type GroundName, groundsOf, wholeOf } from "./grounds.ts";
import { bias, weights } from "./judge-weights.ts";
import type { MessageView } from "./message-view.ts";

/** Taken from this probability on. Chosen on the development half: the highest that loses under one fact in fifty. */
export const takenFrom = 0.4;
/** Asked back from this probability on. */
export const askedFrom = 0.15;

export interface Weighed extends Candidate {
  readonly probability: number;
}

export interface Judged {
  readonly taken: readonly Weighed[];
  /** Asked back rather than asserted. */
  readonly doubtful: readonly Weighed[];
}

/** Parts the candidates of one message; `others`: facts that were taken before and speak for the rest. */
export function judge(view: MessageView, candidates: readonly Candidate[], others = 0): Judged {
  const whole = wholeOf(view, candidates, others);
  const weighed = candidates.map((each) => ({
    ...each,
    probability: probabilityOf(groundsOf(view, each, whole)),
  }));
  const told = new Set(weighed.filter(isTaken).map(({ feature }) => feature));
  // A feature that is told keeps its doubtful rivals: "two on the left, three on the right" tells neither.
  const taken = weighed.filter((each) => isTaken(each) || (told.has(each.feature) && isAsked(each)));
  return { taken, doubtful: weighed.filter((each) => !taken.includes(each) && isAsked(each)) };
}

function isTaken({ probability }: Weighed): boolean {
  return probability >= takenFrom;
}

function isAsked({ probability }: Weighed): boolean {
  return probability >= askedFrom;
}

/** 1 / (1 + e^-(bias + sum of weights times grounds)). */
export function probabilityOf(grounds: Readonly<Record<GroundName, number>>): number {
  let logit = bias;
  for (const name in weights) logit += weights[name as GroundName] * grounds[name as GroundName];
  return 1 / (1 + Math.exp(-logit));
}
