/**
 * A state's text as what differs from the text before. A message changes a little of a conversation, and keeping the whole of it
 * each time would let the history grow with the square of its length. Only both ends are compared: it is enough for states that
 * grow at one place, and putting together again cannot go wrong.
 */

export interface StateChange {
  /** UTF-16 units kept of the earlier text's start and end. */
  readonly keptStart: number;
  readonly keptEnd: number;
  readonly between: string;
}

/** Comparing pieces is many times as quick as comparing characters, which are left for the last piece. */
const PIECE = 512;

/** The change from `before` to `after`; linear in the shorter one. */
export function changeBetween(before: string, after: string): StateChange {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (
    start + PIECE <= shorter &&
    before.slice(start, start + PIECE) === after.slice(start, start + PIECE)
  ) {
    start += PIECE;
  }
  while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) start += 1;
  let end = 0;
  while (end + PIECE <= shorter - start && pieceBefore(before, end) === pieceBefore(after, end)) end += PIECE;
  while (
    end < shorter - start &&
    before.charCodeAt(before.length - 1 - end) === after.charCodeAt(after.length - 1 - end)
  ) {
    end += 1;
  }
  // Half of a surrogate pair is no text and would not survive UTF-8.
  if (start > 0 && isHighSurrogate(after.charCodeAt(start - 1))) start -= 1;
  if (end > 0 && isLowSurrogate(after.charCodeAt(after.length - end))) end -= 1;
  return { keptStart: start, keptEnd: end, between: after.slice(start, after.length - end) };
}

/** The text after the change; undefined when the change does not fit the text. */
export function changed(before: string, change: StateChange): string | undefined {
  const { keptStart, keptEnd, between } = change;
  if (keptStart < 0 || keptEnd < 0 || keptStart + keptEnd > before.length) return undefined;
  return before.slice(0, keptStart) + between + before.slice(before.length - keptEnd);
}

function pieceBefore(text: string, end: number): string {
  return text.slice(text.length - end - PIECE, text.length - end);
}

function isHighSurrogate(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdbff;
}

function isLowSurrogate(unit: number): boolean {
  return unit >= 0xdc00 && unit <= 0xdfff;
}
