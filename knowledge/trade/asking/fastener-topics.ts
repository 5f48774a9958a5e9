// Questions about threads, bolt heads and spanners.
import { readHeadFigures, readHeadLines, readOldHeadMark } from "../bolt-head.ts";
import { NUMBER, parsePlainNumber } from "../plain-numbers.ts";
import {
  spannersOfWidth,
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
  const named = /\bpitch(?: of| is|:)? (\d(?:[.,]\d{1,3})?)|(\d[.,]\d{1,3}) ?(?:mm )?pitch/.exec(lower);
  const metric = /\bm\d{1,2}(?:\.\d)? ?[x×] ?(\d(?:[.,]\d{1,2})?)\b/.exec(lower);
  return parsePlainNumber(named?.[1] ?? named?.[2] ?? metric?.[1] ?? "");
}

function diameterOf(lower: string): number | undefined {
  const metric = parsePlainNumber(/\bm(\d{1,2}(?:\.\d)?)(?![\d.a-wyz])/.exec(lower)?.[1] ?? "");
  if (metric !== undefined) return metric;
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

/** "0.312 inch thread 18 tpi", "8 mm bolt 1.25 pitch, what thread". */
export const threadTopic: TopicReader = (question) => {
  const isAbout =
    /\bthreads?\b|\btpi\b|\bpitch\b/.test(question.lower) && !/pitch circle|bolt circle/.test(question.lower);
  const named = threadsNamed(question.lower);
  if (
    question.mayBeAnswered &&
    named.length > 0 &&
    (isAbout || /\bsize\b|diameter|\bmean/.test(question.lower))
  ) {
    return topicAnswer("thread", named, { cannotSay: SERVICE, lookNext: threadTrap(named) });
  }
  const measure = measureOf(question.lower);
  if (!question.mayBeAnswered || !isAbout || measure.diameterMillimetres === undefined) return undefined;
  if (measure.pitchMillimetres === undefined && !question.isAsking) return undefined;
  const candidates = threadsOfMeasure(measure);
  return topicAnswer("thread", candidates, { cannotSay: SERVICE, lookNext: threadTrap(candidates) });
};

/** "bolt head with three lines", "8.8 on the bolt head". */
export const boltHeadTopic: TopicReader = (question) => {
  const isAbout =
    /\bbolts?\b|\bscrews?\b|\bhead(?:s|ed)?\b|\bset ?screws?\b/.test(question.lower) &&
    !/headl|cylinder head|high[- ]?level/.test(question.lower);
  if (!question.mayBeAnswered || !isAbout) return undefined;
  const lines = parseCount(
    /\b(\d|no|three|five|six) (?:radial |raised )?(?:lines?|marks|dashes|slashes)\b/.exec(
      question.lower,
    )?.[1],
  );
  const figures = /(?<![\d.])(0?\d{1,2}[.,]\d|a[24]-[78]0)(?! ?(?:mm|inch|in\b|"|x))(?![\d/])/.exec(
    question.lower,
  )?.[1];
  const old = /\b(?:letter|marked|stamped) ["']?([RSTVABP]|5D|6D|8G|10K|12K)["']?(?![A-Za-z0-9])/.exec(
    question.text,
  )?.[1];
  const circles = /three (?:touching )?circles/.test(question.lower) ? readOldHeadMark("three circles") : [];
  const readings = [
    ...(lines === undefined ? [] : readHeadLines(lines)),
    ...(figures === undefined ? [] : readHeadFigures(figures)),
    ...(old === undefined ? [] : readOldHeadMark(old)),
    ...circles,
  ];
  return topicAnswer("bolt head", readings, {
    cannotSay:
      "A mark is a promise of the maker; a missing one proves nothing but the wish for caution. Whether the bolt is the works' own stands nowhere on it.",
    lookNext: "Measure the diameter over the threads and count them over 25.4 mm or 10 mm.",
  });
};

/** "what spanner is 13 mm", "0.525 across flats". */
export const spannerTopic: TopicReader = (question) => {
  const isAbout = /spanners?|wrench(?:es)?|sockets?|across (?:the )?flats|\ba\/?f\b|hexagon/.test(
    question.lower,
  );
  const match = new RegExp(String.raw`(?<![\w.,/])(${NUMBER}) ?(mm|inch(?:es)?|in\b|"|a\/?f\b|across)`).exec(
    question.lower,
  );
  const value = parsePlainNumber(match?.[1] ?? "");
  if (!question.mayBeAnswered || !isAbout || match === null || value === undefined) return undefined;
  const width = match[2] === "mm" ? value : value * INCH;
  return topicAnswer("spanner", spannersOfWidth(width), {
    cannotSay:
      "Hexagons of 17, 19 and 22 mm are old DIN, 16, 18 and 21 mm ISO; a mix on one car suggests replacement, no more.",
    lookNext: SERVICE,
  });
};
