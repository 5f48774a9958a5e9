/** Line and column of an offset in a text. Built only once there is a problem to place: a sound file never pays. */
import type { Place } from "./problem.ts";

/** A function from an offset (from 0) to its line and column (from 1); one pass over the text, then log(lines) a call. */
export function placesIn(text: string): (offset: number) => Place {
  const lineStarts = [0];
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) lineStarts.push(end + 1);
  return (offset) => {
    const bounded = Math.min(Math.max(offset, 0), text.length);
    let low = 0;
    let high = lineStarts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((lineStarts[middle] ?? 0) <= bounded) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: bounded - (lineStarts[low] ?? 0) + 1 };
  };
}
