// The stretches of time that the forms of dates make of their figures; undefined for what no calendar has.
import { isCivilDay } from "../calendar/civil-day.ts";
import { dayInterval, type Interval, monthInterval, yearInterval } from "../calendar/interval.ts";
import { isoWeekInterval } from "../calendar/iso-week.ts";

/** A month; undefined for a number that is none. */
export function monthOf(ofYear: number, number: number): Interval | undefined {
  return number >= 1 && number <= 12 ? monthInterval(ofYear, number) : undefined;
}

/** A day of the calendar; undefined for one that never was. */
export function day(ofYear: number, number: number, dayNumber: number): Interval | undefined {
  return isCivilDay(ofYear, number, dayNumber) ? dayInterval(ofYear, number, dayNumber) : undefined;
}

/** An ISO week; undefined for a number that its year has not. */
export function week(ofYear: number, number: number): Interval | undefined {
  return isoWeekInterval(ofYear, number);
}

/** Undefined for what lies further than five years from the cars: two bare figures are seldom a date. */
export function nearby(interval: Interval | undefined, production: Interval): Interval | undefined {
  const isNear =
    interval !== undefined && interval.to > production.from - 60 && interval.from < production.to + 60;
  return isNear ? interval : undefined;
}

/** "1981": four figures that could be a week and a year are the year by themselves, if the cars were built about then. */
export function isYearOfCars(written: string, production: Interval): boolean {
  return /^(?:19|20)\d\d$/.test(written) && nearby(yearInterval(Number(written)), production) !== undefined;
}

/** From the beginning of the first to the end of the last; undefined unless that is forward. */
export function span(first: Interval | undefined, last: Interval | undefined): Interval | undefined {
  if (first === undefined || last === undefined || !(first.from < last.to)) return undefined;
  return { from: first.from, to: last.to };
}

/** Wider by so many months on either side. */
export function widen(interval: Interval | undefined, months: number): Interval | undefined {
  return interval === undefined ? undefined : { from: interval.from - months, to: interval.to + months };
}
