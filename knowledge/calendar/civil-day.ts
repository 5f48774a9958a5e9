// Days counted from 1 March of year 0 in the proleptic Gregorian calendar, so that weeks can be reckoned
// without a Date. Method: Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms" (days_from_civil,
// civil_from_days); beginning the year in March puts the leap day last and spares every special case.

/** A calendar day; `month` 1 to 12, `day` 1 to 31. */
export interface CivilDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const DAYS_IN_ERA = 146_097;
const MONTH_LENGTHS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether a Gregorian year has 366 days. */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month; 0 for a month outside 1 to 12, so that no day of it is valid. */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (MONTH_LENGTHS[month - 1] ?? 0);
}

/** Whether year, month and day are whole numbers naming a day that exists. */
export function isCivilDay(year: number, month: number, day: number): boolean {
  const areWhole = Number.isInteger(year) && Number.isInteger(month) && Number.isInteger(day);
  return areWhole && day >= 1 && day <= daysInMonth(year, month);
}

/** Days from 1970-01-01 to the given day (negative before). */
export function daysFromCivil(year: number, month: number, day: number): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_IN_ERA + dayOfEra - 719_468;
}

/** The calendar day that lies `days` after 1970-01-01: the inverse of daysFromCivil. */
export function civilFromDays(days: number): CivilDay {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / DAYS_IN_ERA);
  const dayOfEra = shifted - era * DAYS_IN_ERA;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** Day of the week by ISO 8601: Monday is 1, Sunday is 7. */
export function isoWeekday(days: number): number {
  return ((((days + 3) % 7) + 7) % 7) + 1;
}

/** The calendar day in which an instant (in months, see interval.ts) falls; rounding dust is ignored. */
export function civilDayAt(instant: number): CivilDay {
  const months = Math.floor(instant + 1e-7);
  const year = Math.floor(months / 12);
  const month = months - 12 * year + 1;
  const length = daysInMonth(year, month);
  const day = Math.floor((instant - months) * length + 1e-5) + 1;
  return { year, month, day: Math.min(Math.max(day, 1), length) };
}
