/** Somebody who cannot look, three times in a row, is shown what can be done without looking. */
import type { Block } from "../../reply.ts";
import type { CaseFacts } from "../case.ts";
import { choiceLabels } from "../phrases/answer.ts";
import { outOfReach } from "../phrases/question.ts";

const timesInARow = 3;

/** The offer, each third time that "cannot tell" was said; undefined otherwise. */
export function sayWayOut(before: CaseFacts, after: CaseFacts): Block | undefined {
  const was = cannotTells(before);
  const now = cannotTells(after);
  if (now <= was || now % timesInARow !== 0) return undefined;
  return {
    kind: "choices",
    choices: [
      { id: "photographs", label: outOfReach, say: "what photographs should I ask for?" },
      { id: "keeper", label: choiceLabels.keeper, say: "where do I go from here?" },
    ],
  };
}

function cannotTells({ reports, unanswerable }: CaseFacts): number {
  return unanswerable.length + reports.filter((report) => report.value.kind === "cannot-tell").length;
}
