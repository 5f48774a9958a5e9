// Dates that begin with their year: "1981-08-03", "1981/08", "1981-W31", "1981 August", "81 week 31".
import { isoWeekInterval } from "../calendar/iso-week.ts";
import { day, monthOf, week } from "./date-spans.ts";
import { type DateForm, fullYear, month, numberOf } from "./date-words.ts";

export const yearFirstForms: readonly DateForm[] = [
  {
    shape: "day",
    pattern: /\b(?<y>(?:19|20)\d\d)(?<sign>[-/.])(?<m>\d\d)\k<sign>(?<d>\d\d)\b/g,
    read: ({ y, m, d }) => day(Number(y), Number(m), Number(d)),
  },
  {
    shape: "week",
    pattern: /\b(?<y>(?:19|20)\d\d)-?w(?<w>\d\d)\b/g,
    read: ({ y, w }) => isoWeekInterval(Number(y), Number(w)),
  },
];

/** Read after those with the month first: "in 1981, march 1980". */
export const yearThenForms: readonly DateForm[] = [
  {
    // "1980 may be too late" names no month.
    shape: "month",
    pattern: new RegExp(
      String.raw`(?<![\d/.,-])(?<y>(?:19|20)\d\d),? (?!may\b|mar\b|march (?:on|of|to)\b)${month("m")}(?! ?'?\d| (?:that|the same) year)`,
      "g",
    ),
    read: ({ y, m }) => monthOf(Number(y), numberOf(m)),
  },
  {
    shape: "week",
    pattern: /(?<![\d/.,-])(?<y>(?:19|20)\d\d|'?[6-9]\d),? ?(?:week|wk|kw)\.? ?(?<w>\d{1,2})(?!\d|[./-]\d)/g,
    read: ({ y, w }, era) => week(fullYear(y, era), Number(w)),
  },
  {
    shape: "month",
    pattern: /(?<![\d/.,-])(?<y>(?:19|20)\d\d)[-/](?<m>0[1-9]|1[0-2])(?![\d/]|-\d)/g,
    read: ({ y, m }) => monthOf(Number(y), Number(m)),
  },
];
