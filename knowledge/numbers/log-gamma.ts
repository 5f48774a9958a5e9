/**
 * The logarithm of the gamma function, on which the beta and gamma distributions and the binomial coefficients of
 * serial numbers rest. Lanczos' series: fifteen digits over the whole positive axis without special cases.
 */

/** C. Lanczos, "A precision approximation of the gamma function", SIAM J. Numer. Anal. B 1, 1964; g = 7, n = 9 (P. Godfrey). */
const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;
const SHIFT = 7;
const HALF_LOG_TWO_PI = 0.9189385332046728;

/** ln Γ(x) for x > 0, relative error about 1e-14; below ½ by reflection. NaN for x ≤ 0. logGamma(5) = ln 24. */
export function logGamma(x: number): number {
  if (!(x > 0)) return Number.NaN;
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const base = x - 1;
  let series: number = lanczos[0];
  for (let k = 1; k < lanczos.length; k += 1) series += (lanczos[k] as number) / (base + k);
  const top = base + SHIFT + 0.5;
  return HALF_LOG_TWO_PI + (base + 0.5) * Math.log(top) - top + Math.log(series);
}

/** ln of the binomial coefficient "n over k", for real n ≥ k ≥ 0. */
export function logChoose(n: number, k: number): number {
  return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}
