/**
 * The normal distribution function. A rational approximation and not a table or a five-digit formula: two
 * variants' odds are built from differences of this function, so it must hold far into the tails.
 */

const upperCoefficients = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
] as const;
const lowerCoefficients = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
] as const;

/** Beyond this many deviations the tail is below the smallest double. */
const OUTERMOST = 38;
const FAR = 7.07106781186547;

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}

function upperTail(x: number): number {
  if (x > OUTERMOST) return 0;
  const density = Math.exp((-x * x) / 2);
  if (x < FAR) return (density * polynomial(upperCoefficients, x)) / polynomial(lowerCoefficients, x);
  return density / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / 2.506628274631;
}

/**
 * Φ(x), the chance that a standard normal value lies below x; absolute error below 1e-14. Infinite x gives 0 or 1.
 * J. F. Hart et al., Computer Approximations, 1968, algorithm 5666, as given by G. West, "Better approximations
 * to cumulative normal functions", Wilmott Magazine, May 2005. normalDistribution(1.96) = 0.9750021049.
 */
export function normalDistribution(x: number): number {
  return x > 0 ? 1 - upperTail(x) : upperTail(-x);
}

/**
 * Φ(to) − Φ(from) for from ≤ to, taken on the side of the tail where nothing cancels; 0 when from ≥ to.
 * Keeps its relative accuracy ten deviations out, where 1 − Φ would already read 0.
 */
export function normalBetween(from: number, to: number): number {
  if (from >= to) return 0;
  if (from > 0) return upperTail(from) - upperTail(to);
  return normalDistribution(to) - normalDistribution(from);
}
