// "Yesterday", "last month", "two years ago", "last summer": when somebody saw something, reckoned back from today. What nobody dates to the
// day is left as wide as it was said.
import { civilDayAt, civilFromDays, daysFromCivil } from "../calendar/civil-day.ts";
import { dayInterval, type Interval, monthInterval, yearInterval } from "../calendar/interval.ts";
import { partOfYear } from "./parts-of-year.ts";

const counts = "a an one two three four five six seven eight nine ten".split(" ");
const ago = /\b(?:(?<count>\d{1,2}|[a-z]+)|a couple of|a few) (?<unit>day|week|month|year)s? ago\b/;
const last =
  /\b(?<which>this|last|the other) (?<unit>day|week|weekend|month|year|spring|summer|autumn|fall|winter)\b/;
const longestCount = 60;

/** The stretch of time meant, seen from `today` (a day); undefined when the lower-case words hold no such phrase. */
export function dateAgo(words: string, today: Interval): Interval | undefined {
  if (/\b(?:today|this morning|just now)\b/.test(words)) return today;
  if (/\byesterday\b/.test(words)) return daysBack(today, 1, 1);
  const named = last.exec(words)?.groups;
  if (named !== undefined) return lastOne(named.which === "this", named.unit ?? "", today);
  const counted = ago.exec(words)?.groups;
  if (counted === undefined) return undefined;
  const count = countOf(counted.count);
  return count === undefined ? undefined : backBy(count, counted.unit ?? "", today);
}

function lastOne(isThis: boolean, unit: string, today: Interval): Interval {
  const { year, month } = civilDayAt(today.from);
  const back = isThis ? 0 : 1;
  if (unit === "year") return yearInterval(year - back);
  if (unit === "month") return monthInterval(year, month - back);
  if (unit === "day" || unit.startsWith("week"))
    return isThis ? daysBack(today, 6, 0) : daysBack(today, 13, 1);
  const ofThisYear = partOfYear(unit, year);
  const season = ofThisYear.from <= today.from ? ofThisYear : partOfYear(unit, year - 1);
  return { from: season.from, to: Math.min(season.to, today.to) };
}

function backBy(count: number, unit: string, today: Interval): Interval {
  const { year, month } = civilDayAt(today.from);
  if (unit === "year") return yearInterval(year - count);
  if (unit === "month") return monthInterval(year, month - count);
  const days = unit === "week" ? 7 * count : count;
  return unit === "week" ? daysBack(today, days + 3, days - 3) : daysBack(today, days, days);
}

/** From the day that lies `first` days back to the one that lies `second` days back. */
function daysBack(today: Interval, first: number, second: number): Interval {
  return { from: dayBack(today, first).from, to: dayBack(today, second).to };
}

function dayBack(today: Interval, days: number): Interval {
  const { year, month, day } = civilDayAt(today.from);
  const there = civilFromDays(daysFromCivil(year, month, day) - days);
  return dayInterval(there.year, there.month, there.day);
}

/** "A couple" and "a few" are no counts: what they leave open is wider than a reader should guess. */
function countOf(word: string | undefined): number | undefined {
  const at = counts.indexOf(word ?? "");
  const count = at < 0 ? Number(word) : Math.max(1, at - 1);
  return count >= 1 && count <= longestCount ? count : undefined;
}
