/**
 * The units a restorer writes down, and the ones each is confused with. NIST Special Publication 811 (2008),
 * appendix B: inch 25.4 mm, pound 453.59237 g, ounce 28.349523125 g, all exact.
 */
import type { Instrument, MeasurementUnit } from "../evidence/report.ts";

/** Millimetres or grams in one unit. */
const scale: Readonly<Record<MeasurementUnit, number>> = {
  mm: 1,
  cm: 10,
  in: 25.4,
  g: 1,
  kg: 1000,
  lb: 453.59237,
  oz: 28.349523125,
};

const lengths: readonly MeasurementUnit[] = ["mm", "cm", "in"];

/** Whether two units measure the same kind of thing. */
export function measureAlike(one: MeasurementUnit, other: MeasurementUnit): boolean {
  return lengths.includes(one) === lengths.includes(other);
}

/** How many `to` one `from` is: 25.4 for inches to millimetres. */
export function unitRatio(from: MeasurementUnit, to: MeasurementUnit): number {
  return scale[from] / scale[to];
}

interface UnitChance {
  readonly unit: MeasurementUnit;
  readonly chance: number;
}

/** Chance that the unit said is the unit meant (judgement, not fitted). */
const MEANT_AS_SAID = 0.98;

const confusions: Readonly<Record<MeasurementUnit, readonly MeasurementUnit[]>> = {
  mm: ["cm", "in"],
  cm: ["mm", "in"],
  in: ["cm", "mm"],
  kg: ["lb"],
  lb: ["kg"],
  g: ["oz"],
  oz: ["g"],
};

const unsaidLength: readonly UnitChance[] = [
  { unit: "mm", chance: 0.5 },
  { unit: "cm", chance: 0.25 },
  { unit: "in", chance: 0.25 },
];
const unsaidMass: readonly UnitChance[] = [
  { unit: "g", chance: 0.3 },
  { unit: "kg", chance: 0.3 },
  { unit: "lb", chance: 0.3 },
  { unit: "oz", chance: 0.1 },
];

/** The units a number may have been meant in; `said` null when none was said, `like` the unit of the feature. */
export function unitChances(
  said: MeasurementUnit | null,
  like: MeasurementUnit,
  isConfirmed: boolean,
): readonly UnitChance[] {
  if (said === null) return lengths.includes(like) ? unsaidLength : unsaidMass;
  if (isConfirmed) return [{ unit: said, chance: 1 }];
  const others = confusions[said];
  return [
    { unit: said, chance: MEANT_AS_SAID },
    ...others.map((unit) => ({ unit, chance: (1 - MEANT_AS_SAID) / others.length })),
  ];
}

/** Standard deviation of a reading in the said unit: tape 1 mm, rule .5, caliper .1, kitchen scale 10 g, guess 5 %. */
export function instrumentDeviation(instrument: Instrument, value: number, unit: MeasurementUnit): number {
  if (instrument === "guess") return 0.05 * value;
  const millimetresOrGrams = { tape: 1, rule: 0.5, caliper: 0.1, "kitchen-scale": 10 }[instrument];
  return millimetresOrGrams / scale[unit];
}
