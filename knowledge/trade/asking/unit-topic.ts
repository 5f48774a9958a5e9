// Questions that turn one unit into another: "what is 17 3/8 in in mm", "convert 30 lb ft to Nm". Where a word is
// two units (gallon, hp) both are given.
import { NUMBER, parseSignedNumber, sayNumber } from "../plain-numbers.ts";
import type { TradeReading } from "../trade-reading.ts";
import { convertUnits, findUnit, UNITS, type Unit } from "../units.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const escapeSigns = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
const NAMES = UNITS.flatMap((unit) => unit.names)
  .toSorted((one, other) => other.length - one.length || (one < other ? -1 : 1))
  .map(escapeSigns)
  .join("|");
const UNIT = `(?:${NAMES})s?`;
const FORWARD = new RegExp(
  `(?<![\\w.,/])(-?(?:${NUMBER}))\\s?(${UNIT})\\s(?:in|to|into|as|=)\\s(${UNIT})(?![\\w/])`,
);
const HOW_MANY = new RegExp(
  `how many (${UNIT}) (?:is|are|in|to|make|makes) (?:a |an )?(?:(${NUMBER})\\s?)?(${UNIT})(?![\\w/])`,
);

const TWINS: readonly (readonly [string, string])[] = [
  ["imp gal", "US gal"],
  ["hp", "metric hp"],
];

/** The unit, and its twin when the word alone does not tell them apart ("gallon", "hp"). */
function unitsNamed(word: string): readonly Unit[] {
  const unit = findUnit(word);
  if (unit === undefined) return [];
  const isBare = /^(?:gal|gallon|hp|horsepower)s?$/.test(word.trim());
  const twin = isBare ? TWINS.find(([first]) => first === unit.id)?.[1] : undefined;
  return [unit, ...UNITS.filter((candidate) => candidate.id === twin)];
}

function conversions(value: number, from: string, to: string): readonly TradeReading[] {
  return unitsNamed(from).flatMap((source) =>
    unitsNamed(to).flatMap((target) => {
      const result = convertUnits(value, source.id, target.id);
      if (result === undefined || source.id === target.id) return [];
      const digits = Math.abs(result) >= 100 ? 2 : 4;
      return [
        {
          reading: `${sayNumber(value, 6)} ${source.id} = ${sayNumber(result, digits)} ${target.id}`,
          why: "exact factors, the result rounded",
          basis: "NIST SP 811 (2008), Appendix B",
        },
      ];
    }),
  );
}

/** Any two units of one kind. */
export const unitTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const forward = FORWARD.exec(question.lower);
  const many = HOW_MANY.exec(question.lower);
  const value = parseSignedNumber(forward?.[1] ?? many?.[2] ?? "1");
  const [from, to] = forward === null ? [many?.[3], many?.[1]] : [forward[2], forward[3]];
  if (value === undefined || from === undefined || to === undefined) return undefined;
  return topicAnswer("units", conversions(value, from, to), {
    cannotSay: "A converted figure is no more exact than the tape it came from.",
    lookNext: "Say what was measured and between which points.",
  });
};
