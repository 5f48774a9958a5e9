/** The as-built mix of one car, instant by instant: build date and mix stay joined, because date marks need both. */
import { asBuiltMix, type MixGround } from "./as-built-mix.ts";
import type { TimeGrid } from "./time-grid.ts";

export interface BuildMix extends TimeGrid {
  /** Row-major, instants × variants: w_k · a_v(T_k). */
  readonly joint: Float64Array;
  /** Σ_k w_k · a_v(T_k), one per variant. */
  readonly average: Float64Array;
}

export function buildMix(grid: TimeGrid, ground: MixGround): BuildMix {
  const { production, variantCount } = ground;
  const joint = new Float64Array(grid.times.length * variantCount);
  const average = new Float64Array(variantCount);
  grid.times.forEach((time, k) => {
    const mix = asBuiltMix(ground, time);
    const weight = grid.weights[k] as number;
    for (const variant of production) {
      const share = weight * (mix[variant] as number);
      joint[k * variantCount + variant] = share;
      average[variant] = (average[variant] as number) + share;
    }
  });
  return { ...grid, joint, average };
}

/** Σ_k w_k · a_v(T_k) · factor_k ÷ Σ_k w_k · a_v(T_k), one per variant; 0 where the variant was never fitted. */
export function averageOverBuild(mix: BuildMix, factor: Float64Array): Float64Array {
  const variantCount = mix.average.length;
  const sums = new Float64Array(variantCount);
  factor.forEach((value, k) => {
    if (value === 0) return;
    const offset = k * variantCount;
    for (let variant = 0; variant < variantCount; variant += 1) {
      sums[variant] = (sums[variant] as number) + (mix.joint[offset + variant] as number) * value;
    }
  });
  return sums.map((sum, variant) => {
    const whole = mix.average[variant] as number;
    return whole > 0 ? sum / whole : 0;
  });
}
