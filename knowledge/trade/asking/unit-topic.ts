// Questions that turn one unit into another: "what is 17 3/8 in in mm", "convert 30 lb ft to Nm". Where a word is
// two units (gallon, hp) both are given.
import { NUMBER, parsePlainNumber, parseSignedNumber, sayNumber } from "../plain-numbers.ts";
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

const BACKWARD = new RegExp(
  `\\bin (${UNIT}),? (?:what(?:'s|s| is| are)|how much is) (${NUMBER})\\s?(${UNIT})(?![\\w/])`,
);
const BESIDE = new RegExp(`^(${NUMBER})\\s?(${UNIT}) (${UNIT})\\??$`);

// Feet with inches and pounds with ounces are one measurement: "6 ft 2 in", 5' 3", "3 lb 4 oz".
interface Compound {
  readonly pattern: RegExp;
  readonly larger: string;
  readonly smaller: string;
  /** How many of the smaller unit make one of the larger. */
  readonly share: number;
}

const COMPOUNDS: readonly Compound[] = [
  {
    pattern: new RegExp(
      `(?<![\\w.,/])(\\d{1,4})\\s?(?:ft|feet|foot|['’′])(?:\\s?(?:and|,)?\\s?)(${NUMBER})\\s?(?:in(?:ch(?:es)?)?\\b|"|″|”|'')?(?=[\\s?.]*$|\\s(?:in|to|into|as|=)\\s)`,
      "g",
    ),
    larger: "ft",
    smaller: "in",
    share: 12,
  },
  {
    pattern: new RegExp(
      `(?<![\\w.,/])(\\d{1,4})\\s?(?:lbs?|pounds?)(?:\\s?(?:and|,)?\\s?)(${NUMBER})\\s?(?:oz|ounces?)\\b`,
      "g",
    ),
    larger: "lb",
    smaller: "oz",
    share: 16,
  },
  {
    pattern: new RegExp(
      `(?<![\\w.,/])(\\d{1,3})\\s?(?:st|stone)\\s?(${NUMBER})\\s?(?:(?:lbs?|pounds?)\\b|(?= (?:in|to|into) ))`,
      "g",
    ),
    larger: "st",
    smaller: "lb",
    share: 14,
  },
];

/** The text with every compound measurement written in its smaller unit: "6 ft 2 in" gives "74 in". */
function joinCompounds(lower: string): string {
  return COMPOUNDS.reduce(
    (text, { pattern, smaller, share }) =>
      text.replace(pattern, (whole, large: string, small: string) => {
        const rest = parsePlainNumber(small);
        return rest === undefined ? whole : `${Number(large) * share + rest} ${smaller}`;
      }),
    lower,
  );
}

/** A value as it was written: 74 of "6 ft 2 in" is "6 ft 2 in" again. */
function sayWritten(value: number, unit: string, lower: string): string {
  const compound = COMPOUNDS.find(
    ({ pattern, smaller }) => smaller === unit && lower.search(pattern) >= 0 && value >= 1,
  );
  if (compound === undefined) return `${sayNumber(value, 6)} ${unit}`;
  const { larger, smaller, share } = compound;
  return `${Math.floor(value / share)} ${larger} ${sayNumber(value % share, 4)} ${smaller}`;
}

const TWINS: readonly (readonly [string, string])[] = [
  ["imp gal", "US gal"],
  ["imp pt", "US pt"],
  ["hp", "metric hp"],
];

/** The unit, and its twin when the word alone does not tell them apart ("gallon", "hp"). */
function unitsNamed(word: string): readonly Unit[] {
  const unit = findUnit(word);
  if (unit === undefined) return [];
  const isBare = /^(?:gal|gallon|pint|hp|horsepower)s?$/.test(word.trim());
  const twin = isBare ? TWINS.find(([first]) => first === unit.id)?.[1] : undefined;
  return [unit, ...UNITS.filter((candidate) => candidate.id === twin)];
}

function conversions(value: number, from: string, to: string, lower: string): readonly TradeReading[] {
  return unitsNamed(from).flatMap((source) =>
    unitsNamed(to).flatMap((target) => {
      const result = convertUnits(value, source.id, target.id);
      if (result === undefined || source.id === target.id) return [];
      const digits = Math.abs(result) >= 100 ? 2 : 4;
      return [
        {
          reading: `${sayWritten(value, source.id, lower)} = ${sayNumber(result, digits)} ${target.id}`,
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
  const lower = joinCompounds(question.lower);
  const forward = FORWARD.exec(lower) ?? BESIDE.exec(lower);
  const turned = HOW_MANY.exec(lower) ?? BACKWARD.exec(lower);
  const value = parseSignedNumber(forward?.[1] ?? turned?.[2] ?? "1");
  const [from, to] = forward === null ? [turned?.[3], turned?.[1]] : [forward[2], forward[3]];
  if (value === undefined || from === undefined || to === undefined) return undefined;
  return topicAnswer("units", conversions(value, from, to, question.lower), {
    cannotSay: "A converted figure is no more exact than the tape it came from.",
    lookNext: "Say what was measured and between which points.",
  });
};
