// Questions about wheels: rim designation and back space, bolt circle, test marks.
import { boltCircleOf, boltCircleTrap, type HoleSpan } from "../bolt-circle.ts";
import { NUMBER, parsePlainNumber, sayNumber } from "../plain-numbers.ts";
import { readOffset, readRimDesignation, WHEEL_MARKS } from "../rim-designation.ts";
import type { TradeReading } from "../trade-reading.ts";
import { convertUnits } from "../units.ts";
import { parseCount, type TopicReader, topicAnswer } from "./trade-question.ts";

const CAUTIONS = ["wheel"] as const;

/** "6J x 15 ET30 backspace". */
export const rimTopic: TopicReader = (question) => {
  const cue = /back[- ]?spac|offset|\bet ?[+-]?\d|\brims?\b|\bwheels?\b|mean|width|flange|decode/;
  if (!question.mayBeAnswered || !cue.test(question.lower)) return undefined;
  const rim = readRimDesignation(question.text);
  const asksOffset = question.isAsking && /\bmean|\bwhat\b/.test(question.lower);
  const offset = rim === undefined && asksOffset ? readOffset(question.text) : undefined;
  return topicAnswer("rim", rim?.readings ?? (offset === undefined ? [] : [offset]), {
    cannotSay: "The designation says what fits, not who made the wheel; cast date and maker stand elsewhere.",
    lookNext: "Look at the back for a casting dial or grid, and near a spoke root for size and offset.",
    cautions: CAUTIONS,
  });
};

function spanOf(lower: string): HoleSpan | undefined {
  if (/next but one|every other|skip(?:ping)? one|one apart/.test(lower)) return "next-but-one";
  if (/opposite|across|diametric/.test(lower)) return "opposite";
  return /neighbou?r|adjacent|next to each other|next (?:one|bolt|hole|stud)|between (?:two |the )?(?:bolts?|holes?|studs?|centres|centers)|apart|centre to centre|center to center/.test(
    lower,
  )
    ? "adjacent"
    : undefined;
}

function distanceOf(lower: string): number | undefined {
  const match = new RegExp(String.raw`(?<![\w.,/])(${NUMBER})\s?(mm|millimet\w+|cm|inch(?:es)?|in\b|")`).exec(
    lower,
  );
  const value = parsePlainNumber(match?.[1] ?? "");
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

/** "5 bolts, 70.5 mm between neighbours, what PCD". Without a count of bolts, four and five are both reckoned. */
export const boltCircleTopic: TopicReader = (question) => {
  const isNamed = /\bp\.?c\.?d\b|bolt circle|pitch circle|stud pattern|bolt pattern/.test(question.lower);
  const span = spanOf(question.lower) ?? (isNamed ? "adjacent" : undefined);
  const distance = distanceOf(question.lower);
  if (!question.mayBeAnswered || !isNamed || span === undefined || distance === undefined) return undefined;
  const count = parseCount(
    /\b(\d|three|four|five|six)[ -]?(?:bolts?|studs?|holes?|lugs?|nuts?)\b/.exec(question.lower)?.[1],
  );
  const counts = count === undefined ? [4, 5] : [count];
  return topicAnswer(
    "bolt circle",
    counts.flatMap((bolts) => circleReadings(bolts, distance, span)),
    {
      cannotSay:
        span === "adjacent"
          ? boltCircleTrap(distance)
          : "A tape does not tell 5 × 120 from 5 × 120.65: ask the source.",
      lookNext:
        "Measure left edge to left edge of two holes twice, and across another pair; centre bore and offset decide too.",
      cautions: CAUTIONS,
    },
  );
};

/** "what does JWL on my wheel mean". */
export const wheelMarkTopic: TopicReader = (question) => {
  const isAbout = /\bjwl(?:-t)?\b|\bvia\b.{0,20}\b(?:mark|stamp|wheel)|wheel.{0,30}\bvia\b/.test(
    question.lower,
  );
  if (!question.isAsking || !question.mayBeAnswered || !isAbout) return undefined;
  return topicAnswer("wheel marks", WHEEL_MARKS, {
    cannotSay: "These marks name a standard and a test, not a maker of cars; copies carry them too.",
    lookNext: "Look at the back of the wheel for the casting dial, heat number and pattern of ribs.",
    cautions: CAUTIONS,
  });
};
