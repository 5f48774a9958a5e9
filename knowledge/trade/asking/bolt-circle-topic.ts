// Questions about bolt circles: reckoned from a distance between holes, or named ("5x120 against 5x120.65") and told
// apart by the distance between neighbours, which is what a tape reaches.
import { boltCircleOf, boltCircleTrap, type HoleSpan, spanRatio } from "../bolt-circle.ts";
import { NUMBER, parsePlainNumber, sayNumber } from "../plain-numbers.ts";
import type { TradeReading } from "../trade-reading.ts";
import { convertUnits } from "../units.ts";
import { parseCount, type TopicReader, topicAnswer } from "./trade-question.ts";

const INCH = 25.4;
const CAUTIONS = ["wheel"] as const;
// What a caliper or tape over two bolts cannot tell apart, in mm.
const TAPE_LIMIT = 1;
const SAME_CIRCLE = 0.01;
const LOOK_NEXT =
  "Measure left edge to left edge of two holes twice, and across another pair; centre bore and offset decide too.";

function spanOf(lower: string): HoleSpan | undefined {
  if (/next but one|every other|skip(?:ping)? one|one apart/.test(lower)) return "next-but-one";
  if (/opposite|across|diametric/.test(lower)) return "opposite";
  return /neighbou?r|adjacent|next to each other|next (?:one|bolt|hole|stud)|between (?:two |the )?(?:bolts?|holes?|studs?|lugs?|centres|centers)|apart|centre to centre|center to center/.test(
    lower,
  )
    ? "adjacent"
    : undefined;
}

function distanceOf(lower: string): number | undefined {
  const match = new RegExp(String.raw`(?<![\w.,/])(${NUMBER})\s?(mm|millimet\w+|cm|inch(?:es)?|in\b|")`).exec(
    lower,
  );
  const bare = /(?<![\w.,/])(\d{2,3}(?:[.,]\d{1,2})?) (?:between|apart)\b/.exec(lower)?.[1];
  const value = parsePlainNumber(match?.[1] ?? bare ?? "");
  if (match === null && value !== undefined) return value;
  if (match === null || value === undefined) return undefined;
  const unit = match[2] ?? "";
  if (unit.startsWith("m")) return value;
  return convertUnits(value, unit === "cm" ? "cm" : "in", "mm");
}

function circleReadings(bolts: number, distance: number, span: HoleSpan): readonly TradeReading[] {
  const circle = boltCircleOf(bolts, distance, span);
  if (circle === undefined) return [];
  const sum: TradeReading = {
    reading: `${bolts} bolts: circle ${sayNumber(circle.diameter, 1)} mm, give or take ${sayNumber(circle.error, 2)} mm`,
    why: `distance ÷ sin(180° × ${span === "adjacent" ? 1 : span === "opposite" ? bolts / 2 : 2} / ${bolts}); half a millimetre of the tape carried through`,
    basis: "arithmetic",
  };
  return [sum, ...circle.candidates];
}

interface NamedCircle {
  readonly bolts: number;
  readonly diameter: number;
  /** Distance between neighbouring holes in mm. */
  readonly neighbours: number;
}

