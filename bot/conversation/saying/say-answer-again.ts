/** A fact told after the answer: in full when it turns the answer, else in two lines, for nobody reads it twice. */
import { sayProbability } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { assess } from "../assess.ts";
import type { Assessed } from "../assessed.ts";
import type { CaseFacts } from "../case.ts";
import type { Knowledge } from "../knowledge.ts";
import { stillSo } from "../phrases/answer.ts";
import { headline, sayAnswer, verdictBlocks } from "./say-answer.ts";

/** The answer after a turn; `before`: the facts as they were when it was last given, if it was. */
export function sayAnswerAgain(
  knowledge: Knowledge,
  assessed: Assessed,
  before: CaseFacts,
): readonly Block[] {
  const wasAnswered =
    before.open === null && before.part === assessed.facts.part && before.goal === assessed.goal;
  const whole = () => sayAnswer(knowledge, assessed);
  if (!wasAnswered) return whole();
  const earlier = assess(assessed.compiled, before);
  if (assessed.goal === "what-should-it-have") {
    const isTheSame = JSON.stringify(sayAnswer(knowledge, earlier)) === JSON.stringify(whole());
    return isTheSame ? [{ kind: "text", text: stillSo(undefined) }] : whole();
  }
  const was = headline(earlier);
  const now = headline(assessed);
  const isSame =
    now !== null &&
    was?.class === now.class &&
    earlier.identification.ranking[0]?.variant === assessed.identification.ranking[0]?.variant;
  if (!isSame) return whole();
  const wasWords = sayProbability(was.probability);
  const hasMoved = wasWords !== sayProbability(now.probability);
  const line: Block = { kind: "text", text: stillSo(hasMoved ? wasWords : undefined) };
  return [line, ...verdictBlocks(assessed)];
}
