/**
 * Which message a reply is shown in: one message is edited while a case moves, as long as whoever speaks has it before their eyes. An
 * answer that has been given stays, and what is said beside the case stands by itself; neither is written over.
 */
import type { Reply } from "../../bot/index.ts";
import { ofCase, type Rendered } from "./render.ts";
import type { Board, Shown } from "./shown.ts";

/** How something came to be said. */
export type Said =
  | { readonly by: "pressing"; readonly board: Board }
  | { readonly by: "writing"; readonly message: number; readonly inAnswerTo?: number }
  /** Nobody spoke: a notice. */
  | { readonly by: "nobody" };

export type Showing =
  | { readonly where: "in"; readonly board: Board }
  /** Below, while the question stays where it is open. */
  | { readonly where: "beside" }
  | { readonly where: "below" };

/** So many messages up, a message is still on the screen of a telephone. */
const inSight = 4;

type Speaking = { readonly said: Said; readonly person: number | null };

export function showingOf(shown: Shown, reply: Reply, rendered: Rendered, speaking: Speaking): Showing {
  const board = rendered.pages.length === 0 ? undefined : boardOf(shown, reply, speaking.said);
  if (board === undefined || board.case !== reply.summary.case) return { where: "below" };
  if (takesThePlaceOf(board, rendered, speaking)) return { where: "in", board };
  const isSameQuestion = rendered.question !== null && rendered.question === board.question;
  return { where: isSameQuestion ? "beside" : "below" };
}

function takesThePlaceOf(board: Board, rendered: Rendered, { said, person }: Speaking): boolean {
  const isSameSubject = rendered.subject !== null && rendered.subject === board.subject;
  const isOpenStill = rendered.question !== null || !isToStay(board);
  if (said.by === "pressing" && board.person === person) {
    return isToStay(board) ? isSameSubject && rendered.question !== null : true;
  }
  // By words, or by somebody else's press: only what goes on with what is shown.
  const goesOn = rendered.movesCase || (rendered.question !== null && rendered.question !== board.question);
  return isSameSubject && goesOn && isOpenStill;
}

/** An answer that was given, or what was told to all. */
function isToStay({ subject, question, person }: Board): boolean {
  return person === null || (subject === ofCase && question === null);
}

function boardOf({ boards }: Shown, { summary }: Reply, said: Said): Board | undefined {
  if (said.by === "nobody") return undefined;
  if (said.by === "pressing") return boards.find(({ key }) => key === said.board.key) ?? said.board;
  const ofCase = boards.findLast((board) => board.case === summary.case && board.messages.length > 0);
  const newest = Math.max(...(ofCase?.messages ?? [0]));
  const isAnswer = said.inAnswerTo !== undefined && ofCase?.messages.includes(said.inAnswerTo) === true;
  return isAnswer || said.message - newest <= inSight ? ofCase : undefined;
}
