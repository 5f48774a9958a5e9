// Density from weighing a part dry and hung in water. Water by Tanaka et al. (2001), "Recommended table for the
// density of water between 0 °C and 40 °C based on recent experimental reports", Metrologia 38:301-309; parts
// that float are held under by a sinker as in ASTM D792. All densities in g/cm³, masses in grams.
import type { Range } from "./tables/sourced.ts";

// Spread of two workshop weighings with the air soaked off: common practice, no source.
const WORKSHOP_ERROR = 0.03;

/** A part's density with the band a workshop scale leaves. */
export interface MeasuredDensity {
  readonly density: number;
  readonly band: Range;
  readonly waterDensity: number;
}

/** Density of air-free water in g/cm³ at 0 to 40 °C; undefined outside. 20 °C gives 0.9982067. */
export function waterDensity(celsius: number): number | undefined {
  if (!(celsius >= 0 && celsius <= 40)) return undefined;
  const fromPeak = (celsius - 3.983035) ** 2;
  const fall = (fromPeak * (celsius + 301.797)) / (522_528.9 * (celsius + 69.34881));
  return 0.99997495 * (1 - fall);
}

/** Mass over mass of displaced water: 8.630 g dry and 7.800 g in water give 10.3976. Undefined when nothing is displaced. */
export function relativeDensity(dryGrams: number, inWaterGrams: number): number | undefined {
  const isWeighable = dryGrams > 0 && inWaterGrams >= 0 && inWaterGrams < dryGrams;
  return isWeighable ? dryGrams / (dryGrams - inWaterGrams) : undefined;
}

/**
 * ASTM D792 for a floating part: a / (a + w − b), with a the part dry, b part and sinker in water, w sinker and
 * wire in water. Undefined when no water is displaced.
 */
export function relativeDensityWithSinker(
  dryGrams: number,
  withSinkerInWaterGrams: number,
  sinkerInWaterGrams: number,
): number | undefined {
  const displaced = dryGrams + sinkerInWaterGrams - withSinkerInWaterGrams;
  return dryGrams > 0 && displaced > 0 ? dryGrams / displaced : undefined;
}

/**
 * Density from a relative density and the water's temperature, with ± 0.03 g/cm³ for a workshop scale.
 * Undefined outside 0 to 40 °C.
 */
export function densityInWater(relative: number | undefined, celsius: number): MeasuredDensity | undefined {
  const water = waterDensity(celsius);
  if (relative === undefined || water === undefined) return undefined;
  const density = relative * water;
  return {
    density,
    band: { from: density - WORKSHOP_ERROR, to: density + WORKSHOP_ERROR },
    waterDensity: water,
  };
}

/**
 * Density of a mixture by mass, 1 / Σ (share / density): the rule of mixtures. PP (0.905) with 20 % talc (2.75)
 * gives 1.045. `share` is of the filler, 0 to 1.
 */
export function mixtureDensity(matrixDensity: number, fillerDensity: number, share: number): number {
  return 1 / ((1 - share) / matrixDensity + share / fillerDensity);
}

/** What a weighing cannot tell, in one sentence. */
export const APPARENT_DENSITY_REMARK =
  "The apparent density is a bound only: trapped air, foam or wood makes a part read too light, an insert of metal too heavy, and soaked-up water shifts it.";
