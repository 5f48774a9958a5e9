/** The gamma distribution: what a count says of a rate. */
import { whereReached } from "./bisection.ts";
import { logGamma } from "./log-gamma.ts";

const TINY = 1e-300;
const MOST_STEPS = 10_000;

function bySeries(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n <= MOST_STEPS && term > sum * 1e-17; n += 1) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

function byFraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n <= MOST_STEPS; n += 1) {
    const step = -n * (n - shape);
    b += 2;
    d = 1 / (step * d + b || TINY);
    c = b + step / c || TINY;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}

/**
 * P(shape, rate · x): the chance that a rate with the distribution Gamma(shape, rate) is at most x. shape, rate > 0;
 * x ≤ 0 gives 0. Abramowitz & Stegun, 1964, 6.5.29 (series) and 6.5.31 (fraction). gammaAtMost(1, 1, 1) = 1 − 1/e.
 */
export function gammaAtMost(x: number, shape: number, rate: number): number {
  if (x <= 0) return 0;
  const scaled = x * rate;
  const front = Math.exp(shape * Math.log(scaled) - scaled - logGamma(shape));
  return scaled < shape + 1 ? front * bySeries(shape, scaled) : 1 - front * byFraction(shape, scaled);
}

/** The rate that Gamma(shape, rate) stays below with the given chance; ≤ 0 gives 0, ≥ 1 gives Infinity. */
export function gammaQuantile(chance: number, shape: number, rate: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return Number.POSITIVE_INFINITY;
  let high = (shape + 1) / rate;
  while (gammaAtMost(high, shape, rate) < chance) high *= 2;
  return whereReached((x) => gammaAtMost(x, shape, rate), chance, 0, high);
}
