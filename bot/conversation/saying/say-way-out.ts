/** Somebody who cannot look, is shown early, in one line, what can be done without looking. */
import type { Block } from "../../reply.ts";
import { type CaseFacts, cannotTells } from "../case.ts";
import { choiceLabels } from "../phrases/answer.ts";
import { outOfReach } from "../phrases/question.ts";

/** Once may be a hidden corner; twice is somebody who is not beside the car. */
const timesBefore = 2;

/** The offer, from the second "cannot tell" on with each; undefined otherwise. */
export function sayWayOut(before: CaseFacts, after: CaseFacts): Block | undefined {
  const now = cannotTells(after);
  if (now < timesBefore || now <= cannotTells(before)) return undefined;
  return {
    kind: "choices",
    choices: [
      { id: "photographs", label: outOfReach, say: "what photographs should I ask for?" },
      { id: "keeper", label: choiceLabels.keeper, say: choiceLabels.keeper },
    ],
  };
}
