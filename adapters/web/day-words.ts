/** A moment as a day in words, in universal time so that every host writes the same. */
import { dayOfMilliseconds, formatInterval } from "../../knowledge/index.ts";

/** "25 November 2026". */
export function dayWords(milliseconds: number): string {
  return formatInterval(dayOfMilliseconds(milliseconds));
}
