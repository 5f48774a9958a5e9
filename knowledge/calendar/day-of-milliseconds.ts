/** From a clock's count to the calendar: the day in universal time in which something was said. */
import { civilFromDays } from "./civil-day.ts";
import { dayInterval, type Interval } from "./interval.ts";

const MILLISECONDS_IN_DAY = 86_400_000;

/** The day, as an interval in months, that holds this many milliseconds since 1970, universal time. */
export function dayOfMilliseconds(milliseconds: number): Interval {
  const { year, month, day } = civilFromDays(Math.floor(milliseconds / MILLISECONDS_IN_DAY));
  return dayInterval(year, month, day);
}
