// What share of the cars carry a variant: an interval from counts, and the true share behind labels that are sometimes
// wrong.
import { betaQuantile } from "../numbers/beta-distribution.ts";
import { type ShareInterval, wilsonInterval } from "../numbers/wilson-interval.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface ShareOfVariant {
  readonly share: number;
  /** Wilson's score interval: for showing. */
  readonly wilson: ShareInterval;
  /** Jeffreys' interval, from Beta(seen + ½, others + ½): for further sums. */
  readonly jeffreys: ShareInterval;
}

/**
 * The share of `seen` among `looked` with two-sided intervals at `level` (.95 when left out). At 0 and at all the outer
 * limit of Jeffreys' interval is set to 0 and 1. Refused for counts that are no counts, or none looked at.
 * Wilson: Newcombe 1998, method 3. Jeffreys: L. D. Brown, T. T. Cai & A. DasGupta, "Interval estimation for a binomial
 * proportion", Statistical Science 16, 2001.
 */
export function shareOfVariant(seen: number, looked: number, level = 0.95): Result<ShareOfVariant, Refusal> {
  if (!(Number.isInteger(seen) && Number.isInteger(looked) && seen >= 0 && seen <= looked)) {
    return refused("out-of-range", "counts are whole and no more are seen than looked at");
  }
  if (looked === 0) return refused("too-few-sightings", "no car was looked at");
  const tail = (1 - level) / 2;
  const [a, b] = [seen + 0.5, looked - seen + 0.5];
  return found({
    share: seen / looked,
    wilson: wilsonInterval(seen, looked, level),
    jeffreys: {
      low: seen === 0 ? 0 : betaQuantile(tail, a, b),
      high: seen === looked ? 1 : betaQuantile(1 - tail, a, b),
    },
  });
}

export interface CorrectedShare {
  /** In [0, 1]. */
  readonly share: number;
  /** Before it was cut to [0, 1]. */
  readonly raw: number;
  /** The labels show less (or more) of the variant than their error rates alone would: counts and rates disagree. */
  readonly isClipped: boolean;
}

/**
 * The true share behind an apparent one: (p + Sp − 1)/(Se + Sp − 1). `hit`: P(labelled so | it is), `rightlyNot`: P(not
 * labelled so | it is not); refused when labels tell nothing (hit + rightlyNot ≤ 1).
 * W. J. Rogan & B. Gladen, "Estimating prevalence from the results of a screening test", Am. J. Epidemiology 107, 1978.
 */
export function trueShare(
  apparent: number,
  hit: number,
  rightlyNot: number,
): Result<CorrectedShare, Refusal> {
  const isShare = (value: number): boolean => value >= 0 && value <= 1;
  if (![apparent, hit, rightlyNot].every(isShare))
    return refused("out-of-range", "shares lie between 0 and 1");
  const worth = hit + rightlyNot - 1;
  if (!(worth > 1e-12))
    return refused("out-of-range", "labels that are right no more than by chance tell nothing");
  const raw = (apparent + rightlyNot - 1) / worth;
  const share = Math.min(1, Math.max(0, raw));
  return found({ share, raw, isClipped: Math.abs(raw - share) > 1e-12 });
}
