// Months by name, in full or by the first letters ("Sept", "sept.", "September"), the one table that all readers of dates go by.
import { type Interval, monthInterval } from "./interval.ts";

const beginnings = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const monthOfYear = /^(?:in )?([a-z]+)\.?,? ((?:19|20)\d\d)[.!]?$/i;

/** 1 to 12 by the first three letters, capitals or not; undefined for any other beginning. */
export function monthNumber(name: string): number | undefined {
  const at = beginnings.indexOf(name.slice(0, 3).toLowerCase());
  return at < 0 ? undefined : at + 1;
}

/** "March 2027", "in sept. 1981": the whole month, future ones too; undefined for anything else. */
export function monthAndYear(words: string): Interval | undefined {
  const [, name = "", year = ""] = monthOfYear.exec(words.trim()) ?? [];
  const month = monthNumber(name);
  return month === undefined ? undefined : monthInterval(Number(year), month);
}
