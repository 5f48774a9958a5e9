// How many were built, from the serials that survive. The serials are taken as a draw without replacement from 1 … N.
// Which build dates a serial allows is buildInterval in language/serials.ts.
import { logChoose } from "../numbers/log-gamma.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface NumbersBuilt {
  /** Serials seen, each counted once, and the highest of them counted from the first number. */
  readonly seen: number;
  readonly highest: number;
  /** The unbiased estimate m + m/k − 1. */
  readonly unbiased: number;
  /** Mean and deviation of the posterior under an even prior; they exist from three and four serials on. */
  readonly mean: Result<number, Refusal>;
  readonly deviation: Result<number, Refusal>;
  /** Smallest number that is reached with at least the given chance; from two serials on. */
  readonly quantile: (chance: number) => Result<number, Refusal>;
  /** P(exactly `built`), and P(more than `built`). */
  readonly chanceOf: (built: number) => number;
  readonly chanceAbove: (built: number) => number;
}

/** Beyond nine figures the logarithms of the formula lose the digits that tell one number from the next. */
const MOST = 999_999_999;

/**
 * Numbers built from observed serials, first number `first` (1 when left out); refused for no serials, one below the
 * first, or one of more than nine figures. With k serials up to m: P(N = n) = (k−1)/k · C(m−1, k−1)/C(n, k), P(N > x) = C(m−1, k−1)/C(x, k−1),
 * mean (m−1)(k−1)/(k−2), variance (m−1)(m−k+1)(k−1)/((k−3)(k−2)²).
 * L. A. Goodman, "Serial number analysis", Journal of the American Statistical Association 47, 1952.
 */
export function numbersBuilt(serials: readonly number[], first = 1): Result<NumbersBuilt, Refusal> {
  const distinct = [...new Set(serials)].map((serial) => serial - first + 1);
  if (distinct.length === 0) return refused("too-few-sightings", "it needs a serial");
  if (distinct.some((serial) => !Number.isInteger(serial) || serial < 1)) {
    return refused("out-of-range", `serials are whole numbers from ${first} on`);
  }
  if (distinct.some((serial) => serial > MOST)) {
    return refused("out-of-range", "a serial has no more than nine figures");
  }
  const k = distinct.length;
  const m = distinct.reduce((most, serial) => Math.max(most, serial), 0);
  const spread = Math.sqrt(((k - 1) * (m - 1) * (m - k + 1)) / ((k - 3) * (k - 2) ** 2));
  const chanceAbove = (built: number): number => {
    const whole = Math.floor(built);
    if (whole < m) return 1;
    return k < 2 ? 1 : Math.exp(logChoose(m - 1, k - 1) - logChoose(whole, k - 1));
  };
  return found({
    seen: k,
    highest: m,
    unbiased: m + m / k - 1,
    mean:
      k >= 3
        ? found(((m - 1) * (k - 1)) / (k - 2))
        : refused("too-few-sightings", "a mean needs three serials"),
    deviation: k >= 4 ? found(spread) : refused("too-few-sightings", "a deviation needs four serials"),
    quantile: (chance) => quantileOf(chanceAbove, m, k, chance),
    chanceAbove,
    chanceOf: (built) =>
      built < m || k < 2 || !Number.isInteger(built)
        ? 0
        : ((k - 1) / k) * Math.exp(logChoose(m - 1, k - 1) - logChoose(built, k)),
  });
}

function quantileOf(
  chanceAbove: (built: number) => number,
  highest: number,
  seen: number,
  chance: number,
): Result<number, Refusal> {
  if (seen < 2) return refused("too-few-sightings", "a limit needs two serials");
  if (!(chance > 0 && chance < 1)) return refused("out-of-range", "a chance lies between 0 and 1");
  let low = highest - 1;
  let high = 2 * highest;
  while (1 - chanceAbove(high) < chance) high *= 2;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (1 - chanceAbove(middle) < chance) low = middle;
    else high = middle;
  }
  return found(high);
}
