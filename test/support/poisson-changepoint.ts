// A change in the rate of yearly counts, the textbook form of a changeover. The project dates changes between two
// labels, not between two rates; this gives the project's special functions, sums of logarithms and runs a published
// posterior to reproduce.
import { logGamma } from "../../knowledge/numbers/log-gamma.ts";
import { logSumExp, normaliseLogarithms } from "../../knowledge/numbers/log-sum-exp.ts";

export interface RateChange {
  /** P(k is the last index of the first regime), index 0 for k = 1. */
  readonly chances: Float64Array;
  /** ln of the Bayes factor of a change (k even on 1 … n − 1) against none. */
  readonly logBayesFactor: number;
  readonly rateMeans: readonly [number, number];
}

/** Both rates Gamma(shape, rate); the factorials of the counts cancel. */
export function rateChange(counts: readonly number[], shape: number, rate: number): RateChange {
  const marginal = (sum: number, years: number): number =>
    shape * Math.log(rate) - logGamma(shape) + logGamma(shape + sum) - (shape + sum) * Math.log(rate + years);
  const all = counts.reduce((sum, count) => sum + count, 0);
  let before = 0;
  const splits = counts.slice(0, -1).map((count, index) => {
    before += count;
    return { sum: before, years: index + 1 };
  });
  const logarithms = splits.map(
    ({ sum, years }) => marginal(sum, years) + marginal(all - sum, counts.length - years),
  );
  const chances = normaliseLogarithms(logarithms);
  const mean = (of: (split: { sum: number; years: number }) => number): number =>
    splits.reduce((sum, split, index) => sum + of(split) * (chances[index] as number), 0);
  return {
    chances,
    logBayesFactor: logSumExp(logarithms) - Math.log(splits.length) - marginal(all, counts.length),
    rateMeans: [
      mean(({ sum, years }) => (shape + sum) / (rate + years)),
      mean(({ sum, years }) => (shape + all - sum) / (rate + counts.length - years)),
    ],
  };
}
