// Dates set in moulds by hand: the clock insert (arrow at the month, year in the centre, split by the arrow as
// 8|1) and the grid of years with dots. They are set when somebody remembers, so a date is "not before".
import { isCivilDay } from "../../calendar/civil-day.ts";
import { dayInterval, type Interval, monthStart } from "../../calendar/interval.ts";
import { COMMON_PRACTICE } from "../trade-reading.ts";
import { type DateMarkReading, monthReadings, yearsEnding } from "./date-mark-reading.ts";

const INSERT_MAKERS = "makers of date inserts; reading from common practice";
const CLOCK =
  /^(?:clock,? )?(?:the )?(?:arrow|pointer)(?: tip)? (?:is )?(?:at|to|on|points? (?:at|to)) (\d{1,2}),? (?:and )?(?:with )?(?:the )?(?:year|cent(?:re|er)|middle)?(?: (?:is|says|shows))? ?(\d{4}|\d\s?[|/]\s?\d|\d{1,2})(?: in the (?:cent(?:re|er)|middle))?$/i;

/** "arrow at 7, centre 81": July 1981; January and February may belong to the year after. */
export function readMouldClock(text: string, era: Interval): readonly DateMarkReading[] {
  const match = CLOCK.exec(text);
  if (match === null) return [];
  const month = Number(match[1]);
  const year = (match[2] ?? "").replace(/[\s|/]/g, "");
  const told = {
    form: "clock",
    why: `arrow at ${month}, year ${year}; an arrow left standing makes it "not before"`,
    basis: INSERT_MAKERS,
  } as const;
  const readings = monthReadings(month, year, era, told);
  if (month > 2) return readings;
  const late = { ...told, why: "the centre may not have been changed at New Year: then it is a year later" };
  const later = readings.map((reading) => ({
    ...late,
    interval: { from: reading.interval.from + 12, to: reading.interval.to + 12 },
  }));
  return [...readings, ...later];
}

/** "day 12, month 7, year 81": three clocks side by side. */
export function readDayClock(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^day (\d{1,2}),? month (\d{1,2}),? year (\d{4}|\d{1,2})$/i.exec(text);
  if (match === null) return [];
  const [day, month] = [Number(match[1]), Number(match[2])];
  const told = {
    form: "clock",
    why: "day, month and year clocks side by side",
    basis: COMMON_PRACTICE,
  } as const;
  return yearsEnding(match[3] ?? "", era)
    .filter((year) => isCivilDay(year, month, day))
    .map((year) => ({ ...told, interval: dayInterval(year, month, day) }));
}

/** "last year 79, 5 dots" or "79: .....": the count of dots in the last year that has any is the month. */
export function readDotGrid(text: string, era: Interval): readonly DateMarkReading[] {
  const words = /^(?:(?:last )?year )?(\d{4}|\d{2}),?:? (?:has |with )?(\d{1,2}) dots?$/i.exec(text);
  const signs = /^(\d{4}|\d{2}):? ?([.•·●∙*]{1,12})$/.exec(text);
  const count = words === null ? (signs?.[2]?.length ?? 0) : Number(words[2]);
  const year = words?.[1] ?? signs?.[1] ?? "";
  if (count < 1 || count > 12) return [];
  const told = {
    form: "dot-grid",
    why: `${count} of 12 dots in the last year that has any`,
    basis: COMMON_PRACTICE,
  } as const;
  const readings = monthReadings(count, year, era, told);
  if (count < 12) return readings;
  const neglected = "all twelve filled and no year after: the grid may not have been kept up";
  const later = yearsEnding(year, era).map((value) => ({
    interval: { from: monthStart(value + 1, 1), to: monthStart(value + 2, 1) },
    form: "dot-grid" as const,
    why: neglected,
    basis: COMMON_PRACTICE,
  }));
  return [...readings, ...later];
}
