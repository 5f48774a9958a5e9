// Figure and dots on glass: the figure is the last of the year, the dots tell the month, by two opposite habits
// and no standard. Both are always given: habit A counts down (dots before: month 7 − n, after: 13 − n), habit
// B counts up (before: n, after: 6 + n). So "..7" is May by A and February by B.
import { type Interval, yearInterval } from "../../calendar/interval.ts";
import { COMMON_PRACTICE } from "../trade-reading.ts";
import { type DateMarkReading, monthReadings, yearsEnding } from "./date-mark-reading.ts";

const TWO_GUIDES = "two published glass-marking guides";
const COUNT_WORDS = ["one", "two", "three", "four", "five", "six"];

interface FigureWithDots {
  readonly figures: string;
  readonly before: number;
  readonly after: number;
}

function countDots(text: string | undefined): number {
  return [...(text ?? "")].reduce((sum, sign) => sum + (sign === "…" ? 3 : sign === " " ? 0 : 1), 0);
}

function countWord(text: string): number {
  const word = COUNT_WORDS.indexOf(text);
  return word >= 0 ? word + 1 : Number(text);
}

function parseSigns(text: string): FigureWithDots | undefined {
  const match = /^([.•·●∙*… ]{0,13}?) ?(\d{1,2}) ?([.•·●∙*… ]{0,13})$/.exec(text);
  if (match === null) return undefined;
  return { figures: match[2] ?? "", before: countDots(match[1]), after: countDots(match[3]) };
}

function parseWords(text: string): FigureWithDots | undefined {
  const count = "([1-6]|one|two|three|four|five|six)";
  const dotsFirst = new RegExp(
    `^(?:with )?${count} dots? (?:before|then|and|left of|in front of) (?:the |a )?(\\d{1,2})$`,
  ).exec(text);
  if (dotsFirst !== null)
    return { figures: dotsFirst[2] ?? "", before: countWord(dotsFirst[1] ?? ""), after: 0 };
  const placed = new RegExp(
    `^(?:the |a )?(\\d{1,2}),? (?:and |with |has )?${count} dots? ?(before|after|in front|left|right|behind)?(?: it| of it)?$`,
  ).exec(text);
  if (placed === null) return undefined;
  const dots = countWord(placed[2] ?? "");
  const isBefore = /before|front|left/.test(placed[3] ?? "");
  return { figures: placed[1] ?? "", before: isBefore ? dots : 0, after: isBefore ? 0 : dots };
}

function habit(mark: FigureWithDots, direction: "down" | "up"): number {
  if (direction === "down") return mark.before > 0 ? 7 - mark.before : 13 - mark.after;
  return mark.before > 0 ? mark.before : 6 + mark.after;
}

/** All readings of a glass mark such as "..7", "7...", "· · 81" or "two dots before 7". Dots on both sides, or more than six, give none. */
export function readGlassDots(text: string, era: Interval): readonly DateMarkReading[] {
  const mark = parseSigns(text) ?? parseWords(text.toLowerCase());
  if (mark === undefined || (mark.before > 0 && mark.after > 0)) return [];
  const dots = mark.before + mark.after;
  if (dots > 6) return [];
  if (dots === 0) {
    const why = "a figure without dots gives the year only";
    return yearsEnding(mark.figures, era).map((year) => ({
      interval: yearInterval(year),
      form: "glass-dots",
      why,
      basis: COMMON_PRACTICE,
    }));
  }
  const where = `${dots} ${dots === 1 ? "dot" : "dots"} ${mark.before > 0 ? "before" : "after"} the figure`;
  const down = {
    form: "glass-dots",
    why: `${where}, counted down to the figure's half-year`,
    basis: COMMON_PRACTICE,
  } as const;
  const up = { form: "glass-dots", why: `${where}, counted up`, basis: TWO_GUIDES } as const;
  return [
    ...monthReadings(habit(mark, "down"), mark.figures, era, down),
    ...monthReadings(habit(mark, "up"), mark.figures, era, up),
  ];
}
