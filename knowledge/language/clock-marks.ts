// Marks that are told in words rather than written: a moulding clock ("arrow at 5, centre 80", "80 in the middle,
// pointing to 5") and a figure with dots. Each becomes the text the decoder of date marks reads.
import { monthNumber } from "../calendar/month-name.ts";
import type { Span } from "./blank-noise.ts";

export interface ToldMark extends Span {
  readonly written: string;
  readonly form: "clock" | "glass-dots" | "dot-grid";
}

const monthWord = String.raw`(?<name>jan\w*|feb\w*|mar(?:ch)?|apr\w*|may|june?|july?|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*)`;
const spelled = "one two three four five six seven eight nine ten eleven twelve".split(" ");
const ordinals = "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth".split(
  " ",
);
const figure = String.raw`(?:the )?(?:number |figure |no\.? ?|month )?(?:(?<month>1[0-2]|0?[1-9])(?!\d)(?:th|st|nd|rd)?|${monthWord}|(?<!\b(?:this|that|which|each|other|my) )(?<spelled>${[...spelled, ...ordinals].join("|")})\b)`;
const lost = String.raw`(?:missing|gone|struck|knocked|flat\w*|filed|absent|filled|punched|not there)`;
/** The pip that is missing is the month; "one pip is flat" counts and numbers none. */
const pipOf = (noun: string): string =>
  String.raw`(?:(?!one )${figure} ${noun}\b(?: (?:is|was|has been|one|looks|the one that's|the one thats|that's|has))* ?${lost}|(?:missing|struck|flat\w*) ${noun} (?:is |at |= ?)*${figure}|\b${noun}s? (?:is |was )?${lost} (?:at |is )+${figure}|\b${noun} (?:at |for |of |no\. ?)?${figure}(?: (?:is|was|has been))* ?${lost})`;
const pip = pipOf("(?:pip|dot)");
/** Studs, which also hold parts on, are months only on a dial. */
const onDial = String.raw`\b(?:ring|dial|circle|pips)\b`;
const stud = pipOf("(?:stud|nub|pimple)");
const ordinal = String.raw`\b(?:(?<spelled>${ordinals.join("|")})|(?:no\. ?|number )(?<month>1[0-2]|[1-9])(?!\d))`;
/** "Seventy nine in the middle". */
const spelledYear = String.raw`(?:sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?\b`;
const year = String.raw`(?<year>${spelledYear}|(?:19)?[4-9]\d|\d ?[|/] ?\d|[7-9] \d(?= (?:in|at|on) the (?:middle|cent)))(?!\d| ?(?:mm|cm|g|kg|inch)|[.,]\d)`;
const arrow = String.raw`\b(?:arrow(?:'s)?|pointer|needle|clock|dial|date wheel|(?:the|its|little|clock) hand)\b[^.\d\n]{0,34}?`;
const middle = `(?:cent(?:re|er)|middle|inner|year|inside|in it)`;

const clocks: readonly RegExp[] = [
  new RegExp(
    `${arrow}${figure}(?:[^\\d\\n]{0,30}?\\b${middle}\\b[^\\d\\n]{0,16}?|[^\\d\\n]{1,12}?)'?${year}`,
    "g",
  ),
  new RegExp(
    String.raw`\b${middle}\b[^.\d\n]{0,16}?'?${year}[^.\d\n]{0,30}?\b(?:arrow|pointer|hand|needle|point\w*)\b[^.\d\n]{0,20}?${figure}`,
    "g",
  ),
  new RegExp(
    String.raw`'?${year} (?:in|at|on) the (?:cent(?:re|er)|middle)[^.\d\n]{0,30}?\b(?:arrow|pointer|hand|needle|point\w*)\b[^.\d\n]{0,20}?${figure}`,
    "g",
  ),
  new RegExp(String.raw`'?${year}[^\d\n]{0,50}?${pip}`, "g"),
  new RegExp(String.raw`${pip}[^\d\n]{0,50}?'?${year}`, "g"),
  new RegExp(
    String.raw`\b(?:pip|dot|stud)s? (?:is |are |was )?${lost}[^\d\n]{0,30}?\b${monthWord}[^\d\n]{0,30}?'?${year}`,
    "g",
  ),
  new RegExp(String.raw`${onDial}[^\d\n]{0,40}?'?${year}[^\d\n]{0,40}?${stud}`, "g"),
  new RegExp(String.raw`${onDial}[^\d\n]{0,50}?${stud}[^\d\n]{0,40}?'?${year}`, "g"),
  new RegExp(
    String.raw`${onDial}[^\d\n]{0,60}?${ordinal},? (?:one )?(?:is |was )?${lost}[^\d\n]{0,40}?'?${year}`,
    "g",
  ),
  new RegExp(String.raw`\bpoint\w* (?:at|to) ${figure}[^.\d\n]{0,30}?'?${year}`, "g"),
];

