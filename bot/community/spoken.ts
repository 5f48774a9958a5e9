/** The words of a message as an affair looks at them: flat, and only when words were said; a pressed answer asks for no affair. */
import type { IncomingMessage } from "../message.ts";
import { recordIdOf, recordIdPattern } from "./record-id.ts";

/** Longer words are no request. */
const longest = 4000;

/** One line without doubled spaces, in the letters it was written in; undefined of an empty message or a pressed answer. */
export function spoken({ text = "", answer }: IncomingMessage): string | undefined {
  if (answer !== undefined) return undefined;
  const flat = text.slice(0, longest).replace(/\s+/gu, " ").trim();
  return flat === "" ? undefined : flat;
}

/** Whether the words are one of these requests and nothing else. Patterns are in small letters. */
export function isRequest(said: string, pattern: RegExp): boolean {
  return pattern.test(said.toLowerCase().replace(/[.!?]+$/u, ""));
}

const leaving =
  /^(?:(?:oh|ok(?:ay)?|actually|no|sorry|please),? )?(?:(?:leave|forget|drop)[ -]it|cancel(?: it| that)?|stop(?: it)?|never ?mind|quit)(?: please)?$/u;

/** Whether the words end what somebody is in the middle of. */
export function leavesIt(said: string): boolean {
  return isRequest(said, leaving);
}

export interface RequestAboutRecord {
  readonly id: string;
  /** What follows the id: a reason, an answer; in the letters it was written in, "" when there is none. */
  readonly words: string;
}

/** "VERB ID because/: WORDS"; `verb` is a pattern in small letters. */
export function requestAbout(said: string, verb: string): RequestAboutRecord | undefined {
  const match = new RegExp(`^(?:${verb}) (${recordIdPattern})(?:(?: because|:|,) *(.*))?[.!?]*$`, "iu").exec(
    said,
  );
  const [, id, words = ""] = match ?? [];
  return id === undefined ? undefined : { id: recordIdOf(id), words: words.trim().replace(/^…$/u, "") };
}
