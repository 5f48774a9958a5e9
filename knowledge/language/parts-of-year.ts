// "Early 1980", "summer of 80", "late seventies": which months of a year or years of a decade the words leave open.
import { type Interval, monthStart } from "../calendar/interval.ts";

/** First and last month (1 to 12; 13 is next January) of a part of a year; common usage, no source. */
const partsOfYear: readonly (readonly [RegExp, number, number])[] = [
  [/very early|q1|first q/, 1, 3],
  [/very late|q4|(?:last|fourth) q/, 10, 12],
  [/early to mid|first half/, 1, 6],
  [/mid to late|second half/, 7, 12],
  [/early|beginning|start/, 1, 4],
  [/mid/, 5, 8],
  [/late|end of/, 9, 12],
  [/q2|second q/, 4, 6],
  [/q3|third q/, 7, 9],
  [/spring|easter/, 3, 5],
  [/summer/, 6, 8],
  [/autumn|fall/, 9, 11],
  [/winter/, 11, 14],
  [/christmas/, 12, 12],
];

/** The months that part of a year leaves open; the whole year for words not in the table. Winter runs to February. */
export function partOfYear(piece: string, ofYear: number): Interval {
  const [, first, last] = partsOfYear.find(([form]) => form.test(piece)) ?? [undefined, 1, 12];
  return { from: monthStart(ofYear, first), to: monthStart(ofYear, 1) + last };
}

/** The years a part of a decade leaves open; `first` is the first year of the decade. */
export function partOfDecade(piece: string | undefined, first: number): Interval {
  const [from, to] =
    piece === "early" ? [0, 4] : piece === "mid" ? [3, 7] : piece === "late" ? [6, 10] : [0, 10];
  return { from: monthStart(first + from, 1), to: monthStart(first + to, 1) };
}
