// Dates as text, both ways: the strict forms of handbooks and JSON (ISO 8601 shapes) into an interval, and an
// interval into the words a restorer would say. Loose dates in a member's words are another room's work;
// here a wrong date is refused, never mended.
import { type CivilDay, civilDayAt, isCivilDay } from "./civil-day.ts";
import { dayInterval, type Interval, monthInterval, yearInterval } from "./interval.ts";
import { isoWeekInterval } from "./iso-week.ts";

const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

// Less than a second in a month: below it two instants are the same instant.
const ROUNDING = 1e-7;

const FIRST_YEAR = 1850;
const LAST_YEAR = 2200;
const DATE_TEXT = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?|-W(\d{2}))?$/;

/** The interval a strict date text names; undefined for any other text, an impossible date or a year outside 1850 to 2200. */
export function parseDateText(text: string): Interval | undefined {
  const match = DATE_TEXT.exec(text);
  if (match === null) return undefined;
  const year = Number(match[1]);
  if (year < FIRST_YEAR || year > LAST_YEAR) return undefined;
  if (match[4] !== undefined) return isoWeekInterval(year, Number(match[4]));
  if (match[2] === undefined) return yearInterval(year);
  const month = Number(match[2]);
  if (match[3] !== undefined) {
    const day = Number(match[3]);
    return isCivilDay(year, month, day) ? dayInterval(year, month, day) : undefined;
  }
  return month >= 1 && month <= 12 ? monthInterval(year, month) : undefined;
}

/** The English name of a month, 1 to 12. */
function monthName(month: number): string {
  return MONTH_NAMES[month - 1] ?? "";
}

function isWhole(instant: number, unit: number): boolean {
  return Math.abs(instant / unit - Math.round(instant / unit)) * unit < ROUNDING;
}

function yearsInWords(from: number, to: number): string {
  const first = Math.round(from / 12);
  const last = Math.round(to / 12) - 1;
  return first === last ? `${first}` : `${first} to ${last}`;
}

function monthsInWords(from: number, to: number): string {
  const first = civilDayAt(Math.round(from));
  const last = civilDayAt(Math.round(to) - 1);
  const end = `${monthName(last.month)} ${last.year}`;
  if (first.year !== last.year) return `${monthName(first.month)} ${first.year} to ${end}`;
  return first.month === last.month ? end : `${monthName(first.month)} to ${end}`;
}

function daysInWords(first: CivilDay, last: CivilDay): string {
  const end = `${last.day} ${monthName(last.month)} ${last.year}`;
  if (first.year !== last.year) return `${first.day} ${monthName(first.month)} ${first.year} to ${end}`;
  if (first.month !== last.month) return `${first.day} ${monthName(first.month)} to ${end}`;
  return first.day === last.day ? end : `${first.day} to ${end}`;
}

function openEndInWords(interval: Interval): string {
  const hasStart = Number.isFinite(interval.from);
  const edge = hasStart ? interval.from : interval.to;
  if (!Number.isFinite(edge)) return "any time";
  const words = edgeInWords(edge);
  return hasStart ? `from ${words}` : `before ${words}`;
}

function edgeInWords(edge: number): string {
  if (isWhole(edge, 12)) return `${Math.round(edge / 12)}`;
  const day = civilDayAt(edge);
  const month = `${monthName(day.month)} ${day.year}`;
  return isWhole(edge, 1) ? month : `${day.day} ${month}`;
}

/**
 * Words for an interval; ends that fall inside a day are widened to the whole day. An open end reads
 * "from March 1981" or "before 1971"; an empty interval reads as the day it lies in.
 */
export function formatInterval(interval: Interval): string {
  const { from, to } = interval;
  if (!Number.isFinite(from) || !Number.isFinite(to)) return openEndInWords(interval);
  if (to - from > ROUNDING) {
    if (isWhole(from, 12) && isWhole(to, 12)) return yearsInWords(from, to);
    if (isWhole(from, 1) && isWhole(to, 1)) return monthsInWords(from, to);
  }
  // The end is excluded: a step of half a minute back lands in the last day that belongs.
  return daysInWords(civilDayAt(from), civilDayAt(Math.max(from, to - 1e-5)));
}
