/** One measured feature over all variants: what each should measure, and the range of all of them. */
import type { MeasurementFeature, PartKind } from "../handbook/schema.ts";
import type { VariantLikelihood } from "./likelihood.ts";
import {
  chanceOfReadings,
  chanceOfReadingsFlat,
  type MeanRange,
  type Reading,
} from "./measurement-likelihood.ts";

export interface MeasurementTable {
  /** One per variant, in the feature's unit; NaN where the handbook gives no figure. */
  readonly means: Float64Array;
  readonly spreads: Float64Array;
  /** Undefined when no variant has a figure: then nothing can be learnt from it. */
  readonly range: MeanRange | undefined;
}

/** Compiles a measured feature. */
export function measurementTable(part: PartKind, feature: MeasurementFeature): MeasurementTable {
  const figure = (index: number, key: "mean" | "spread"): number => {
    const value = part.variants[index]?.tells[feature.id]?.[key];
    return typeof value === "number" ? value : Number.NaN;
  };
  const means = Float64Array.from(part.variants, (_, index) => figure(index, "mean"));
  const spreads = Float64Array.from(part.variants, (_, index) => figure(index, "spread"));
  const known = means.filter((mean) => !Number.isNaN(mean));
  const range = known.length > 0 ? { lowest: Math.min(...known), highest: Math.max(...known) } : undefined;
  return { means, spreads, range };
}

/** P(readings | variant): a variant without the figure is as good as flat. */
export function overMeans(table: MeasurementTable, readings: readonly Reading[]): VariantLikelihood {
  const flat = table.range ? chanceOfReadingsFlat(readings, table.range) : 1;
  const byVariant = table.means.map((mean, variant) =>
    Number.isNaN(mean) ? flat : chanceOfReadings(readings, mean, table.spreads[variant] as number),
  );
  return { byVariant, flat };
}
