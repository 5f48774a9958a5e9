/** The as-built mix of one car, instant by instant: build date and mix stay joined, because date marks need both. */
import { asBuiltMix, type MixGround } from "./as-built-mix.ts";
import type { TimeGrid } from "./time-grid.ts";

export interface BuildMix extends TimeGrid {
  /** The variants that are fitted at all, in the handbook's order: the columns of `joint`. */
  readonly production: readonly number[];
  /** Row-major, instants × production variants: w_k · a_v(T_k). */
  readonly joint: Float64Array;
  /** Σ_k w_k · a_v(T_k), one per variant; 0 for one that is not of production. */
  readonly average: Float64Array;
}

export function buildMix(grid: TimeGrid, ground: MixGround): BuildMix {
  const { production, variantCount } = ground;
  const joint = new Float64Array(grid.times.length * production.length);
  const average = new Float64Array(variantCount);
  grid.times.forEach((time, k) => {
    const mix = asBuiltMix(ground, time);
    const weight = grid.weights[k] as number;
    production.forEach((variant, column) => {
      const share = weight * (mix[variant] as number);
      joint[k * production.length + column] = share;
      average[variant] = (average[variant] as number) + share;
    });
  });
  return { ...grid, production, joint, average };
}

/** Σ_k w_k · a_v(T_k) · factor_k ÷ Σ_k w_k · a_v(T_k), one per variant; 0 where the variant was never fitted. */
export function averageOverBuild(mix: BuildMix, factor: Float64Array): Float64Array {
  const { production, joint, average } = mix;
  const width = production.length;
  const sums = new Float64Array(width);
  for (let k = 0; k < factor.length; k += 1) {
    const value = factor[k] as number;
    if (value === 0) continue;
    const offset = k * width;
    for (let column = 0; column < width; column += 1) {
      sums[column] = (sums[column] as number) + (joint[offset + column] as number) * value;
    }
  }
  const averaged = new Float64Array(average.length);
  for (let column = 0; column < width; column += 1) {
    const variant = production[column] as number;
    const whole = average[variant] as number;
    if (whole > 0) averaged[variant] = (sums[column] as number) / whole;
  }
  return averaged;
}
