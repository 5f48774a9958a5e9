/**
 * A post of another member that is asked about: its words are its author's, and so are the case and the facts. Whoever asks stands
 * beside that case; what they say themselves is added as theirs.
 */
import type { Interval } from "../../knowledge/index.ts";
import type { Conversation } from "../conversation/conversation.ts";
import { findCase, withCaseInHand } from "../conversation/conversation.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { type StepTaken, step } from "../conversation/step.ts";
import type { IncomingMessage } from "../message.ts";

/** A step of the conversation; of a message that quotes a post, first the post's and then its own. */
export function stepOfMessage(
  knowledge: Knowledge,
  conversation: Conversation,
  message: IncomingMessage,
  today: Interval,
  serialDigest?: (serial: string) => string,
): StepTaken {
  const { quoted, ...own } = message;
  if (quoted === undefined || quoted.text.trim() === "")
    return step(knowledge, conversation, own, today, serialDigest);
  const { photographs: _, goal: __, answer: ___, ...place } = own;
  const post = { ...place, from: quoted.from, text: quoted.text };
  const asked = step(knowledge, conversation, post, today, serialDigest);
  const kept = findCase(asked.conversation, asked.reply.summary.case);
  const beside =
    kept === undefined ? asked.conversation : withCaseInHand(asked.conversation, kept, message.from);
  if ((own.text ?? "").trim() === "") return { ...asked, conversation: beside };
  return step(knowledge, beside, { ...own, case: asked.reply.summary.case }, today, serialDigest);
}

/** All words of a message, the post's first: what decides which handbook is meant. */
export function wordsOfAll({ quoted, text }: IncomingMessage): string | undefined {
  return quoted === undefined ? text : `${quoted.text}\n${text ?? ""}`.trim();
}
