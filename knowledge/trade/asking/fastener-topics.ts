// Questions about threads, bolt heads and spanners.
import { readHeadFigures, readHeadLines, readInchGrade, readOldHeadMark } from "../bolt-head.ts";
import { NUMBER, parsePlainNumber } from "../plain-numbers.ts";
import {
  seriesNamed,
  spannersOfThread,
  spannersOfWidth,
  type ThreadCandidate,
  type ThreadMeasure,
  threadsNamed,
  threadsOfMeasure,
  threadTrap,
} from "../thread-identification.ts";
import { parseCount, type TopicReader, topicAnswer } from "./trade-question.ts";

const INCH = 25.4;
const SERVICE =
  "Threads show the design age and country of the component more than of the car; service bolts mix standards.";

function pitchOf(lower: string): number | undefined {
  const perInch = parsePlainNumber(
    /(\d{1,2}(?:\.\d)?) ?(?:tpi|threads? (?:per|to the|an) inch)/.exec(lower)?.[1] ?? "",
  );
  if (perInch !== undefined && perInch > 0) return INCH / perInch;
  const joined = /(?:\d\/\d{1,2}|#?\b1?\d)[ -](\d{2})\b(?! ?mm)/.exec(lower)?.[1];
  if (joined !== undefined && /\d\/\d{1,2} \d|\d-\d/.test(lower) && Number(joined) >= 8)
    return INCH / Number(joined);
  const named = /\bpitch(?: of| is|:)? (\d(?:[.,]\d{1,3})?)|(\d[.,]\d{1,3}) ?(?:mm )?pitch/.exec(lower);
  const metric = /\bm\d{1,2}(?:\.\d)? ?[x× ] ?(\d(?:[.,]\d{1,2})?)\b/.exec(lower);
  return parsePlainNumber(named?.[1] ?? named?.[2] ?? metric?.[1] ?? "");
}

function diameterOf(lower: string): number | undefined {
  const metric = parsePlainNumber(/\bm(\d{1,2}(?:\.\d)?)(?![\d.a-wyz])/.exec(lower)?.[1] ?? "");
  if (metric !== undefined) return metric;
  const numbered = /(?<![\w./])#?(\d{1,2})-(?:24|32|36|40|44|48)\b/.exec(lower)?.[1];
  // Numbered Unified sizes: 0.060 inch and 0.013 for each number (ASME B1.1).
  if (numbered !== undefined) return (0.06 + 0.013 * Number(numbered)) * INCH;
  const measured = new RegExp(
    String.raw`(?<![\w.,/])(${NUMBER}) ?(mm|inch(?:es)?|in\b|")(?! pitch(?! (?:of |is )?\d))`,
  ).exec(lower);
  const value = parsePlainNumber(measured?.[1] ?? "");
  if (measured !== null && value !== undefined) return measured[2] === "mm" ? value : value * INCH;
  const fraction = parsePlainNumber(/(?<![\w.,/-])(\d{1,2}\/\d{1,2})(?![\w/])/.exec(lower)?.[1] ?? "");
  return fraction === undefined ? undefined : fraction * INCH;
}

function measureOf(lower: string): ThreadMeasure {
  const diameter = diameterOf(lower);
  const pitch = pitchOf(lower);
  return {
    ...(diameter === undefined ? {} : { diameterMillimetres: diameter }),
    ...(pitch === undefined ? {} : { pitchMillimetres: pitch }),
  };
}

const answerThreads = (candidates: readonly ThreadCandidate[]) =>
  topicAnswer("thread", candidates, { cannotSay: SERVICE, lookNext: threadTrap(candidates) });

/** Threads called by name; beside such a name a metric one is an alternative ("0BA or M6"). */
function namedThreads(lower: string): readonly ThreadCandidate[] {
  const named = threadsNamed(lower);
  const metric = parsePlainNumber(/\bm(\d{1,2})\b/.exec(lower)?.[1] ?? "");
  if (named.length === 0 || metric === undefined) return named;
  const others = threadsOfMeasure({ diameterMillimetres: metric });
  return [...named, ...others.filter((other) => named.every((one) => one.reading !== other.reading))];
}

function answerSeries(lower: string) {
  const isCompared =
    /\bvs\b|versus|differ|\bsame\b|flank|^what(?:'s|s| is) [a-z]{2,5}\??$/.test(lower) &&
    !/\b(?:my|mine|it|they|these)\b/.test(lower);
  const series = isCompared ? seriesNamed(lower) : [];
  if (series.length < 1) return undefined;
  return topicAnswer("thread", series, { cannotSay: SERVICE, lookNext: threadTrap([]) });
}

function answerMeasured(lower: string, isAsking: boolean) {
  const measure = measureOf(lower);
  const isLookUp = isAsking || /^m\d{1,2} pitch$/.test(lower);
  const isMeasured = measure.diameterMillimetres !== undefined;
  if (!isMeasured || (measure.pitchMillimetres === undefined && !isLookUp)) return undefined;
  return answerThreads(threadsOfMeasure(measure));
}

/** "0.312 inch thread 18 tpi", "8 mm bolt 1.25 pitch, what thread", "unf vs bsf". */
export const threadTopic: TopicReader = (question) => {
  const { lower, isAsking } = question;
  if (!question.mayBeAnswered || /pitch circle|bolt circle|\bnew thread (?:for|about|on)\b/.test(lower))
    return undefined;
  // "The thread of the studs, M5 or M6?" asks what a part has, which no table knows.
  if (
    /\bthreads? (?:size )?(?:of|on|in) (?:the|my|these|those|its)\b/.test(lower) &&
    /\bm\d{1,2} or m?\d/.test(lower)
  )
    return undefined;
  const isAbout =
    /\bthreads?\b|\btpi\b|\bpitch\b/.test(lower) ||
    (isAsking &&
      /\bm\d{1,2} ?[x×] ?\d|\b\d{1,2}(?:\/\d{1,2})?-\d{2}\b(?! ?mm)|\d\/\d{1,2} \d{2} (?:un[cf]|bs[wf]|whit)|un[cf] for \d\/\d{1,2} \d\d\b/.test(
        lower,
      ));
  const named =
    isAbout || /\bsize\b|diameter|\bmean|^\d\S*(?: \S+)? or\b|^m\d{1,2} or\b|how big|in mm|^what/.test(lower)
      ? namedThreads(lower)
      : [];
  if (named.length > 0) return answerThreads(named);
  const series = isAsking ? answerSeries(lower) : undefined;
  return series ?? (isAbout ? answerMeasured(lower, isAsking) : undefined);
};

/** "bolt head with three lines", "8.8 on the bolt head". */
export const boltHeadTopic: TopicReader = (question) => {
  const isAbout =
    (/\bbolts?\b|\bscrews?\b|\bhead(?:s|ed)?\b|\bset ?screws?\b/.test(question.lower) ||
      /(?:8\.8|10\.9|12\.9|grade \d).{0,20}(?:grade|strong|better|tensile|strength|\bvs\b)|^what(?:'s| is|s) (?:8\.8|10\.9|12\.9|a[24]-[78]0)\??$|^a[24]-[78]0\b|strength of (?:8\.8|10\.9|12\.9)\b/.test(
        question.lower,
      )) &&
    !/headl|cylinder head|high[- ]?level/.test(question.lower);
  if (!question.mayBeAnswered || !isAbout) return undefined;
  const lines = parseCount(
    /\b(\d|no|three|five|six) (?:radial |raised )?(?:lines?|marks|dashes|slashes)\b/.exec(
      question.lower,
    )?.[1],
  );
  const figures = [
    ...question.lower.matchAll(/(?<![\d.])(0?\d{1,2}[.,]\d|a[24]-[78]0)(?! ?(?:mm|inch|in\b|"|x))(?![\d/])/g),
  ].map((match) => match[1] ?? "");
  const old =
    /\b(?:letter|marked|stamped|does(?: an?)?) ["']?([RSTVABP]|5D|6D|8G|10K|12K)["']?(?![A-Za-z0-9])/.exec(
      question.text,
    )?.[1];
  const grade = /\bgrade (\d(?:\.\d)?)\b/.exec(question.lower)?.[1];
  const circles = /three (?:touching )?circles/.test(question.lower) ? readOldHeadMark("three circles") : [];
  const readings = [
    ...(lines === undefined ? [] : readHeadLines(lines)),
    ...figures.flatMap(readHeadFigures),
    ...(old === undefined ? [] : readOldHeadMark(old)),
    ...(grade === undefined ? [] : readInchGrade(grade)),
    ...circles,
  ];
  return topicAnswer("bolt head", readings, {
    cannotSay:
      "A mark is a promise of the maker; a missing one proves nothing but the wish for caution. Whether the bolt is the works' own stands nowhere on it.",
    lookNext: "Measure the diameter over the threads and count them over 25.4 mm or 10 mm.",
  });
};

const HEXAGONS =
  "Hexagons of 17, 19 and 22 mm are old DIN, 16, 18 and 21 mm ISO; a mix on one car suggests replacement, no more.";

/** "what spanner is 13 mm", "0.525 across flats". */
export const spannerTopic: TopicReader = (question) => {
  const isAbout =
    /spanners?|wrench(?:es)?|sockets?|across (?:the )?flats|\ba\/?f\b|hexagon|mm (?:hex(?:agon)?|head)\b/.test(
      question.lower,
    );
  const match = new RegExp(String.raw`(?<![\w.,/])(${NUMBER}) ?(mm|inch(?:es)?|in\b|"|a\/?f\b|across)`).exec(
    question.lower,
  );
  const value = parsePlainNumber(match?.[1] ?? "");
  if (!question.mayBeAnswered || !isAbout) return undefined;
  const ofThread = spannersOfThread(question.lower);
  if (ofThread.length > 0 && !/\d ?a\/?f\b/.test(question.lower))
    return topicAnswer("spanner", ofThread, { cannotSay: HEXAGONS, lookNext: SERVICE });
  if (match === null || value === undefined) return undefined;
  const width = match[2] === "mm" ? value : value * INCH;
  return topicAnswer("spanner", spannersOfWidth(width), {
    cannotSay: HEXAGONS,
    lookNext: SERVICE,
  });
};
