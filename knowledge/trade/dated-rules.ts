// Rules and signs with a known beginning: "not before" for what carries them, "required from" where a rule obliges.
// A rule's start dates the sign, never the car; almost nothing gives "not after".
import { formatInterval, parseDateText } from "../calendar/date-text.ts";
import { type Interval, monthStart, yearInterval } from "../calendar/interval.ts";
import { DATED_REQUIREMENTS, type DatedRequirement } from "./tables/dated-requirements.ts";
import { UN_REGULATIONS } from "./tables/un-regulations.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** A dated rule found for a question, with the first day, month or year its sign can occur. */
export interface DatedRule extends TradeReading {
  readonly requirement: DatedRequirement;
  readonly from: Interval | undefined;
}

const CUES: readonly (readonly [RegExp, string])[] = [
  [
    /high[- ](?:level|mounted)|third brake|centre high|center high|\bchmsl\b|high stop|\bu3\b/,
    "centre high stop lamp",
  ],
  [/side[- ]?(?:markers?|reflectors?)/, "side marker"],
  [/\butqg\b|treadwear/, "UTQG"],
  [/traction (?:grade )?aa|grade aa/, "traction grade AA"],
  [/\bjwl\b|\bvia\b(?= (?:mark|on|stamp))/, "JWL"],
  [
    /recycl\w* (?:triangle|symbol|mark)|numbered triangle|triangle with (?:a )?(?:number|figure)/,
    "recycling triangle",
  ],
  [/(?:material|plastic|moulded|molded|resin) marks?/, ">PP<"],
  [/pictograms?|symbols? on (?:the )?switch/, "ISO pictograms"],
  [/brake hoses?/, "brake hose"],
  [/belt labels?/, "belt label"],
  [/(?:door|certification) (?:label|sticker|plate)|label on (?:the )?door/, "door-edge"],
  [/17[- ]?(?:character|digit) (?:vins?|number)|17[- ]?(?:character|digit)s?\b/, "17-character"],
  [/\bvins? (?:numbers? )?(?:start|begin|became|become|come|required|compulsory)/, "17-character"],
  [/unified thread|\bun[cf]\b/, "Unified thread"],
  [/metric thread/, "metric thread"],
  [/\bce mark/, "CE mark"],
  [/r-?134a/, "refrigerant"],
  [/blade fuses?/, "blade fuses"],
  [/asbestos[- ]free/, "asbestos-free"],
  [
    /dot (?:codes?|dates?|numbers?)\b.*(?:t[yi]re|digit)|t[yi]res?\b.*\bdot (?:codes?|dates?|numbers?)|t[yi]re (?:dot|tin|date) codes?|(?:four|4)[- ]digit (?:t[yi]re )?(?:date|code)/,
    "tyre TIN",
  ],
];

/** The beginning of a printed date: a day, a month, a year, the first of a span or of a decade. */
export function beginningOf(date: string): Interval | undefined {
  const decade = /^(\d{4})s$/.exec(date);
  const span = /^(\d{4})-(\d{4})$/.exec(date);
  if (decade !== null || span !== null) return yearInterval(Number(decade?.[1] ?? span?.[1]));
  return parseDateText(date);
}

const HIGH_STOP_RULE: Omit<DatedRule, "requirement" | "from"> = {
  reading:
    "centre high-mounted stop lamp: required on US passenger cars made on or after 1 September 1985, whatever the model year; allowed from 1 August 1984",
  why: "the day of manufacture decides, not the sale nor the model year",
  basis: "FMVSS 108; NHTSA 86-3.1 and 86-4.17",
};

/** "U3 mark: not before 1 August 1984 (US cars)"; a span or a decade is said as printed. */
function sayRule(row: DatedRequirement, from: Interval | undefined): string {
  const isPlain = from !== undefined && /^\d{4}(?:-\d\d){0,2}$/.test(row.date);
  const day = isPlain ? formatInterval(from) : row.date;
  const limit = /^((?:not|seldom|rare) before)(?: about \d{4})?(.*)$/.exec(row.use);
  if (limit !== null) return `${row.sign}: ${limit[1]} ${day}${limit[2]}`;
  return row.use === "from" ? `${row.sign}: from ${day}` : `${row.sign}: from ${day} (${row.use})`;
}

