/**
 * Which message a reply is shown in: one message is edited while a case moves, as long as whoever speaks has it before their eyes. An
 * answer that has been given stays, and what is said beside the case stands by itself; neither is written over.
 */
import type { Reply } from "../../bot/index.ts";
import type { Rendered } from "./render.ts";
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

export function showingOf(shown: Shown, reply: Reply, rendered: Rendered, said: Said): Showing {
  const board = rendered.pages.length === 0 ? undefined : boardOf(shown, reply, said);
  if (board === undefined || board.case !== reply.summary.case) return { where: "below" };
  const isOpen = board.question !== null || rendered.question !== null;
  if (isOpen && (said.by === "pressing" || rendered.movesCase)) return { where: "in", board };
  const isSameQuestion = rendered.question !== null && rendered.question === board.question;
  return { where: isSameQuestion && said.by === "writing" ? "beside" : "below" };
}

function boardOf({ boards }: Shown, { summary }: Reply, said: Said): Board | undefined {
  if (said.by === "nobody") return undefined;
  if (said.by === "pressing") return boards.find(({ key }) => key === said.board.key) ?? said.board;
  const ofCase = boards.findLast((board) => board.case === summary.case && board.messages.length > 0);
  const newest = Math.max(...(ofCase?.messages ?? [0]));
  const isAnswer = said.inAnswerTo !== undefined && ofCase?.messages.includes(said.inAnswerTo) === true;
  return isAnswer || said.message - newest <= inSight ? ofCase : undefined;
}
