/**
 * Everything in a reply that can be pressed, numbered in reading order. The same reply gives the same numbers, so that a
 * pressed button can be looked up in the reply it was offered with.
 */
import type { Choice, PressedAnswer, QuestionBlock, Reply } from "../../bot/index.ts";

export type Control =
  | { readonly does: "answer"; readonly label: string; readonly answer: PressedAnswer }
  | { readonly does: "say"; readonly label: string; readonly say: string }
  /** Its words end in an ellipsis: the person completes them. */
  | { readonly does: "complete"; readonly label: string; readonly say: string };

export interface Controls {
  readonly question: QuestionBlock | undefined;
  readonly answers: readonly Control[];
  readonly besides: readonly Control[];
  readonly choices: readonly Control[];
}

/** Of several questions the last is the open one; there is at most one by the rules of speech. */
export function controlsOf({ blocks }: Pick<Reply, "blocks">): Controls {
  const question = blocks.findLast((block) => block.kind === "question");
  return {
    question,
    answers: (question?.answers ?? []).map((choice) => answerOf(question?.feature ?? "", choice)),
    besides: (question?.besides ?? []).map((choice) => besideOf(question?.feature ?? "", choice)),
    choices: blocks.flatMap((block) => (block.kind === "choices" ? block.choices.map(sayOf) : [])),
  };
}

export function numbered({ answers, besides, choices }: Controls): readonly Control[] {
  return [...answers, ...besides, ...choices];
}

function answerOf(feature: string, { id, label }: Choice): Control {
  return { does: "answer", label, answer: { feature, state: id } };
}

function besideOf(feature: string, choice: Choice): Control {
  if (choice.id !== "cannot-tell") return sayOf(choice);
  return { does: "answer", label: choice.label, answer: { feature, cannotTell: true } };
}

function sayOf({ label, say }: Choice): Control {
  return /(?:…|\.\.\.)\s*$/u.test(say) ? { does: "complete", label, say } : { does: "say", label, say };
}
