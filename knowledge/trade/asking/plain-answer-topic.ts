// Questions whose answer is a sentence of the table of plain answers. It comes after every decoder, and never answers
// about a part in hand ("mine", "this one").
import { PLAIN_ANSWERS } from "../tables/plain-answers.ts";
import { basisOf } from "../trade-reading.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

/** "how do I read a tyre date code", "difference between E and e mark". */
export const plainAnswerTopic: TopicReader = (question) => {
  const isAboutOne = /\bmine\b|\bthis one\b|\bthese ones?\b/.test(question.lower);
  if (!question.isAsking || !question.mayBeAnswered || isAboutOne) return undefined;
  const rows = PLAIN_ANSWERS.filter((row) => row.cues.every((cue) => cue.test(question.lower)));
  const [first] = rows;
  if (first === undefined) return undefined;
  const readings = rows
    .filter((row) => row.topic === first.topic)
    .map((row) => ({ reading: row.answer, why: row.why, basis: basisOf(row) }));
  return topicAnswer(first.topic, readings, {
    cannotSay: "This is the general rule of the trade; it does not know the part in your hand.",
    lookNext: "Tell me the mark as it stands, and on what part, and I read that one.",
  });
};
