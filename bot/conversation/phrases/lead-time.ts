/** Months from a mark to the car, in words. */
import { capitalised, numberInWords } from "./grammar.ts";

/** `months` from mark to car; most parts of the kind take `from` to `to`, all > 0. `cars`: how many taught that; 0: the handbook says it. */
export function leadTime(mark: string, months: number, from: number, to: number, cars = 0): string {
  const range = `most take ${roundMonths(from)} to ${roundMonths(to)}`;
  const judged = months >= from && months <= to ? "usual" : months < from ? "short" : "long";
  return `${capitalised(monthsInWords(months))} from the ${mark} to the car: ${judged} (${range}${cars === 0 ? "" : `, learnt from ${cars} documented cars`}).`;
}

function monthsInWords(months: number): string {
  const whole = Math.round(months);
  if (whole < 1) return "less than a month";
  return whole === 1 ? "about a month" : `about ${numberInWords(whole)} months`;
}

function roundMonths(months: number): string {
  const whole = Math.max(1, Math.round(months));
  return whole === 1 ? "one month" : numberInWords(whole);
}
