// Questions about dates on parts: tyre numbers, dots on glass, clocks, codes of figures, weeks.
import { formatInterval } from "../../calendar/date-text.ts";
import { type Interval, monthInterval, monthStart } from "../../calendar/interval.ts";
import { tyreWeekInterval } from "../../calendar/tyre-week.ts";
import type { DateMarkForm, DateMarkReading } from "../date-marks/date-mark-reading.ts";
import { decodeDateMark } from "../decode-date-mark.ts";
import { LETTER_DOTS_REMARK } from "../glazing-mark.ts";
import { COMMON_PRACTICE, type TradeReading } from "../trade-reading.ts";
import { type TopicReader, type TradeContext, topicAnswer } from "./trade-question.ts";

const SLIPS =
  "Look again for the usual slips (O/0, I/1, S/5, B/8, 6/9 upside down, marks read mirrored from inside)";

/** A date mark cut out of a message, with the form that the words around it name. */
export interface SpottedDateMark {
  readonly mark: string;
  readonly form: DateMarkForm | undefined;
}

/** The date at the end of a tyre's number: digits after DOT, or a code said to be on a tyre. Not DOT on glass. */
export function spotTyreDate(text: string): SpottedDateMark | undefined {
  const isTyre = /\bt[yi]res?\b|sidewall|\btin\b/i.test(text);
  const isElsewhere = /\bglass\b|windscreen|windshield|window|\blamps?\b|\blens\b|\bfluid\b/i.test(text);
  const isDotDate = /\bdot (?:codes?|dates?|numbers?)\b|\bdot\b[^a-z\d]{0,8}\d{3,4}\b/i.test(text);
  const start = (isTyre || isDotDate ? /\bDOT\b/i : /\bDOT\b/).exec(text)?.index;
  if (isElsewhere || (start === undefined && !isTyre)) return undefined;
  const tail =
    start === undefined
      ? (/\b(?:code|number|date|stamp(?:ed)?|ends(?: in| with)?)\b[^.?!]{0,40}/i.exec(text)?.[0] ?? "")
      : text.slice(start, start + 60);
  const piece = /^[^?!;,]*/.exec(tail)?.[0] ?? "";
  const groups = [
    ...piece.matchAll(
      /(?<![A-Za-z\d/.,]|\b(?:after|before|since|until|by|year) )\d{3,4}(?![A-Za-z\d/]|[.,]\d| ?(?:mm|cm|kg|km|psi|inch|miles)\b)/g,
    ),
  ];
  // "The tyre says 2315" counts with four figures that are no year, so that a size or "in 2019" is not a date code.
  const loose =
    /\b(?:says|reads|dated|marked) (\d{4})\b|\b(\d{4}) on (?:a|the|my) t[yi]re/i
      .exec(text)
      ?.slice(1)
      .find(Boolean) ?? "";
  const last = groups.at(-1)?.[0] ?? (/^(?!19|20)\d{4}$/.test(loose) ? loose : undefined);
  const hasTriangle = /triangle|[△▲▵]/i.test(text.slice(0, 300)) && !/no (?:small )?triangle/i.test(text);
  return last === undefined ? undefined : { mark: `DOT ${last}${hasTriangle ? " △" : ""}`, form: "tyre" };
}

/** As `spotTyreDate`; a question about a tyre may also hold its four figures anywhere ("4402 at the end of the dot"). */
function spotAskedTyreDate(text: string): SpottedDateMark | undefined {
  const spotted = spotTyreDate(text);
  if (spotted !== undefined || !/\bt[yi]res?\b|sidewall/i.test(text)) return spotted;
  const figures = [...text.matchAll(/(?<![A-Za-z\d/.,-])\d{4}(?![A-Za-z\d/-]|[.,]\d)/g)].map(
    ([group]) => group,
  );
  const last = /\bends?\b/i.test(text) ? figures[0] : figures.find((group) => !/^(?:19|20)/.test(group));
  return last === undefined ? undefined : { mark: `DOT ${last}`, form: "tyre" };
}

/** Figure and dots in a message about glass: two dots or more as signs, or the dots in words. */
export function spotGlassDots(text: string): SpottedDateMark | undefined {
  if (!/\bglass\b|windscreen|windshield|\bwindow|\bpane\b|\bscreen\b|quarter ?light|\bdots?\b/i.test(text))
    return undefined;
  const signs =
    /(?<![\w.•·●])(?:(?:[.•·●] ?){2,6}\d{1,2}|[•·●] ?\d{1,2}|… ?\d{1,2})(?![\w.•·●])|(?<![\w.])\d{1,2} ?(?:[.•·●]{2,6}|[•·●]|…)(?!\w)/.exec(
      text,
    );
  if (signs !== null) return { mark: signs[0], form: "glass-dots" };
  const single = /\b(?:dots?|month|date)\b/i.test(text)
    ? /(?<![\w.])\.\d(?![\w.]| ?(?:mm|in|kg|g)\b)/.exec(text)
    : null;
  if (single !== null) return { mark: single[0], form: "glass-dots" };
  const count = "(?:[1-6]|one|two|three|four|five|six)";
  const words = new RegExp(
    `\\b${count} dots? (?:before|then|left of|in front of|after) (?:the |an? )?\\d{1,2}\\b|\\b\\d{1,2},? (?:and |with |has )?${count} dots? ?(?:before|after|in front|left|right|behind)?(?: it)?\\b`,
    "i",
  ).exec(text);
  return words === null ? undefined : { mark: words[0].trim(), form: "glass-dots" };
}

