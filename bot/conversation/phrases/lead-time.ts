/** Months from a mark to the car, in words. */
import { capitalised, numberInWords } from "./grammar.ts";

/** `months` from mark to car; most parts of the kind take `from` to `to`. All in months, > 0. */
export function leadTime(mark: string, months: number, from: number, to: number): string {
  const range = `most take ${roundMonths(from)} to ${roundMonths(to)}`;
  const judged = months >= from && months <= to ? "usual" : months < from ? "short" : "long";
  return `${capitalised(monthsInWords(months))} from the ${mark} to the car: ${judged} (${range}).`;
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
