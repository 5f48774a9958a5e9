// Bare groups of figures: 8127 is week 27 of 1981 for a chip, day 127 of a year ending in 8 for a pressing, and
// 0782 may be July or week 7 of 1982. Every reading that fits is given.
import { civilFromDays, daysFromCivil, isLeapYear } from "../../calendar/civil-day.ts";
import { dayInterval, type Interval, yearInterval } from "../../calendar/interval.ts";
import { COMMON_PRACTICE } from "../trade-reading.ts";
import { type DateMarkReading, monthReadings, weekReadings, yearsEnding } from "./date-mark-reading.ts";

const MARKING_MAKER = "marking-machine maker page";

function dayOfYear(
  day: number,
  yearFigure: string,
  era: Interval,
  order: "JJJY" | "YJJJ",
): readonly DateMarkReading[] {
  const basis = order === "JJJY" ? MARKING_MAKER : COMMON_PRACTICE;
  const why = `day ${day} of a year ending in ${yearFigure} (${order})`;
  return yearsEnding(yearFigure, era).flatMap((year) => {
    if (day < 1 || day > (isLeapYear(year) ? 366 : 365)) return [];
    const date = civilFromDays(daysFromCivil(year, 1, 1) + day - 1);
    return [{ interval: dayInterval(date.year, date.month, date.day), form: "day-of-year", why, basis }];
  });
}

function wholeYear(figures: string, era: Interval): readonly DateMarkReading[] {
  const told = {
    form: "year",
    why: "four figures can be a year by themselves",
    basis: COMMON_PRACTICE,
  } as const;
  return yearsEnding(figures, era).map((year) => ({ interval: yearInterval(year), ...told }));
}

function fourFigures(text: string, era: Interval): readonly DateMarkReading[] {
  const [first, last] = [text.slice(0, 2), text.slice(2)];
  const weekYear = {
    form: "week-year",
    why: `week ${Number(first)}, year ${last} (WWYY)`,
    basis: COMMON_PRACTICE,
  } as const;
  const yearWeek = {
    form: "year-week",
    why: `year ${first}, week ${Number(last)} (YYWW)`,
    basis: COMMON_PRACTICE,
  } as const;
  const monthYear = {
    form: "month-year",
    why: `month ${Number(first)}, year ${last}`,
    basis: COMMON_PRACTICE,
  } as const;
  return [
    ...wholeYear(text, era),
    ...weekReadings(Number(first), last, era, weekYear),
    ...weekReadings(Number(last), first, era, yearWeek),
    ...monthReadings(Number(first), last, era, monthYear),
    ...dayOfYear(Number(text.slice(0, 3)), text.slice(3), era, "JJJY"),
    ...dayOfYear(Number(text.slice(1)), text.slice(0, 1), era, "YJJJ"),
  ];
}

function threeFigures(text: string, era: Interval): readonly DateMarkReading[] {
  const [week, year] = [text.slice(0, 2), text.slice(2)];
  const weekYear = {
    form: "week-year",
    why: `week ${Number(week)} of a year ending in ${year} (WWY)`,
    basis: COMMON_PRACTICE,
  } as const;
  const month = Number(text.slice(0, 1));
  const monthYear = {
    form: "month-year",
    why: `month ${month}, year ${text.slice(1)}`,
    basis: COMMON_PRACTICE,
  } as const;
  return [
    ...weekReadings(Number(week), year, era, weekYear),
    ...monthReadings(month, text.slice(1), era, monthYear),
  ];
}

/** All readings of three or four figures without a sign between them. */
export function readFigureCode(text: string, era: Interval): readonly DateMarkReading[] {
  if (/^\d{4}$/.test(text)) return fourFigures(text, era);
  return /^\d{3}$/.test(text) ? threeFigures(text, era) : [];
}
