// The front door of the date marks: a mark as written gives every reading in the era. Nothing is chosen here;
// a reading is dropped only when the date cannot exist, lies outside the era or after today.
import { formatInterval } from "../calendar/date-text.ts";
import { type Interval, intersect } from "../calendar/interval.ts";
import type { DateMarkForm, DateMarkReader, DateMarkReading } from "./date-marks/date-mark-reading.ts";
import { readFigureCode } from "./date-marks/figure-codes.ts";
import { readGlassDots } from "./date-marks/glass-dots.ts";
import { readDayClock, readDotGrid, readMouldClock } from "./date-marks/mould-dates.ts";
import { readTyreDate } from "./date-marks/tyre-date.ts";
import {
  readDayMonthYear,
  readMonthLetter,
  readNamedWeek,
  readNumberPair,
  readQuarter,
  readRomanDate,
} from "./date-marks/written-dates.ts";
import type { TradeEvidence, TradeSubject } from "./trade-reading.ts";

const READERS: readonly DateMarkReader[] = [
  readNamedWeek,
  readNumberPair,
  readRomanDate,
  readQuarter,
  readDayMonthYear,
  readMonthLetter,
  readMouldClock,
  readDayClock,
  readDotGrid,
  readFigureCode,
];

/** What a decoder is told besides the mark: `form` when the member named it, `today` to drop the future. */
export interface DateMarkContext {
  readonly form?: DateMarkForm;
  readonly era: Interval;
  readonly today?: Interval;
}

function readersFor(form: DateMarkForm | undefined, text: string): readonly DateMarkReader[] {
  if (form === "tyre") return [readTyreDate];
  if (form === "glass-dots") return [readGlassDots];
  const isTyre = /^DOT\b/i.test(text);
  const hasDots = /[.•·●∙*…]|dots?\b/.test(text);
  if (isTyre) return [readTyreDate];
  return hasDots ? [...READERS, readGlassDots] : READERS;
}

function key(reading: DateMarkReading): string {
  return `${reading.form} ${reading.interval.from} ${reading.interval.to} ${reading.why}`;
}

/**
 * Every reading of a date mark in the era, earliest first, ties by form. Empty when the text is no date mark or
 * nothing fits. Tyre weeks apply only to `form: "tyre"` and to texts that begin with DOT.
 */
export function decodeDateMark(text: string, context: DateMarkContext): readonly DateMarkReading[] {
  const mark = text.trim().replace(/\s+/g, " ").slice(0, 80);
  const end = context.today?.to ?? Number.POSITIVE_INFINITY;
  const readings = readersFor(context.form, mark)
    .flatMap((read) => read(mark, context.era))
    .filter((reading) => intersect(reading.interval, context.era) !== undefined)
    .filter((reading) => reading.interval.from < end)
    .filter((reading) => context.form === undefined || reading.form === context.form);
  const unique = new Map(readings.map((reading) => [key(reading), reading]));
  return [...unique.values()].toSorted((one, other) => {
    const earlier = one.interval.from - other.interval.from || one.interval.to - other.interval.to;
    return earlier || (key(one) < key(other) ? -1 : 1);
  });
}

/** The readings of a date mark as evidence: equal weights by distinct interval; undefined when there is none. */
export function dateMarkEvidence(
  readings: readonly DateMarkReading[],
  about: TradeSubject,
  mark: string,
): TradeEvidence | undefined {
  const intervals = new Map(
    readings.map((reading) => [`${reading.interval.from} ${reading.interval.to}`, reading.interval]),
  );
  if (intervals.size === 0) return undefined;
  const distinct = [...intervals.values()];
  return {
    kind: "date-mark",
    about,
    readings: distinct.map((interval) => ({ interval, weight: 1 / distinct.length })),
    words: `${mark} can mean ${distinct.map(formatInterval).slice(0, 6).join(" or ")}`,
  };
}
