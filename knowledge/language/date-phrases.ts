// Finds the dates of a text, each once, in the order said: the forms are tried in turn, and what one has read is gone.
import { type Interval, monthInterval } from "../calendar/interval.ts";
import { monthNumber } from "../calendar/month-name.ts";
import type { Span } from "./blank-noise.ts";
import { dateForms } from "./date-forms.ts";
import type { DateEra, DateForm, DateShape } from "./date-words.ts";

export interface DatePhrase extends Span {
  readonly interval: Interval;
  readonly shape: DateShape;
  readonly text: string;
}

/** Date phrases of a lower-case readable text, in order, not overlapping; those wholly after today too. */
export function findDates(text: string, era: DateEra): readonly DatePhrase[] {
  const found: DatePhrase[] = [];
  for (const form of dateForms) {
    let count = 0;
    for (const match of text.matchAll(form.pattern)) {
      count += 1;
      if (count > 40) break;
      const phrase = phraseOf(match, form, era);
      if (phrase === undefined || found.some((other) => overlaps(other, phrase))) continue;
      found.push(phrase);
    }
  }
  found.sort((one, other) => one.start - other.start);
  return [...found, ...ofThatYear(text, found)].sort((one, other) => one.start - other.start);
}

const thatYear =
  /\b(?<month>jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?,? (?:of )?(?:that|the same) year\b/g;

/** "Week 47 1982 on the glass, the dial says September that year": a month of the year last said. */
function ofThatYear(text: string, found: readonly DatePhrase[]): readonly DatePhrase[] {
  return Array.from(text.matchAll(thatYear)).flatMap((match) => {
    const last = found.findLast(({ end }) => end <= match.index);
    const month = monthNumber(match.groups?.month ?? "");
    if (last === undefined || month === undefined || last.interval.to - last.interval.from > 12) return [];
    const interval = monthInterval(Math.floor(last.interval.from / 12), month);
    const [start, end] = [match.index, match.index + match[0].length];
    return [{ start, end, interval, shape: "month" as const, text: match[0] }];
  });
}

function phraseOf(match: RegExpMatchArray, form: DateForm, era: DateEra): DatePhrase | undefined {
  const interval = form.read(match.groups ?? {}, era);
  if (interval === undefined) return undefined;
  if (form.shape === "short-year" && isFarFrom(interval, era.production)) return undefined;
  const isWeek = form.shape === "pair" && Number(match.groups?.m) > 12;
  const start = match.index ?? 0;
  return {
    start,
    end: start + match[0].length,
    interval,
    shape: isWeek ? "week" : form.shape,
    text: match[0],
  };
}

/** A bare "13" is no year of these cars; a bare "95" may be the year of some errand. */
function isFarFrom(interval: Interval, production: Interval): boolean {
  return interval.to < production.from - 240 || interval.from > production.to + 240;
}

function overlaps(one: Span, other: Span): boolean {
  return one.start < other.end && other.start < one.end;
}
