// Questions about tyres: sizes, load index, speed symbol, grades.
import { parsePlainNumber } from "../plain-numbers.ts";
import type { TradeReading } from "../trade-reading.ts";
import { GRADES_REMARK, readLoadIndex, readSpeedSymbol } from "../tyre-ratings.ts";
import { readTyreSizes, type TyreSize } from "../tyre-size.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const LOOK = "Read the whole line on the sidewall and the date at the end of the DOT number.";
const WEAR =
  "Tyres wear out: the size says what fits and roughly when such sizes were written, not what the works fitted.";

/** Load and speed without a size, from index 50 on: "13s" are wheels of thirteen inches (common practice, no source). */
const LONE_SERVICE = /(?<![\w/])((?:[5-9]\d|1[0-4]\d)(?:\/\d{2,3})?[a-hj-np-qs-wyz])\b/;

function serviceReadings(service: string | undefined): readonly TradeReading[] {
  const match = /^(\d{2,3})(?:\/(\d{2,3}))? ?([A-Y])?$/i.exec(service ?? "");
  if (match === null) return [];
  const loads = [match[1], match[2]].flatMap((text) =>
    text === undefined ? [] : [readLoadIndex(Number(text))],
  );
  const speeds = match[3] === undefined ? [] : readSpeedSymbol(match[3]);
  return [...loads.filter((load) => load !== undefined), ...speeds];
}

function sizeReadings(size: TyreSize): readonly TradeReading[] {
  const inside =
    size.speedLetter === undefined || size.system === "cross-ply with speed"
      ? []
      : readSpeedSymbol(`${size.speedLetter}R`);
  return [size, ...inside, ...serviceReadings(size.service)];
}

/** "195/65 R 15 diameter". */
export const tyreSizeTopic: TopicReader = (question) => {
  const service = /\bt[yi]re|^wh?[ao]t(?:'s|s| is| does) \d{2,3}[sthvw]\b/.test(question.lower)
    ? LONE_SERVICE.exec(question.lower)?.[1]
    : undefined;
  const cue = /\bt[yi]res?\b|cross-?ply|diameter|radius|\bsize\b|mean|rolling|circumference|height|decode/;
  if (!question.mayBeAnswered) return undefined;
  const sizes = readTyreSizes(question.text);
  const isMetric = sizes.some((size) => !/inch/.test(size.system));
  if (!cue.test(question.lower) && !(question.isAsking && isMetric)) return undefined;
  const isLoose = sizes.every(
    (size) =>
      /inch/.test(size.system) &&
      !/\bt[yi]re|rolling|circumference|cross-?ply|what does \d\.\d\d ?-/.test(question.lower),
  );
  const alone = sizes.length === 0 ? serviceReadings(service) : [];
  return topicAnswer("tyre size", isLoose ? alone : [...sizes.flatMap(sizeReadings), ...alone], {
    cannotSay: WEAR,
    lookNext: LOOK,
    cautions: ["wheel"],
  });
};

/** "load index 88", "LI 91/88". */
export const loadIndexTopic: TopicReader = (question) => {
  const match =
    /\bload (?:index|rating)(?: of| is|:)? (\d{1,3})(?:\/(\d{1,3}))?\b|\b(?:li|tyre load|tire load) ?(\d{2,3})(?:\/(\d{2,3}))?\b/.exec(
      question.lower.replace(/\b(\d{2,3}) (load (?:index|rating))\b/, "$2 $1"),
    );
  if (match === null || !question.mayBeAnswered) return undefined;
  const wanted = [match[1] ?? match[3], match[2] ?? match[4]].flatMap((text) =>
    text === undefined ? [] : [Number(text)],
  );
  const outside: TradeReading = {
    reading: "my table of load indices runs from 0 to 150",
    why: "an index outside it is most likely misread",
    basis: "published load index charts",
  };
  const readings = wanted.map((index) => readLoadIndex(index) ?? outside);
  return topicAnswer("load index", readings, {
    cannotSay:
      "The load holds at the pressure and speed of the maker's tables; a pair after a stroke is single and twin fitting.",
    lookNext: LOOK,
  });
};

/** "speed rating V", "what does VR mean on a tyre". */
export const speedSymbolTopic: TopicReader = (question) => {
  const named =
    /\bspeed (?:symbol|rating|letter|index|code)s?(?: of| is|:)? "?([a-z][1-8r]?)"?(?![a-z])/.exec(
      question.lower,
    )?.[1];
  const rated = /\b([hstvwyqz])[- ]?(?:rated|speed(?: rating)?)\b/.exec(question.lower)?.[1];
  const inSize = /\bt[yi]re/.test(question.lower) ? /\b([shvz]r)\b/.exec(question.lower)?.[1] : undefined;
  const symbol = named ?? rated ?? inSize;
  if (symbol === undefined || !question.mayBeAnswered) return undefined;
  const readings = [
    ...readSpeedSymbol(symbol),
    ...(symbol.length === 1 ? readSpeedSymbol(`${symbol}R`) : []),
  ];
  return topicAnswer("speed symbol", readings, {
    cannotSay:
      "The letter inside an early size is not the letter of the later service description: VR is over 210 km/h, V is 240.",
    lookNext: LOOK,
  });
};

/** "what is treadwear 200 on my tyre", "no utqg on the tyre, why". */
export const tyreGradesTopic: TopicReader = (question) => {
  const isAbout = /\butqg\b|treadwear|traction (?:grade )?(?:aa?|b|c)\b/.test(question.lower);
  if (!isAbout || !question.isAsking || !question.mayBeAnswered || /\bwhen\b/.test(question.lower))
    return undefined;
  const treadwear = parsePlainNumber(/treadwear (?:of )?(\d{2,3})/.exec(question.lower)?.[1] ?? "");
  const grade: readonly TradeReading[] =
    treadwear === undefined
      ? []
      : [
          {
            reading: `treadwear ${treadwear}: ${treadwear} percent of the life of a reference tyre`,
            why: "100 is the reference",
            basis: "49 CFR 575.104",
          },
        ];
  return topicAnswer("tyre grades", [...grade, GRADES_REMARK], {
    cannotSay: "Grades are the maker's own statement and compare tyres only roughly.",
    lookNext: LOOK,
  });
};