// Light sources by the regulation of the headlamps that take them.
const BULBS: readonly (readonly [RegExp, number])[] = [
  [/\bh4\b/, 20],
  [/\bh[123]\b/, 8],
  [/xenon|gas[- ]discharge|\bhid\b/, 98],
];

/** A number written R43 or 43R where no tyre, rim, refrigerant or lamp is spoken of; two figures or more. */
function loneRegulation(lower: string): string | undefined {
  if (/\bt[yi]re|\brims?\b|wheel|refrigerant|air ?con|\blamp|headl|\bgas\b/.test(lower)) return undefined;
  return /\br[- ]?(\d{2,3})\b/.exec(lower)?.[1];
}

/** The UN Regulation a question names ("UN regulation 43", "ECE R16"), with its entry into force. */
export function unRegulationFor(text: string): TradeReading | undefined {
  const number =
    /\b(?:un|ece|unece) ?(?:reg(?:ulation)?\.? ?|r ?)(\d{1,3})\b|\breg(?:ulation|\.)? (?:no\.? ?)?(\d{1,3})\b/i.exec(
      text.slice(0, 2000),
    );
  const lower = text.slice(0, 2000).toLowerCase();
  const bulb = BULBS.find(
    ([pattern]) => pattern.test(lower) && /\bwhen\b|since|introduced|earliest/.test(lower),
  )?.[1];
  const subject =
    /\bregulation (?:is |are |covers |number )?(?:for |about |on |covers )+([a-z]{4,14}(?: [a-z]{4,14})?)/.exec(
      lower,
    )?.[1];
  const stem = subject?.split(" ").at(-1)?.replace(/s$/, "") ?? "?";
  const subjects = UN_REGULATIONS.filter((row) => row.subject.toLowerCase().includes(stem));
  const bySubject = (
    subjects.find(
      (row) => /^\w+ ?\w*$/.test(row.subject) && row.subject.toLowerCase().replace(/s$/, "").endsWith(stem),
    ) ?? subjects[0]
  )?.number;
  const wanted = number?.[1] ?? number?.[2] ?? loneRegulation(lower) ?? bulb ?? bySubject;
  const row = UN_REGULATIONS.find((candidate) => candidate.number === Number(wanted));
  const since = row === undefined ? undefined : parseDateText(row.inForce);
  if (row === undefined || since === undefined) return undefined;
  return {
    reading: `UN Regulation ${row.number}, ${row.subject}: in force from ${formatInterval(since)}`,
    why: "a mark of a regulation is not older than the regulation",
    basis: basisOf(row),
  };
}

/** The dated rules a question in plain words speaks of; empty when none is recognised. */
export function datedRulesFor(text: string): readonly DatedRule[] {
  const lower = text.slice(0, 2000).toLowerCase();
  const wanted = CUES.filter(([pattern]) => pattern.test(lower)).map(([, sign]) => sign);
  const rows = DATED_REQUIREMENTS.filter((row) => wanted.some((sign) => row.sign.startsWith(sign)));
  return rows.flatMap((row) => {
    const from = beginningOf(row.date);
    const why = "what carries the sign is not older; the rule dates the sign, never the car";
    const rule = { requirement: row, from, reading: sayRule(row, from), why, basis: basisOf(row) };
    return row.sign.startsWith("centre high stop") ? [{ ...rule, ...HIGH_STOP_RULE }, rule] : [rule];
  });
}

const HIGH_STOP_OPTIONAL = monthStart(1984, 8);
const HIGH_STOP_REQUIRED = monthStart(1985, 9);

/**
 * The centre high-mounted stop lamp on US passenger cars by the month the car was built, not sold nor its model
 * year: required on cars made on or after 1 September 1985, allowed from 1 August 1984 (FMVSS 108; NHTSA
 * 86-3.1, 86-4.17). A build interval across a border is "open".
 */
export function highStopLampRule(built: Interval): "none" | "allowed" | "required" | "open" {
  if (built.from >= HIGH_STOP_REQUIRED) return "required";
  if (built.to <= HIGH_STOP_OPTIONAL) return "none";
  return built.from >= HIGH_STOP_OPTIONAL && built.to <= HIGH_STOP_REQUIRED ? "allowed" : "open";
}