const NAMED =
  /(?<![\w.,/])([3-8]) ?(?:[x×*]|on) ?(\d{2,3}(?:\.\d{1,2})?|\d\.\d{1,3}|\d[ -]\d\/\d)(?: ?(?:mm|inch(?:es)?|")(?!\w))?(?![\w/]|\.\d)/g;

/** Circles written as bolts × diameter: 85 to 230 is millimetres, 3.5 to 6.5 with a fraction is inches. */
function namedCircles(lower: string): readonly NamedCircle[] {
  const spoken = lower.replace(
    /\b(three|four|five|six|[3-8])[ -]?(?:stud|lug|bolt|hole)s? (?=\d{2,3}(?:\.\d{1,2})? (?:p\.?c\.?d|distance|spacing))/,
    (_whole, count: string) => `${parseCount(count)}x`,
  );
  return [...spoken.matchAll(NAMED)].flatMap((match) => {
    const bolts = Number(match[1]);
    const written = parsePlainNumber(match[2] ?? "") ?? 0;
    const diameter = written >= 3.5 && written <= 6.5 ? written * INCH : written;
    const ratio = spanRatio(bolts, "adjacent");
    const isCircle = ratio !== undefined && diameter >= 85 && diameter <= 230;
    return isCircle ? [{ bolts, diameter, neighbours: diameter * ratio }] : [];
  });
}

const sayCircle = (circle: NamedCircle): string => `${circle.bolts} × ${sayNumber(circle.diameter, 2)}`;

function namedReading(circle: NamedCircle): TradeReading {
  return {
    reading: `${sayCircle(circle)}: neighbours ${sayNumber(circle.neighbours, 2)} mm apart, centre to centre`,
    why: `${sayNumber(circle.diameter, 2)} mm (${sayNumber(circle.diameter / INCH, 3)} in) × sin(180° / ${circle.bolts})`,
    basis: "arithmetic",
  };
}

function differenceReadings(one: NamedCircle, other: NamedCircle | undefined): readonly TradeReading[] {
  if (other === undefined) return [];
  const difference = Math.abs(one.neighbours - other.neighbours);
  const pair = `${sayCircle(one)} against ${sayCircle(other)}`;
  if (one.bolts !== other.bolts)
    return [{ reading: `${pair}: count the holes`, why: "the number of bolts differs", basis: "arithmetic" }];
  if (difference < SAME_CIRCLE)
    return [
      { reading: `${pair}: one and the same circle`, why: "inches and millimetres", basis: "arithmetic" },
    ];
  return [
    {
      reading: `${pair}: ${sayNumber(difference, 2)} mm between neighbours`,
      why:
        difference < TAPE_LIMIT
          ? "less than a tape over two bolts can tell: do not decide by measuring, ask the source of the wheel"
          : "a caliper tells it, half a millimetre of a tape nearly does not; measure two pairs",
      basis: "arithmetic",
    },
  ];
}

/** "how do I tell 5x120 from 5x120.65", "4x100 or 4x108, 76 mm between bolts", "5x4.75 in mm". */
function namedAnswer(lower: string, isAsking: boolean) {
  const circles = namedCircles(lower);
  const [first, second] = circles;
  const isCompared =
    circles.length > 1 && /\bor\b|\bvs\b|\bversus\b|\band\b|\bfrom\b|\bto\b|\bon\b|^(?:is|are) /.test(lower);
  const cue =
    /\bp\.?c\.?d\b|bolts?\b|stud|\blugs?\b|pattern|\bholes?\b|wheels?|\brims?\b|\bfit\b|same|differ|spacing|\bin mm\b|metric|inch/;
  if (
    first === undefined ||
    !(
      isCompared ||
      (isAsking && cue.test(lower)) ||
      /\bin mm\b|in inches|metric|distance|apart|spacing/.test(lower)
    )
  )
    return undefined;
  const rest = lower.replace(NAMED, " ");
  const span = spanOf(rest) ?? "adjacent";
  const distance = distanceOf(rest);
  const measured = distance === undefined ? [] : circleReadings(first.bolts, distance, span);
  const readings = [...circles.map(namedReading), ...differenceReadings(first, second), ...measured];
  return topicAnswer("bolt circle", readings, {
    cannotSay: `Near is not the same: a wheel pulled onto another circle sits on bent studs. ${boltCircleTrap(first.neighbours)}`,
    lookNext: `Ask the source: the maker's papers, or size and circle on the back of the wheel. ${LOOK_NEXT}`,
    cautions: CAUTIONS,
  });
}

/** "5 bolts, 70.5 mm between neighbours, what PCD". Without a count of bolts, four and five are both reckoned. */
export const boltCircleTopic: TopicReader = (question) => {
  const { lower } = question;
  if (!question.mayBeAnswered || /\bscrews?\b/.test(lower)) return undefined;
  const named = namedAnswer(lower, question.isAsking);
  if (named !== undefined) return named;
  const isNamed = /\bp\.?c\.?d\b|bolt circle|pitch circle|stud pattern|bolt pattern/.test(lower);
  const distance = distanceOf(lower);
  const count = parseCount(
    /\b(\d|three|four|five|six)[ -]?(?:bolts?|studs?|holes?|lugs?|nuts?)\b/.exec(lower)?.[1],
  );
  const span = spanOf(lower) ?? (isNamed ? "adjacent" : undefined);
  if (!isNamed || span === undefined || distance === undefined) return undefined;
  const counts = count === undefined ? [4, 5] : [count];
  return topicAnswer(
    "bolt circle",
    counts.flatMap((bolts) => circleReadings(bolts, distance, span)),
    {
      cannotSay:
        span === "adjacent"
          ? boltCircleTrap(distance)
          : "A tape does not tell 5 × 120 from 5 × 120.65: ask the source.",
      lookNext: LOOK_NEXT,
      cautions: CAUTIONS,
    },
  );
};
