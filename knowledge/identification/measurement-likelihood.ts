/**
 * One part measured by one or more people: the chance of their readings given a variant's mean and the maker's
 * spread. Unit slips and readings taken in the wrong place are terms of the mixture and never cut off, so that a
 * wild number weighs little instead of ruling everything out.
 */
import type { MeasurementUnit, Report } from "../evidence/report.ts";
import type { MeasurementFeature } from "../handbook/schema.ts";
import { normalBetween } from "../numbers/normal-distribution.ts";
import { instrumentDeviation, unitChances, unitRatio } from "./measurement-units.ts";

const LEAST_LOG_UNIFORM = 1e-9;
/** No words are more exact than this share of the number itself. */
const LEAST_HALF_WIDTH = 1e-4;
/** Share of careful readings that are taken in the right place and written down rightly (judgement). */
const SOUND_READING = 0.97;

/** One unit a number may have been meant in; all lengths or masses are in the feature's unit. */
interface ReadingTerm {
  readonly unit: MeasurementUnit;
  readonly weight: number;
  readonly from: number;
  readonly to: number;
  readonly deviation: number;
}
export interface Reading {
  readonly terms: readonly ReadingTerm[];
  readonly outlierWeight: number;
  /** P(the interval | measured in the wrong place), log-uniform over [lo/3, 3·hi]. */
  readonly outlier: number;
  /** Middle of the interval in the unit said: what a wrong reading of the same size would be compared with. */
  readonly middle: number;
}
/** Smallest and largest mean that the handbook gives for the feature. */
export interface MeanRange {
  readonly lowest: number;
  readonly highest: number;
}

/** ln(min(to, high) ÷ max(from, low)) ÷ ln(high ÷ low), at least 1e-9. */
function logUniform(from: number, to: number, low: number, high: number): number {
  const bottom = Math.max(from, low);
  const top = Math.min(to, high);
  if (!(top > bottom)) return LEAST_LOG_UNIFORM;
  return Math.max(LEAST_LOG_UNIFORM, Math.log(top / bottom) / Math.log(high / low));
}

/** The terms of one report's reading (identification method, section 4); undefined for any other kind of report. */
export function readingOf(
  report: Report,
  feature: MeasurementFeature,
  range: MeanRange,
): Reading | undefined {
  const { value } = report;
  if (value.kind !== "measurement") return undefined;
  const sound = SOUND_READING * report.certainty;
  const chances = unitChances(value.unit, feature.unit, value.unitConfirmed === true);
  const saidUnit = chances[0]?.unit ?? feature.unit;
  const deviation = instrumentDeviation(value.instrument ?? feature.instrument, value.value, saidUnit);
  const halfWidth = Math.max(value.halfWidth, LEAST_HALF_WIDTH * value.value);
  const terms = chances.map(({ unit, chance }) => {
    const ratio = unitRatio(unit, feature.unit);
    return {
      unit,
      weight: sound * chance,
      from: (value.value - halfWidth) * ratio,
      to: (value.value + halfWidth) * ratio,
      deviation: deviation * ratio,
    };
  });
  const first = terms[0];
  const outlier = first
    ? logUniform(first.from, first.to, range.lowest / 3, range.highest * 3)
    : LEAST_LOG_UNIFORM;
  const middle = first ? (first.from + first.to) / 2 : value.value;
  return { terms, outlierWeight: 1 - sound, outlier, middle };
}

function chanceOfReading(reading: Reading, mean: number, spread: number): number {
  let sum = reading.outlierWeight * reading.outlier;
  for (const term of reading.terms) {
    const deviation = Math.sqrt(spread * spread + term.deviation * term.deviation);
    sum += term.weight * normalBetween((term.from - mean) / deviation, (term.to - mean) / deviation);
  }
  return sum;
}

/** Steps of the maker's spread at which a true size shared by several readings is tried, from −4 to 4. */
const STEP = 0.1;
const REACH = 4;
const FINEST = 64;

type TrueSizes = readonly { readonly z: number; readonly share: number }[];
const knownSizes = new Map<number, TrueSizes>();

/** Sizes in spreads from the mean, with their shares, which sum to one; `parts`: how many to each step of .1. Kept. */
function trueSizes(parts: number): TrueSizes {
  const known = knownSizes.get(parts);
  if (known !== undefined) return known;
  const side = Math.round(REACH / STEP) * parts;
  const sizes = Array.from({ length: 2 * side + 1 }, (_, index) => ((index - side) * STEP) / parts);
  const densities = sizes.map((z) => Math.exp((-z * z) / 2));
  const total = densities.reduce((sum, density) => sum + density, 0);
  const found = sizes.map((z, index) => ({ z, share: (densities[index] as number) / total }));
  knownSizes.set(parts, found);
  return found;
}

/** Terms less likely than this share of the likeliest are not worth finer steps. */
const MINOR_TERM = 0.1;

/**
 * How many parts a step needs so that no reading falls between two: it may be no longer than the deviation that all
 * readings of one size leave together. A caliper on a part that its maker let vary by centimetres needs many.
 */
function partsOfStep(readings: readonly Reading[], spread: number): number {
  const closest = readings.reduce((least, { terms }) => {
    const most = terms.reduce((greatest, { weight }) => Math.max(greatest, weight), 0);
    return terms.reduce(
      (own, { weight, deviation }) => (weight < MINOR_TERM * most ? own : Math.min(own, deviation)),
      least,
    );
  }, Number.POSITIVE_INFINITY);
  const parts = Math.ceil((STEP * spread * Math.sqrt(readings.length)) / closest - 1e-9);
  return Math.min(FINEST, Math.max(1, parts));
}

/**
 * P(readings | a variant of this mean and spread). Several readings share one true size, summed over
 * mean + spread · z, z = −4 … 4 by .1 or finer; they are never multiplied as if there were two parts. No readings: 1.
 */
export function chanceOfReadings(readings: readonly Reading[], mean: number, spread: number): number {
  const [only] = readings;
  if (only === undefined) return 1;
  if (readings.length === 1) return chanceOfReading(only, mean, spread);
  return trueSizes(partsOfStep(readings, spread)).reduce(
    (sum, { z, share }) =>
      sum + readings.reduce((product, next) => product * chanceOfReading(next, mean + spread * z, 0), share),
    0,
  );
}

/**
 * P(readings | nothing known of the size): log-uniform over [lo/1.5, 1.5·hi], unit by unit. The first reading then
 * stands for the true size of the others.
 */
export function chanceOfReadingsFlat(readings: readonly Reading[], range: MeanRange): number {
  const [first, ...others] = readings;
  if (first === undefined) return 1;
  const rest = (size: number): number =>
    others.reduce((product, next) => product * chanceOfReading(next, size, 0), 1);
  return first.terms.reduce(
    (sum, term) =>
      sum +
      term.weight *
        logUniform(term.from, term.to, range.lowest / 1.5, range.highest * 1.5) *
        rest((term.from + term.to) / 2),
    first.outlierWeight * first.outlier * rest(first.middle),
  );
}

/** The reading as if only one of its terms could be true: a unit, or the outlier when `unit` is null. */
export function onlyTerm(reading: Reading, unit: MeasurementUnit | null): Reading {
  return {
    ...reading,
    terms: reading.terms.filter((term) => term.unit === unit),
    outlierWeight: unit === null ? reading.outlierWeight : 0,
  };
}
