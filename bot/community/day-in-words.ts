/** The day of something done, as people read it. */
import { dayOfMilliseconds, formatInterval } from "../../knowledge/index.ts";

/** `milliseconds`: since 1970, universal time. */
export function dayInWords(milliseconds: number): string {
  return formatInterval(dayOfMilliseconds(milliseconds));
}
