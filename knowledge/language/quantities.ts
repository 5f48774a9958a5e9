// Lengths and masses as people write them: 17 3/8", 1-1/4 in, 44 cm, 3 lb 4 oz, 1,180 mm, 44,5 cm, 3 ft 10,
// "between 41 and 42", "about". Own grammar: general unit packages fail on fractions, thousands and compounds.
// Half-widths: half of the last place said, 1/(2n) for a fraction of n, half the range; "about" doubles it.
import type { Instrument, MeasurementUnit } from "../evidence/report.ts";
import type { Span } from "./blank-noise.ts";
import { instrumentNear } from "./instrument-near.ts";
import { numberForm as number, type ParsedNumber, parseNumber, shareOf } from "./written-numbers.ts";

export interface Quantity extends Span {
  readonly value: number;
  readonly halfWidth: number;
  /** Null when no unit was said. */
  readonly unit: MeasurementUnit | null;
  readonly instrument?: Instrument;
  /** The thirty characters behind it. */
  readonly after: string;
}

const unitWord = `(?:mm|millimet(?:er|re)s?|mils?|cm|cms|centimet(?:er|re)s?|met(?:er|re)s?|m|inch(?:es)?|zoll|ins?|"|''|ft|foot|feet|'|thou|kgs?|kilos?|kilogram(?:me)?s?|grams?|gramm(?:es?)?|gr|g|lbs?|pounds?|oz|ounces?)`;
const spread = String.raw`(?:-|to|and|or|\.\.)`;
/** "Three foot eight": the inches need no name. */
const spelledInches = "one|two|three|four|five|six|seven|eight|nine|ten|eleven";
const pattern = new RegExp(
  String.raw`(?<![\w/.,'"•£$€]|\d[-:])(?<low>${number})(?: ?-? ?(?<lowUnit>${unitWord})(?![a-z\d]))?(?: ?${spread} ?(?<high>${number})(?: ?-? ?(?<unit>${unitWord})(?![a-z\d]))?)?(?: and an? (?<tail>half|quarter|bit|third)\b)?(?: ?(?:and )?(?<rest>${number}|(?<=\bf(?:oo|ee)?t (?:and )?)(?:${spelledInches}) ?) ?(?<restUnit>oz|ounces?|"|''|inch(?:es)?|ins?|grams?|gr?|cms?)?(?![a-z\d]))?`,
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

const loosely =
  /(?:\b(?:about|approx(?:imately)?\.?|around|roughly|circa|ca\.?|nearly|almost|some|say|maybe|probably|near enough|more or less|just (?:over|under|shy of)|a (?:bit|touch|hair|little|shade|smidge|fraction|whisker|tad) (?:over|under|more than|less than)|slightly (?:over|under|more than|less than))|~) ?(?:a |the )?$/i;
const looselyAfter =
  /^ ?(?:ish\b|or so\b|-ish\b|give or take|approx|roughly|ish|more or less|or thereabouts|odd\b)/i;
const bounded =
  /\b(?:less than|more than|under|over|at least|at most|up to|no (?:more|less) than|max(?:imum)?|min(?:imum)?) $/i;

/** Money, time and shares are no sizes. */
const noSize =
  /^ ?(?:quid|euros?|bucks|dollars|pence|percent|%|years?|yrs?|weeks?|days?|hours?|hrs?|minutes?|mins?|ono\b|each\b)/i;
/** Figures that name or number something, and roads. */
const numbering =
  /\b(?:drove|driven|walked|cycled|ends?|ending|starts?|starting|begins?|beginning|page|stall|post|lot|table|row|unit|hall|stand)(?: (?:in|with|on|at|no\.?|number))? $/i;
/** How far something gives way is no size of it. */
const givingWay =
  /\b(?:deflects?|flex(?:es)?|bends?|moves?|squash(?:es)?|yields?|springs?|sags?|droops?|missed|play,?)(?: (?:by|of|about|around|only|maybe|some|nearly|roughly|a good|in|down|up|back|to)){0,3} $/i;
/** "My scales only go to 2 kg": what the instrument has, not what was read. */
const wholeRange =
  /\b(?:scales?|tape|rule|ruler|calipers?)\b[^.;]{0,16}\b(?:goe?s?|stops?|ends?|runs out|gives? up|gave up|starts?)\b[^.;,\d]{0,12}\b(?:to|at) $/i;
const weighing = /\bweigh(?:s|ed|ing)?(?: in)?(?: (?:at|about|around|only|some|just)){0,2} $/i;

/** "In air 640 g, in water 400": what water leaves of a weight is no weight of the part. */
const inWater = /\b(?:in|under) water(?:,|:)?(?: (?:it |its )?(?:is|was|weighs|weighed|reads|shows))? $/i;

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
  const groups = apart(match.groups ?? {});
  const start = match.index ?? 0;
  const written = groups.unit ?? groups.lowUnit;
  const isPlace =
    written !== undefined &&
    isPreposition(written, groups.low ?? "", text, start + match[0].length, groups.rest);
  const said = isPlace ? undefined : written;
  const low = parseNumber(groups.low ?? "");
  if (low === undefined) return undefined;
  const before = text.slice(Math.max(0, start - 28), start);
  const end = start + lengthUsed(match[0], groups, isPlace);
  if (bounded.test(before) && !loosely.test(before)) return undefined;
  const base = readValue(low, groups, said, isBetween(before, groups));
  if (
    isFootOf(match[0], text.slice(end)) ||
    base === undefined ||
    isNoSize(base.unit, before, text.slice(end, end + 12))
  )
    return undefined;
  const isLoose = loosely.test(before) || looselyAfter.test(text.slice(end, end + 16));
  const instrument = instrumentNear(text, start, end, base.unit);
  return {
    start,
    end,
    value: base.value,
    halfWidth: base.halfWidth * (isLoose ? 2 : 1),
    unit: base.unit,
    after: text.slice(end, end + 30),
    ...(instrument === undefined ? {} : { instrument }),
  };
}

