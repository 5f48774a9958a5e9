/** A date somebody sets themselves, "March 2027" or "2027": the reader of messages refuses dates that have not happened, as it must. */
import { type Interval, parseDateText } from "../../../knowledge/index.ts";

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** The month or year named; undefined for anything else. */
export function monthAhead(words: string): Interval | undefined {
  const match = /^([a-z]{3})[a-z]*\.? (\d{4})[.!]?$/iu.exec(words.trim());
  const month = months.indexOf(match?.[1]?.toLowerCase() ?? "") + 1;
  if (month === 0) return undefined;
  return parseDateText(`${match?.[2]}-${String(month).padStart(2, "0")}`);
}