const count = "(?<count>[1-6]|one|two|three|four|five|six)";
const dots: readonly RegExp[] = [
  new RegExp(
    String.raw`\b${count} dots? (?<place>before|then|and|left of|in front of|to the left of|after|behind|right of|to the right of|under|over) (?:the |an? )?(?:figure |number )?(?<figure>\d{1,2})(?!\d)`,
    "g",
  ),
  new RegExp(
    String.raw`(?<![\d/])(?<figure>\d)(?!\d),? (?:and |with |has |then )?${count} dots? ?(?<place>before|after|in front|left|right|behind)?`,
    "g",
  ),
  // Not the ".1" of "± .1" and ".5 mm".
  /(?<![.\w\d/)\]"'])(?<!(?:\u00b1|\+ ?\/? ?-|[~\u2248]) ?)(?<signs>(?:[.\u00b7\u2022\u2219*] ?){1,6}\d{1,2}|\d{1,2} ?[.\u00b7\u2022\u2219*]{2,6})(?![\w.]| ?(?:mm|cm|in|inch|thou|kg|lbs?|oz)\b|")/g,
];

/** Told marks of a lower-case readable text; clocks first, no overlaps. */
export function findToldMarks(text: string): readonly ToldMark[] {
  const found: ToldMark[] = [];
  for (const pattern of clocks) collect(text, pattern, found, clockMark);
  for (const pattern of dots) collect(text, pattern, found, dotMark);
  return found.sort((one, other) => one.start - other.start);
}

type Groups = Readonly<Record<string, string | undefined>>;

function collect(
  text: string,
  pattern: RegExp,
  found: ToldMark[],
  read: (groups: Groups) => Pick<ToldMark, "written" | "form"> | undefined,
): void {
  for (const match of text.matchAll(pattern)) {
    const mark = read(match.groups ?? {});
    const start = match.index;
    const end = start + match[0].length;
    if (mark === undefined || found.some((other) => other.start < end && start < other.end)) continue;
    if (found.length < 20) found.push({ start, end, ...mark });
  }
}

function clockMark(groups: Groups): Pick<ToldMark, "written" | "form"> {
  const named = monthNumber(groups.name ?? "") ?? 0;
  const told = Math.max(spelled.indexOf(groups.spelled ?? ""), ordinals.indexOf(groups.spelled ?? "")) + 1;
  const month = groups.month ?? String(named > 0 ? named : told);
  const figures = yearFigures(groups.year ?? "");
  return { written: `arrow at ${Number(month)}, centre ${figures.slice(-2)}`, form: "clock" };
}

function yearFigures(said: string): string {
  const [tens = "", ones = ""] = said.split(/[ -]/);
  const decade = ["sixty", "seventy", "eighty", "ninety"].indexOf(tens);
  return decade < 0 ? said.replace(/[ |/]/g, "") : `${decade + 6}${spelled.indexOf(ones) + 1}`;
}

function dotMark(groups: Groups): Pick<ToldMark, "written" | "form"> | undefined {
  const signs = groups.signs;
  if (signs !== undefined)
    return { written: signs.replace(/[\u2022*]/g, ".").replace(/\. (?=\.)/g, "."), form: "glass-dots" };
  const isAfter = /after|behind|right/.test(groups.place ?? "after");
  const figure = groups.figure ?? "";
  const told = groups.count ?? "";
  return isAfter
    ? { written: `${figure} with ${told} dots after`, form: "glass-dots" }
    : { written: `${told} dots before ${figure}`, form: "glass-dots" };
}
