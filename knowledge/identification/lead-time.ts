/**
 * The months between a part's date mark and the next mark, or the car's build date. A lognormal with a tail for
 * parts that lay on the shelf and a little room for a wrong build date (identification method, section 5).
 */
import { normalDistribution } from "../numbers/normal-distribution.ts";

export interface LeadTime {
  /** Median in months. */
  readonly median: number;
  /** Standard deviation of the natural logarithm. */
  readonly sigma: number;
}

/** What documented cars taught of the lead from a date mark to what comes next: another mark of the part, or the car. */
export interface LearntLead {
  readonly part: string;
  readonly feature: string;
  readonly lead: LeadTime;
  readonly cars: number;
}

const clip = (x: number): number => Math.min(1, Math.max(0, x));

/**
 * G(x) = .94 · Φ(ln(x/median)/σ) [x > 0] + .05 · clip(x/36) + .01 · clip((x + 6)/6): the chance that the lead is at
 * most x months; rises from 0 at −6 to 1.
 */
export function leadAtMost(lead: LeadTime, months: number): number {
  const usual = normalDistribution(Math.log(Math.max(0, months) / lead.median) / lead.sigma);
  return 0.94 * usual + 0.05 * clip(months / 36) + 0.01 * clip((months + 6) / 6);
}

const deviations = Array.from({ length: 17 }, (_, index) => (index - 8) / 3);
const densities = deviations.map((z) => Math.exp((-z * z) / 2));
const densityTotal = densities.reduce((sum, density) => sum + density, 0);

/** The usual lead as a few lengths in months with their shares, which sum to one. */
export function spreadOf(lead: LeadTime): readonly { readonly months: number; readonly share: number }[] {
  return deviations.map((z, index) => ({
    months: lead.median * Math.exp(lead.sigma * z),
    share: (densities[index] as number) / densityTotal,
  }));
}

/**
 * The lead over two links when the mark between them was not read: the lognormal with the mean and variance of the
 * sum (L. F. Fenton, "The sum of log-normal probability distributions in scatter transmission systems", IRE
 * Transactions on Communications Systems 8, 1960).
 */
export function leadOverBoth(one: LeadTime, other: LeadTime): LeadTime {
  const moments = [one, other].map(({ median, sigma }) => {
    const mean = median * Math.exp((sigma * sigma) / 2);
    return { mean, variance: mean * mean * Math.expm1(sigma * sigma) };
  });
  const mean = moments.reduce((sum, moment) => sum + moment.mean, 0);
  const variance = moments.reduce((sum, moment) => sum + moment.variance, 0);
  const sigmaSquared = Math.log1p(variance / (mean * mean));
  return { median: mean * Math.exp(-sigmaSquared / 2), sigma: Math.sqrt(sigmaSquared) };
}
