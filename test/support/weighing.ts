/** Tables for the judge with a few grounds weighed, so that what it makes of weights is tested whatever was learnt. */
import { type GroundName, groundNames } from "../../knowledge/language/grounds.ts";
import type { JudgeTable, Judging } from "../../knowledge/language/judging.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import { type MessageGroundName, messageGroundNames } from "../../knowledge/language/message-grounds.ts";

/** A bias in nats, and the weights of some grounds; the others weigh nothing. */
export function weighing(
  bias: number,
  weights: Partial<Readonly<Record<GroundName, number>>> = {},
): JudgeTable {
  return { bias, weights: groundNames.map((name) => weights[name] ?? 0) };
}

export function weighingMessages(
  bias: number,
  weights: Partial<Readonly<Record<MessageGroundName, number>>> = {},
): JudgeTable {
  return { bias, weights: messageGroundNames.map((name) => weights[name] ?? 0) };
}

/** The odds of a probability, nats. */
export function nats(probability: number): number {
  return Math.log(probability / (1 - probability));
}

/** A lexicon whose judge believes everything, but for the tables given. */
export function judgedBy(lexicon: Lexicon, judging: Partial<Judging> = {}): Lexicon {
  const sure = weighing(9);
  return {
    ...lexicon,
    judging: { plain: sure, heard: sure, plainMessages: sure, heardMessages: sure, ...judging },
  };
}
