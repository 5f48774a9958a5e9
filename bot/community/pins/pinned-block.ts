/** A pinned answer as it is shown. */
import { dayOfMilliseconds, formatInterval } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
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

export function dayInWords(milliseconds: number): string {
  return formatInterval(dayOfMilliseconds(milliseconds));
}
