// Lengths and masses as people write them: 17 3/8", 1-1/4 in, 44 cm, 3 lb 4 oz, 1,180 mm, 44,5 cm, 3 ft 10,
// "between 41 and 42", "about". Own grammar: general unit packages fail on fractions, thousands and compounds.
// Half-widths: half of the last place said, 1/(2n) for a fraction of n, half the range; "about" doubles it.
import type { Instrument, MeasurementUnit } from "../evidence/report.ts";
import { convertUnits } from "../trade/units.ts";
import type { Span } from "./blank-noise.ts";
import { instrumentNear } from "./instrument-near.ts";
import { denied, isFootOf, isNoSize, isPreposition, loosely, looselyAfter } from "./no-sizes.ts";
import { numberForm as number, type ParsedNumber, parseNumber, shareOf } from "./written-numbers.ts";

export interface Quantity extends Span {
  readonly value: number;
  readonly halfWidth: number;
  /** Null when no unit was said. */
  readonly unit: MeasurementUnit | null;
  readonly instrument?: Instrument;
  /** The thirty characters behind it. */
  readonly after: string;
  /** Present when it is said that the size is not this. */
  readonly isDenied?: true;
}

const unitWord = `(?:mm|millimet(?:er|re)s?|mils?|cm|cms|centimet(?:er|re)s?|met(?:er|re)s?|m|inch(?:es)?|zoll|ins?|"|''|ft|foot|feet|'|thou|kgs?|kilos?|kilogram(?:me)?s?|grams?|gramm(?:es?)?|gr|g|lbs?|pounds?|oz|ounces?)`;
const spread = String.raw`(?:-|to|and|or|\.\.)`;
/** "Three foot eight": the inches need no name. */
const spelledInches = "one|two|three|four|five|six|seven|eight|nine|ten|eleven";
const pattern = new RegExp(
  String.raw`(?<![\w/.,'"•£$€]|\d[-:])(?<low>${number})(?: ?-? ?(?<lowUnit>${unitWord})(?:(?![a-z\d])|(?<=\d ?(?:lbs?|ft|'))(?=\d)))?(?: ?(?:\u00b1|\+ ?\/? ?-) *(?<give>${number}|\.\d+)(?: ?(?<giveUnit>${unitWord})(?![a-z\d]))?)?(?: ?(?<spread>${spread}) ?(?<high>${number})(?: ?-? ?(?<unit>${unitWord})(?![a-z\d]))?)?(?: and an? (?<tail>half|quarter|bit|third)\b)?(?: ?(?:and )?(?<rest>${number}|(?<=\bf(?:oo|ee)?t (?:and )?)(?:${spelledInches}) ?) ?(?<restUnit>oz|ounces?|"|''|inch(?:es)?|ins?|grams?|gr?|cms?)?(?![a-z\d]))?`,
  "gi",
);

