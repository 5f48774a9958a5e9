// Questions about wheels: rim designation and back space, test marks.

import { parsePlainNumber, sayNumber } from "../plain-numbers.ts";
import { readOffset, readRimDesignation, WHEEL_MARKS } from "../rim-designation.ts";
import type { TradeReading } from "../trade-reading.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const CAUTIONS = ["wheel"] as const;

/** "6J x 15 ET30 backspace". */
export const rimTopic: TopicReader = (question) => {
  const cue = /back[- ]?spac|offset|\bet ?[+-]?\d|\brims?\b|\bwheels?\b|mean|width|flange|decode/;
  if (!question.mayBeAnswered || !cue.test(question.lower)) return undefined;
  const rim = readRimDesignation(question.text);
  const asksOffset = question.isAsking && /\bmean|\bwhat\b/.test(question.lower);
  const offset = rim === undefined && asksOffset ? readOffset(question.text) : undefined;
  return topicAnswer("rim", rim?.readings ?? (offset === undefined ? [] : [offset]), {
    cannotSay: "The designation says what fits, not who made the wheel; cast date and maker stand elsewhere.",
    lookNext: "Look at the back for a casting dial or grid, and near a spoke root for size and offset.",
    cautions: CAUTIONS,
  });
};

/** "7x15 with 4 inch backspace, what offset": offset = back space − (width + 1 inch) × 12.7. */
export const backSpaceTopic: TopicReader = (question) => {
  const width = /(?<![\w.])(\d(?:[.,]\d)?) ?j? ?x ?1\d\b/.exec(question.lower)?.[1];
  const space = /(\d(?:[.,]\d{1,2})?) ?(?:inch(?:es)?|in|") (?:of )?back[- ]?spac/.exec(question.lower)?.[1];
  const inches = parsePlainNumber(space ?? "");
  const rim = parsePlainNumber(width ?? "");
  if (!question.mayBeAnswered || inches === undefined || rim === undefined) return undefined;
  const offset = inches * 25.4 - (rim + 1) * 12.7;
  const reading: TradeReading = {
    reading: `back space ${sayNumber(inches, 2)} inches on a rim ${sayNumber(rim, 1)} inches wide: offset about ${sayNumber(offset, 0)} mm`,
    why: "back space − (width + 1 inch) ÷ 2; the inch is for both flanges, give or take 2 mm",
    basis: "arithmetic",
  };
  return topicAnswer("rim", [reading], {
    cannotSay: "The flange's own thickness shifts it by a millimetre or two.",
    lookNext: "Look for ET and figures near a spoke root on the back.",
    cautions: CAUTIONS,
  });
};

/** "what does JWL on my wheel mean". */
export const wheelMarkTopic: TopicReader = (question) => {
  const isAbout = /\bjwl(?:-t)?\b|\bvia\b.{0,20}\b(?:mark|stamp|wheel)|wheel.{0,30}\bvia\b/.test(
    question.lower,
  );
  // "The JWL thread" is talk of a forum's; "no JWL" denies the mark.
  const isSaid = /\bjwl thread\b|\bnot say jwl\b/.test(question.lower);
  if (!question.isAsking || !question.mayBeAnswered || !isAbout || isSaid) return undefined;
  return topicAnswer("wheel marks", WHEEL_MARKS, {
    cannotSay: "These marks name a standard and a test, not a maker of cars; copies carry them too.",
    lookNext: "Look at the back of the wheel for the casting dial, heat number and pattern of ribs.",
    cautions: CAUTIONS,
  });
};
