/**
 * What people write may hold a zero character or half of a surrogate pair, which no database keeps as it is. Put right here once, for
 * every door: a message that were refused for it would be lost with everything else in it.
 */
import type { IncomingMessage } from "./message.ts";

/** Stands for what could not be read. */
const unreadable = "\uFFFD";

export function soundText(text: string): string {
  return text.replaceAll("\0", unreadable).replace(/\p{Surrogate}/gu, unreadable);
}

/** The message with all that was written by somebody made sound; ids are the platform's and stay as they are. */
export function soundMessage(message: IncomingMessage): IncomingMessage {
  const { text, name, answer, quoted } = message;
  return {
    ...message,
    ...(text === undefined ? {} : { text: soundText(text) }),
    ...(name === undefined ? {} : { name: soundText(name) }),
    ...(answer !== undefined && "reading" in answer
      ? { answer: { ...answer, reading: soundText(answer.reading) } }
      : {}),
    ...(quoted === undefined ? {} : { quoted: soundQuoted(quoted) }),
  };
}

function soundQuoted(quoted: IncomingMessage["quoted"] & object): IncomingMessage["quoted"] & object {
  const { text, name } = quoted;
  return {
    ...quoted,
    text: soundText(text),
    ...(name === undefined ? {} : { name: soundText(name) }),
  };
}