function spotOther(text: string): SpottedDateMark | undefined {
  const patterns: readonly RegExp[] = [
    /\b(?:week|wk\.?) ?\d{1,2}(?: of|,)?[ /'’-]{1,3}(?:\d{4}|\d{2})\b/i,
    /\b\d{4}-?W\d{2}\b/i,
    /\b(?:arrow|pointer)(?: tip)? (?:is )?(?:at|to|on|points? (?:at|to)) \d{1,2},? .{0,24}?(?:\d\s?[|/]\s?\d|\d{4}|\d{1,2})(?: in the (?:cent(?:re|er)|middle))?\b/i,
    /\b(?:last )?year (?:\d{4}|\d{2}),? (?:has |with )?\d{1,2} dots?\b/i,
  ];
  const found = patterns.map((pattern) => pattern.exec(text)?.[0]).find((mark) => mark !== undefined);
  if (found !== undefined) return { mark: found.replace(/ in (?=\d)/, " "), form: undefined };
  const code =
    /\b(?:code|stamp|julian(?: date)?|stamped|date|dated|mark|marked|cast)(?: mark| code| stamp)?(?: is| of| reads| says|:)? "?((?:[A-M]|[IVX]{1,4})?[ /]?\d{1,4}(?:[ /.-]\d{1,4}){0,2})(?![\w/])/i.exec(
      text,
    );
  const asked =
    /\bwhat does "?(\d{4}|\d{3,4} \d)"? mean(?! (?:on|on a|on my) (?:t[yi]re|glass|bolt|lens))/i.exec(text);
  const onPart = /(?:^|does )(\d{1,2}\/\d{2}) (?:on|in|stamped|cast)\b.{3,40}\bmean/i.exec(text);
  if (onPart?.[1] !== undefined && !/bolt|spanner|thread|nut\b|drill/i.test(text))
    return { mark: onPart[1], form: undefined };
  if (asked?.[1] !== undefined) return { mark: asked[1], form: undefined };
  return code?.[1] === undefined ? undefined : { mark: code[1].trim(), form: undefined };
}

/** The years a mark may belong to: those of the case, or 1900 to today. */
function eraOf(context: TradeContext): Interval {
  return context.era ?? { from: monthStart(1900, 1), to: context.today.to };
}

/** Readings as lines: those of one form and reason together, their dates joined. */
function groupReadings(readings: readonly DateMarkReading[]): readonly TradeReading[] {
  const groups = new Map<string, DateMarkReading[]>();
  for (const reading of readings) {
    const key = `${reading.form} ${reading.why}`;
    groups.set(key, [...(groups.get(key) ?? []), reading]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    const dates = group.slice(-6).map((reading) => formatInterval(reading.interval));
    return first === undefined ? [] : [{ reading: dates.join(" or "), why: first.why, basis: first.basis }];
  });
}

/** Why a tyre's figures give no date: no such week, one still to come, or four figures for a year before they were used. */
function noTyreDate(mark: string, today: Interval): TradeReading {
  const [, week, year] = /\b(\d\d)(\d\d)\b/.exec(mark) ?? [];
  const isWeek = Number(week) >= 1 && Number(week) <= 52;
  const ahead = tyreWeekInterval(2000 + Number(year), Number(week));
  if (ahead !== undefined && ahead.from >= today.to && Number(year) < 71)
    return {
      reading: `no date: the figures would be ${formatInterval(ahead)}, and that is still to come`,
      why: "no tyre is marked ahead of its making: look for a slip, or for figures that are not the end of the number",
      basis: "49 CFR 574",
    };
  if (isWeek && Number(year) >= 71)
    return {
      reading: `no date: the figures would be week ${Number(week)} of 19${year}, but four figures came with the rule of July 1999`,
      why: "older tyres carry three figures: look for a slip, or for figures that are not the end of the number",
      basis: "64 FR 36807",
    };
  return {
    reading: "no date: the figures are week and year, and that year has no such week",
    why: "weeks run to 53 at most; pages that read month and year are wrong",
    basis: "49 CFR 574",
  };
}

