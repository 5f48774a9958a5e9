// Whether a size can be that of a feature: within a factor of the range of its variants' means, in the unit said or
// in one that is mistaken for it.
import type { MeasurementUnit } from "../evidence/report.ts";
import type { MeasurementFeature, PartKind } from "../handbook/schema.ts";
import { convertUnits } from "../trade/units.ts";
import type { Quantity } from "./quantities.ts";

/** A measurement that a size may be of. */
export interface Candidate {
  readonly part: PartKind;
  readonly feature: MeasurementFeature;
}

/** Units commonly said one for the other; a slip is for the identification to weigh, not for the reader to refuse. */
const slips: Readonly<Record<string, readonly MeasurementUnit[]>> = {
  mm: ["mm", "cm", "in"],
  cm: ["cm", "mm", "in"],
  in: ["in", "cm", "mm"],
  kg: ["kg", "lb"],
  lb: ["lb", "kg"],
  g: ["g", "oz", "kg"],
  oz: ["oz", "g"],
};

/** Within `factor` times the range of the variants' means, in the unit said or one it is mistaken for. */
export function isPlausible(
  candidate: Candidate,
  quantity: Quantity,
  factor: number,
  units: readonly MeasurementUnit[] = unitsMeant(quantity),
): boolean {
  const range = rangeOf(candidate);
  if (range === undefined) return factor > 2;
  return units.some((unit) => {
    const value = convertUnits(quantity.value, unit, candidate.feature.unit);
    return value !== undefined && value >= range.least / factor && value <= range.most * factor;
  });
}

interface Range {
  readonly least: number;
  readonly most: number;
}

/** By feature: a size is held against all features of its dimension, and each against all variants would be felt. */
const rangesKnown = new WeakMap<MeasurementFeature, Range | undefined>();

/** The least and the greatest of its variants' means; undefined where none has one. */
function rangeOf({ part, feature }: Candidate): Range | undefined {
  if (rangesKnown.has(feature)) return rangesKnown.get(feature);
  const means = part.variants.flatMap((variant) => {
    const claim = variant.tells[feature.id];
    return claim !== undefined && "mean" in claim && typeof claim.mean === "number" ? [claim.mean] : [];
  });
  const range =
    means.length === 0
      ? undefined
      : {
          least: means.reduce((least, mean) => Math.min(least, mean)),
          most: means.reduce((most, mean) => Math.max(most, mean)),
        };
  rangesKnown.set(feature, range);
  return range;
}

function unitsMeant(quantity: Quantity): readonly MeasurementUnit[] {
  return quantity.unit === null ? ["mm", "cm", "in", "g", "kg", "lb"] : (slips[quantity.unit] ?? []);
}