/** "One foot rubbed away": a foot of something, unless it goes on as a length. */
function isFootOf(said: string, after: string): boolean {
  return /^one foot$/i.test(said.trim()) && /^ (?:\w+ed|worn|broken|gone|missing)\b/.test(after);
}

function isNoSize(unit: MeasurementUnit | null, before: string, after: string): boolean {
  if (wholeRange.test(before) || inWater.test(before)) return true;
  if (unit === null)
    return (
      noSize.test(after) || numbering.test(before) || isListMark(before, after) || isOfSeries(before, after)
    );
  const isLength = /^(?:mm|cm|in)$/.test(unit);
  return isLength && (givingWay.test(before) || weighing.test(before));
}

/** "3) front flange 4) no idea": what counts the items of a list. */
function isListMark(before: string, after: string): boolean {
  return after.startsWith(")") && !before.includes("(");
}

/** "Gaps go 60, 71, 58": three figures in a row are no one's size. */
function isOfSeries(before: string, after: string): boolean {
  return (
    /^,? \d+, \d/.test(after) || /\d, \d+, $/.test(before) || (/\d, $/.test(before) && /^, \d/.test(after))
  );
}

/** "17 in the middle", "31 in stencil": a place or a manner, not inches, unless the words of a size follow. */
function isPreposition(
  said: string,
  number: string,
  text: string,
  end: number,
  rest: string | undefined,
): boolean {
  if (said !== "in" || rest !== undefined || /[.,/]/.test(number)) return false;
  return !/^(?:$|[^ ]| [^a-z]| (?:wide|high|tall|across|thick|long|deep|dia\w*|overall|at|over|from|tip|to|on|with|by|x|and|or|for|exactly|approx\w*|about|max\w*|is|so|but|rims?|wheels?|between|apart|off|as|i|it|its|measured|centres?|centers?)\b)/i.test(
    text.slice(end, end + 24),
  );
}

type Groups = Readonly<Record<string, string | undefined>>;

/** "2 kilos and 350 grams": two figures of different units are no range; the second stands behind the first. */
function apart(groups: Groups): Groups {
  const { lowUnit, high, unit, ...others } = groups;
  if (lowUnit === undefined || unit === undefined || unitSaid(lowUnit) === unitSaid(unit)) return groups;
  return { ...others, lowUnit, rest: high, restUnit: unit };
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
  if (factor === 12) return mayBe("in");
  return major === "lb" && minor === "oz";
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