/** A unit as said: what it counts as, and how many of that it is. The first form that fits stands. */
const units: readonly (readonly [RegExp, MeasurementUnit, number])[] = [
  [/^m[mi]/, "mm", 1],
  [/^c/, "cm", 1],
  [/^m$|met/, "cm", 100],
  [/in|zoll|"|''/, "in", 1],
  [/ft|foot|feet|'/, "in", 12],
  [/thou/, "in", 0.001],
  [/k/, "kg", 1],
  [/g/, "g", 1],
  [/lb|pound/, "lb", 1],
  [/oz|ounce/, "oz", 1],
];

/** Most sizes read of one message. */
const most = 60;

/** Quantities of a readable lower-case text, in order. Figures without a unit are kept with unit null. */
export function findQuantities(text: string): readonly Quantity[] {
  const found: Quantity[] = [];
  const figures = new RegExp(pattern);
  for (let match = figures.exec(text); match !== null && found.length < most; match = figures.exec(text)) {
    const quantity = quantityOf(match, text);
    if (quantity === undefined) continue;
    found.push(quantity);
    // What stands behind and did not belong to it may be a size of its own.
    figures.lastIndex = quantity.end;
  }
  return found;
}

function quantityOf(match: RegExpMatchArray, text: string): Quantity | undefined {
  const start = match.index ?? 0;
  const before = text.slice(Math.max(0, start - 28), start);
  const groups = apart(match.groups ?? {}, before);
  const written = unitWritten(groups);
  const isPlace = isPreposition(written, groups.low ?? "", text, start + match[0].length, groups.rest);
  const said = isPlace ? undefined : written;
  const low = parseNumber(groups.low ?? "");
  if (low === undefined) return undefined;
  const end = start + lengthUsed(match[0], groups, isPlace);
  const base = within(readValue(low, groups, said, isBetween(before, groups)), groups);
  const behind = text.slice(end, end + 30);
  if (base === undefined || isFootOf(match[0], behind)) return undefined;
  // "17 in the middle": the place stands apart from the figure.
  if (isNoSize(base.unit, before, isPlace ? ` ${behind}` : behind)) return undefined;
  const isLoose = loosely.test(before) || looselyAfter.test(behind.slice(0, 16));
  const instrument = instrumentNear(text, start, end, base.unit);
  return {
    start,
    end,
    value: base.value,
    halfWidth: base.halfWidth * (isLoose ? 2 : 1),
    unit: base.unit,
    after: behind,
    ...(instrument === undefined ? {} : { instrument }),
    ...(denied.test(before) ? { isDenied: true as const } : {}),
  };
}

type Groups = Readonly<Record<string, string | undefined>>;

/**
 * "2 kilos and 350 grams", "9 mm and 1012 mm": two figures of different units, or of which the second is no larger or thrice as
 * large, are no range; the second stands behind the first.
 */
function apart(groups: Groups, before: string): Groups {
  const { lowUnit, high, unit, ...others } = groups;
  const isOfOneUnit = lowUnit === undefined || unit === undefined || unitSaid(lowUnit) === unitSaid(unit);
  if (isOfOneUnit && (isRange(groups) || isBetween(before, groups))) return groups;
  return { ...others, lowUnit: lowUnit ?? unit, rest: high, restUnit: unit };
}

function isRange({ low, high, spread: joint }: Groups): boolean {
  const [first, last] = [parseNumber(low ?? ""), parseNumber(high ?? "")];
  if (first === undefined || last === undefined || joint !== "and") return true;
  return last.value > first.value && last.value < 3 * first.value;
}

/** "1180 mm ± 2": the size within what its speaker says that it may be out by. */
function within(base: Base | undefined, { give, giveUnit }: Groups): Base | undefined {
  const out = parseNumber(give ?? "");
  if (base === undefined || out === undefined) return base;
  const [, unit, factor] = unitSaid(giveUnit);
  const halfWidth =
    unit === null || base.unit === null ? out.value : convertUnits(out.value * factor, unit, base.unit);
  return halfWidth === undefined ? base : { ...base, halfWidth };
}

function lengthUsed(whole: string, groups: Groups, isPlace: boolean): number {
  const { rest } = groups;
  if (rest !== undefined && !isCompound(groups))
    return whole.slice(0, whole.lastIndexOf(rest)).replace(/(?: ?(?:-|to|and|or|\.\.))? ?$/, "").length;
  return isPlace ? whole.length - 2 : whole.length;
}

/** Feet and inches, pounds and ounces, "2 kilos 350", "1 metre 18". */
function isCompound(groups: Groups): boolean {
  const { rest } = groups;
  if (rest === undefined) return false;
  const [, major, factor] = unitSaid(groups.unit ?? groups.lowUnit);
  const [, minor] = unitSaid(groups.restUnit);
  const mayBe = (unit: MeasurementUnit): boolean => minor === null || minor === unit;
  if (major === "kg") return /^\d{3}$/.test(rest) && mayBe("g");
  if (factor === 100) return /^\d\d$/.test(rest) && mayBe("cm");
  if (factor === 12) return mayBe("in") && (parseNumber(rest.trim())?.value ?? 0) < 12;
  return major === "lb" && minor === "oz";
}

function unitWritten({ unit, lowUnit, giveUnit }: Groups): string | undefined {
  return unit ?? lowUnit ?? giveUnit;
}

/** The entry of a unit as said; no unit at all for none. */
function unitSaid(said: string | undefined): readonly [unknown, MeasurementUnit | null, number] {
  return units.find(([form]) => said !== undefined && form.test(said)) ?? [undefined, null, 1];
}

function isBetween(before: string, groups: Groups): boolean {
  return groups.high !== undefined && /\bbetween $/i.test(before);
}

interface Base {
  readonly value: number;
  readonly halfWidth: number;
  readonly unit: MeasurementUnit | null;
}

function readValue(
  low: ParsedNumber,
  groups: Groups,
  said: string | undefined,
  isRange: boolean,
): Base | undefined {
  const [, unit, factor] = unitSaid(said);
  if (isCompound(groups)) return compound(low, (groups.rest ?? "").trim(), unit);
  const high = groups.high === undefined ? undefined : parseNumber(groups.high);
  if (high !== undefined && high.value > low.value && high.value < low.value * 3) {
    const halfWidth = ((high.value - low.value) / 2) * factor;
    return { value: ((low.value + high.value) / 2) * factor, halfWidth, unit };
  }
  if (high !== undefined && isRange) return undefined;
  const over = groups.tail === undefined || unit === null ? undefined : shareOf(groups.tail);
  if (over !== undefined)
    return { value: (low.value + over.value) * factor, halfWidth: over.halfWidth * factor, unit };
  return { value: low.value * factor, halfWidth: low.halfWidth * factor, unit };
}

function compound(low: ParsedNumber, rest: string, unit: MeasurementUnit | null): Base | undefined {
  const minor = parseNumber(rest);
  if (minor === undefined) return undefined;
  if (unit === "in") return { value: low.value * 12 + minor.value, halfWidth: minor.halfWidth, unit };
  if (unit === "cm") return { value: low.value * 100 + minor.value, halfWidth: minor.halfWidth, unit };
  if (unit === "kg")
    return { value: low.value + minor.value / 1000, halfWidth: minor.halfWidth / 1000, unit };
  return { value: low.value + minor.value / 16, halfWidth: minor.halfWidth / 16, unit: "lb" };
}
