/**
 * Ids that people read out to each other: eight letters and figures in two groups, without those that look alike. An id follows
 * from what asked for it, so that the same message makes the same record however often it is taken.
 */
import { textDigest } from "../../knowledge/index.ts";

/** Crockford's base 32: no i, l, o, u. */
const alphabet = "0123456789abcdefghjkmnpqrstvwxyz";

/** As people type it, with its hyphen forgotten or not. */
export const recordIdPattern = "[0-9a-hjkmnp-tv-z]{4}-?[0-9a-hjkmnp-tv-z]{4}";

/** "7k3f-2m9q": 40 bits of SHA-256 over the sources, which are told apart by their order. */
export function recordId(...sources: readonly string[]): string {
  const digest = textDigest(JSON.stringify(sources));
  const letters = Array.from({ length: 8 }, (_, at) => {
    const bits = Number.parseInt(digest.slice(2 * at, 2 * at + 2), 16) % alphabet.length;
    return alphabet[bits];
  });
  return `${letters.slice(0, 4).join("")}-${letters.slice(4).join("")}`;
}

/** The id in its one form; the argument must match `recordIdPattern`. */
export function recordIdOf(typed: string): string {
  const plain = typed.toLowerCase().replace("-", "");
  return `${plain.slice(0, 4)}-${plain.slice(4)}`;
}
