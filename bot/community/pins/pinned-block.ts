/** A pinned answer as it is shown. */
import type { Block } from "../../reply.ts";
import { dayInWords } from "../day-in-words.ts";
import type { Pin } from "./pin.ts";

/** `dispute`: what speaks against it. */
export function pinnedBlock(id: string, pin: Pin, dispute?: string): Block {
  const { authorName: author, at, text, sources } = pin;
  return {
    kind: "pinned",
    pin: id,
    author,
    date: dayInWords(at),
    text,
    sources,
    ...(dispute === undefined ? {} : { dispute }),
  };
}
