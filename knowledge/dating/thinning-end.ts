// The end of use when it may have thinned out: the optimal linear estimate from the latest sightings, which assumes only
// that the last few of many follow an extreme-value law. Roberts & Solow 2003.
import { solveLinear } from "../numbers/linear-system.ts";
import { logGamma } from "../numbers/log-gamma.ts";
import type { EndEstimate, SightingRecord } from "./even-end.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface ThinningEnd extends EndEstimate {
  /** Shape v of the law; the larger, the thinner the end. */
  readonly shape: number;
  /** Two-sided limits at 95 %. */
  readonly lower: number;
  readonly twoSidedUpper: number;
  /** Chance of so long a silence if use had not ended. */
  readonly silenceChance: number;
  /** Weights of the sightings, latest first; they sum to one. */
  readonly weights: readonly number[];
}

/** The latest so many are used. */
const MOST_USED = 10;
const FEWEST = 5;

/**
 * The optimal linear estimate Σ a_i·T_i of the latest (at most ten) sightings, T₁ the last. a = Λ⁻¹e ÷ (eᵀΛ⁻¹e),
 * λ_ij = Γ(2v + i)Γ(v + j) ÷ (Γ(v + i)Γ(j)) for j ≤ i, v = 1/(k − 1) · Σ_{i ≤ k−2} ln[(T₁ − T_k)/(T₁ − T_{i+1})]; limits
 * T₁ + (T₁ − T_k)/((−ln q/k)^(−v) − 1). Refused with fewer than five sightings, or when the last two are tied.
 * D. L. Roberts & A. R. Solow, "When did the dodo become extinct?", Nature 426, 2003, 245.
 */
export function robertsSolowEnd(record: SightingRecord): Result<ThinningEnd, Refusal> {
  const latest = [...record.places].sort((one, other) => other - one).slice(0, MOST_USED);
  const count = latest.length;
  if (count < FEWEST) return refused("too-few-sightings", "it needs five sightings");
  const first = latest[0] as number;
  const span = first - (latest[count - 1] as number);
  if (first === latest[1]) return refused("sightings-tied", "the last two sightings lie at one place");
  let sum = 0;
  for (let i = 1; i <= count - 2; i += 1) sum += Math.log(span / (first - (latest[i] as number)));
  const shape = sum / (count - 1);
  const weights = shape > 0 ? linearWeights(shape, count) : undefined;
  if (!weights) return refused("sightings-tied", "all sightings but the last lie at one place");
  const limit = (chance: number): number => first + span / ((-Math.log(chance) / count) ** -shape - 1);
  const alpha = 1 - (record.level ?? 0.95);
  const silence = (record.looked - first) / (record.looked - (latest[count - 1] as number));
  return found({
    sightings: count,
    estimate: weights.reduce((total, weight, index) => total + weight * (latest[index] as number), 0),
    lower: limit(0.975),
    twoSidedUpper: limit(0.025),
    upper: limit(alpha),
    silenceChance: Math.exp(-count * Math.max(0, silence) ** (1 / shape)),
    shape,
    weights,
    assumption:
      "the latest sightings are the last few of many, and use may have thinned out (Roberts & Solow 2003)",
  });
}

function linearWeights(shape: number, count: number): readonly number[] | undefined {
  const entry = (i: number, j: number): number =>
    Math.exp(logGamma(2 * shape + i) + logGamma(shape + j) - logGamma(shape + i) - logGamma(j));
  const indices = Array.from({ length: count }, (_, index) => index + 1);
  const matrix = indices.map((i) => indices.map((j) => entry(Math.max(i, j), Math.min(i, j))));
  const raw = solveLinear(
    matrix,
    indices.map(() => 1),
  );
  const total = raw?.reduce((sum, value) => sum + value, 0) ?? 0;
  return raw && total !== 0 ? raw.map((value) => value / total) : undefined;
}
