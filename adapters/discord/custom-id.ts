/**
 * What a button carries: which case, which reply it was offered with, which control of that reply. Discord allows 100 characters and
 * anybody may send anything, so it names things and never says what to do: the reply itself is looked up.
 */
import { createHash } from "node:crypto";

export interface Pressed {
  /** Whether the case lives where all can read it, or in what only one person sees. */
  readonly scope: "open" | "private";
  /** A case's key, see `caseKey`. */
  readonly caseKey: string;
  /** The id of the message that the reply answered. */
  readonly reply: string;
  /** The number of a control, "p" and a page, "f" for the form, "s" and a number for a select. */
  readonly key: string;
}

const SEPARATOR = "~";
const LONGEST_CASE = 50;
const shape = /^([ov])~([^~]{1,50})~([\d.]{1,26})~([a-z]?\d{0,3})$/u;

/** A case id that fits into a custom id: itself, or its digest when it is long or has the separator. */
export function caseKey(id: string): string {
  if (id !== "" && id.length <= LONGEST_CASE && !id.includes(SEPARATOR)) return id;
  return `#${createHash("sha256").update(id).digest("hex").slice(0, 32)}`;
}

/** At most 82 characters. */
export function customId({ scope, caseKey: key, reply, key: control }: Pressed): string {
  return [scope === "open" ? "o" : "v", key, reply, control].join(SEPARATOR);
}

/** What a custom id names; undefined for one that is not of our making. */
export function readCustomId(text: string): Pressed | undefined {
  const [, scope, key, reply, control] = shape.exec(text) ?? [];
  if (key === undefined || reply === undefined || control === undefined) return undefined;
  return { scope: scope === "o" ? "open" : "private", caseKey: key, reply, key: control };
}
