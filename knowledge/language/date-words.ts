// What all forms of dates are made of: the words of months, two- and four-figure years, what joins them, and how a short year
// is completed.
import type { Interval } from "../calendar/interval.ts";
import { monthNumber } from "../calendar/month-name.ts";

export type DateShape = "day" | "week" | "month" | "pair" | "season" | "range" | "year" | "short-year";

/** What two-figure years are completed from: the nearest year to the cars' era, never after today. */
export interface DateEra {
  readonly production: Interval;
  readonly today: Interval;
}

/** One form: a pattern with named groups, and the interval that its groups give. */
export interface DateForm {
  readonly shape: DateShape;
  readonly pattern: RegExp;
  readonly read: (groups: Groups, era: DateEra) => Interval | undefined;
}
export type Groups = Readonly<Record<string, string | undefined>>;

export const month = (name: string): string =>
  String.raw`(?<${name}>jan(?:uary)?|feb(?:r?u\w{0,5})?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:em\w{0,4})?|oct(?:o?b\w{0,3})?|nov(?:em\w{0,4})?|dec(?:em\w{0,4})?)\b\.?`;
export const unit =
  "mm|millim\\w*|cm|centim\\w*|kgs?|kilo\\w*|g|gr|grams?|grammes?|in(?! )|inch|inches|lbs?|oz|ft|thou|mil";
export const year = (name: string): string =>
  String.raw`(?<${name}>'?\d{2}|(?:19|20)\d{2})(?![\d/"]|[.,]\d|-\d| ?(?:${unit})\b)`;
export const of = `(?:,? ?(?:of|in) |,? ?[-/]? ?|, ?)`;
/** "'81" and "81" complete to the century nearest the middle of production, not after today. */
export function fullYear(written: string | undefined, era: DateEra): number {
  const figures = (written ?? "").replace("'", "");
  const value = Number(figures);
  if (figures.length !== 2) return value;
  const middle = (era.production.from + era.production.to) / 24;
  const possible = [1900 + value, 2000 + value].filter((each) => 12 * each < era.today.to);
  return possible.reduce(
    (best, each) => (Math.abs(each - middle) < Math.abs(best - middle) ? each : best),
    possible[0] ?? 1900 + value,
  );
}

/** 1 to 12; 0, which is no month, for anything else. */
export function numberOf(name: string | undefined): number {
  return monthNumber(name ?? "") ?? 0;
}
