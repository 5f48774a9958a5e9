/** The beta distribution: what counts say of a share. */
import { whereReached } from "./bisection.ts";
import { logGamma } from "./log-gamma.ts";

const TINY = 1e-300;
const MOST_STEPS = 10_000;

function nudged(x: number): number {
  return Math.abs(x) < TINY ? TINY : x;
}

/** The continued fraction of the incomplete beta function, by the modified Lentz method. */
function continuedFraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / nudged(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= MOST_STEPS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nudged(1 + even * d);
    c = nudged(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nudged(1 + odd * d);
    c = nudged(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}

/**
 * I_x(a, b): the chance that a share with the distribution Beta(a, b) is at most x. a, b > 0; x outside [0, 1] gives 0
 * or 1. Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, 26.5.8 and 26.5.2.
 * betaAtMost(0.485, 438, 544) = 0.9928259886.
 */
export function betaAtMost(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  if (x < (a + 1) / (a + b + 2)) return (front * continuedFraction(a, b, x)) / a;
  return 1 - (front * continuedFraction(b, a, 1 - x)) / b;
}

/** The share that Beta(a, b) stays below with the given chance; chance ≤ 0 gives 0, ≥ 1 gives 1. */
export function betaQuantile(chance: number, a: number, b: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return 1;
  return whereReached((x) => betaAtMost(x, a, b), chance, 0, 1);
}
