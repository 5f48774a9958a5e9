// Time as a number of months: January of year 0 is 0, so 1981-11 begins at 12 * 1981 + 10; a day is its
// fraction of its month. Months, because works and clubs date by month, and a plain number can be averaged,
// compared and drawn without a calendar library. An instant past the last day of a month is the next month.
import { daysInMonth } from "./civil-day.ts";

/** A stretch of time in months, half-open: `from` belongs to it, `to` does not. Either end may be infinite. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** The instant (in months) at which `month` (1 to 12) of `year` begins; 1981, 11 gives 23782. */
export function monthStart(year: number, month: number): number {
  return 12 * year + month - 1;
}

/** The whole calendar year. */
export function yearInterval(year: number): Interval {
  return { from: monthStart(year, 1), to: monthStart(year + 1, 1) };
}

/** The whole calendar month; `month` is 1 to 12. */
export function monthInterval(year: number, month: number): Interval {
  const from = monthStart(year, month);
  return { from, to: from + 1 };
}

/** The instant (in months) at which a day begins; `day` is 1 to the length of its month. */
export function dayStart(year: number, month: number, day: number): number {
  return monthStart(year, month) + (day - 1) / daysInMonth(year, month);
}

/** One calendar day; its end is exactly the beginning of the next day. */
export function dayInterval(year: number, month: number, day: number): Interval {
  const isLast = day === daysInMonth(year, month);
  return {
    from: dayStart(year, month, day),
    to: isLast ? monthStart(year, month) + 1 : dayStart(year, month, day + 1),
  };
}

/** The middle of a finite interval, in months. */
export function midpoint(interval: Interval): number {
  return (interval.from + interval.to) / 2;
}

/** The stretch both intervals share, or undefined when they only touch or lie apart. */
export function intersect(one: Interval, other: Interval): Interval | undefined {
  const from = Math.max(one.from, other.from);
  const to = Math.min(one.to, other.to);
  return from < to ? { from, to } : undefined;
}

/** Whether an instant (in months) lies in the interval; the end does not. */
export function containsInstant(interval: Interval, instant: number): boolean {
  return interval.from <= instant && instant < interval.to;
}
