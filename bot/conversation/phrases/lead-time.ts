/** Months from a mark to the car, in words. */
import { capitalised, numberInWords } from "./grammar.ts";

/** How long most parts take, in months > 0. `taught`: how many taught it, 0 where the handbook says it. */
export interface UsualMonths {
  readonly from: number;
  readonly to: number;
  readonly taught: number;
}

/** `months` from a mark to what comes next: the car, or another mark of the part. */
export function leadTime(mark: string, next: string | undefined, months: number, usual: UsualMonths): string {
  const { from, to } = usual;
  const judged = months >= from && months <= to ? "usual" : months < from ? "short" : "long";
  const where = `from the ${mark} to the ${next ?? "car"}`;
  return `${capitalised(monthsInWords(months))} ${where}: ${judged} (${mostTake(usual)}${learntFrom(next, usual)}).`;
}

function mostTake({ from, to }: UsualMonths): string {
  const [least, most] = [roundMonths(from), roundMonths(to)];
  return least === most ? `most take about ${least}` : `most take ${least} to ${most}`;
}

function learntFrom(next: string | undefined, { taught }: UsualMonths): string {
  if (taught === 0) return "";
  return `, learnt from ${taught} ${next === undefined ? "documented cars" : "parts with both marks"}`;
}

/** A mark by itself: what is usual, and where that comes from. */
export function usualLeadOf(
  mark: string,
  next: string | undefined,
  usual: UsualMonths,
  isTrade: boolean,
): string {
  const source = isTrade
    ? ", the trade’s usual: the handbook says nothing of it"
    : ", as the handbook has it";
  const months = roundMonths(usual.to) === roundMonths(1) ? "" : " months";
  return `from the ${mark} to the ${next ?? "car"} ${mostTake(usual)}${months}${usual.taught === 0 ? source : learntFrom(next, usual)}`;
}

/** What a mark and a build date say of each other. */
export const leadVerdicts = {
  fits: "they go together",
  "dated-after-built":
    "the part is dated after the car was built, which is no lead at all (a later part, a wrong build date or a misread mark)",
  "hardly-time": "hardly time enough for the part to reach the works (look at the mark again)",
  "long-on-the-shelf": "long on the shelf, or an older part: unusual for a part as built",
} as const;
export const pairJudged = (mark: string, read: string, built: string, verdict: string) =>
  `the ${mark}, ${read}, and the car, built ${built}: ${verdict}`;

function monthsInWords(months: number): string {
  const whole = Math.round(months);
  if (whole < 1) return "less than a month";
  return whole === 1 ? "about a month" : `about ${numberInWords(whole)} months`;
}

function roundMonths(months: number): string {
  const whole = Math.max(1, Math.round(months));
  return whole === 1 ? "one month" : numberInWords(whole);
}