/** Says why four figures that look like month and year ("1299") are week and year. */
function monthTrap(mark: string): readonly TradeReading[] {
  const [, week, year] = /\b(\d\d)(\d\d)\b/.exec(mark) ?? [];
  if (week === undefined || year === undefined || Number(week) < 1 || Number(week) > 12) return [];
  const fullYear = Number(year) + (Number(year) >= 71 ? 1900 : 2000);
  return [
    {
      reading: `week ${Number(week)} of ${fullYear}, not ${formatInterval(monthInterval(fullYear, Number(week)))}: the figures are week and year, never month and year`,
      why: "weeks run to 53, so 2501 and 1299 are written by one rule; pages that read a month are wrong",
      basis: "49 CFR 574",
    },
  ];
}

/** "tyre says DOT … 318, how old". A tyre may be younger than the car: every year since 1971 is kept. */
export const tyreDateTopic: TopicReader = (question) => {
  const asks = /how old|\byear\b|when|date|\bage\b|mean|\bcode\b|decode|\bdot\b|\bends\b|\b\d{4}\b/;
  if (!question.isAsking || !question.mayBeAnswered || !asks.test(question.lower)) return undefined;
  const spotted = spotAskedTyreDate(question.text);
  if (spotted === undefined) return undefined;
  const { today } = question.context;
  const readings = decodeDateMark(spotted.mark, {
    form: "tyre",
    era: { from: monthStart(1971, 1), to: today.to },
    today,
  });
  const retread: readonly TradeReading[] = /retread|re-?mould|recap/.test(question.lower)
    ? [
        {
          reading: "on a retread the number dates the retreading, not the casing",
          why: "the retreader adds his own number",
          basis: "49 CFR 574.5; 80 FR 19553",
        },
      ]
    : [];
  return topicAnswer(
    "tyre date",
    [
      ...(readings.length === 0
        ? [noTyreDate(spotted.mark, today)]
        : [...groupReadings(readings), ...monthTrap(spotted.mark)]),
      ...retread,
    ],
    {
      cannotSay:
        "It dates the tyre, never the car; with three figures the decade stays open unless a triangle or the pattern tells.",
      lookNext:
        "Only one sidewall need carry the full number: look at the other side too, and at the speed letter and size.",
      cautions: ["wheel"],
    },
  );
};

/** "..7 on the windscreen, what date is that". */
export const glassDateTopic: TopicReader = (question) => {
  if (!question.isAsking || !question.mayBeAnswered) return undefined;
  const spotted = spotGlassDots(question.text);
  const isUnderLetters =
    /\b(?:dots?|bars?|lines?) (?:under|below|over|above) (?:the |some |two |three )?letters?/.test(
      question.lower,
    );
  if (spotted === undefined && !isUnderLetters) return undefined;
  const dates =
    spotted === undefined
      ? []
      : decodeDateMark(spotted.mark, {
          form: "glass-dots",
          era: eraOf(question.context),
          today: question.context.today,
        });
  const readings = [...groupReadings(dates), ...(isUnderLetters ? [LETTER_DOTS_REMARK] : [])];
  return topicAnswer("glass date", readings, {
    cannotSay:
      "There is no standard: makers counted the dots by two opposite habits. The decade comes from the car.",
    lookNext:
      "Read all panes: a set with one other maker or year shows the replaced one. Windscreens are replaced most, fixed quarter glass least.",
    cautions: ["glass"],
  });
};

const CAVITY_READING: TradeReading = {
  reading: "a single figure in a ring alone is the number of the cavity in the mould, not the year",
  why: "tools with several cavities number them, often 1 to 8 near the gate",
  basis: COMMON_PRACTICE,
};

/** "week 31 of 1981 is when", "what does date code 8127 mean". */
export const dateCodeTopic: TopicReader = (question) => {
  const asks =
    /when|what (?:date|day|year|month)|mean|decode|which (?:week|month|date|year)|how old|date code/;
  if (!question.isAsking || !question.mayBeAnswered || !asks.test(question.lower)) return undefined;
  const spotted = spotOther(question.text);
  const isRinged =
    /(?<![\d.])[1-9] in a (?:ring|circle)\b/.test(question.lower) && !/\be ?[1-9] in/.test(question.lower);
  if (spotted === undefined && !isRinged) return undefined;
  const dates =
    spotted === undefined
      ? []
      : decodeDateMark(spotted.mark, { era: eraOf(question.context), today: question.context.today });
  const readings = [...groupReadings(dates), ...(isRinged ? [CAVITY_READING] : [])];
  return topicAnswer("date mark", readings, {
    cannotSay:
      "The mark dates the part, its tool or its batch, never the car; a hand-set insert is a not-before.",
    lookNext: `${SLIPS}, and tell me what kind of part it is on: the form follows the trade.`,
  });
};
