// Questions about wheels: rim designation and back space, test marks.
import { readOffset, readRimDesignation, WHEEL_MARKS } from "../rim-designation.ts";
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

/** "what does JWL on my wheel mean". */
export const wheelMarkTopic: TopicReader = (question) => {
  const isAbout = /\bjwl(?:-t)?\b|\bvia\b.{0,20}\b(?:mark|stamp|wheel)|wheel.{0,30}\bvia\b/.test(
    question.lower,
  );
  if (!question.isAsking || !question.mayBeAnswered || !isAbout) return undefined;
  return topicAnswer("wheel marks", WHEEL_MARKS, {
    cannotSay: "These marks name a standard and a test, not a maker of cars; copies carry them too.",
    lookNext: "Look at the back of the wheel for the casting dial, heat number and pattern of ribs.",
    cautions: CAUTIONS,
  });
};
