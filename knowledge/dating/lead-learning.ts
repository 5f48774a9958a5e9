// How long parts of a kind lay before they were fitted, learned from cars whose build date and date mark are both
// documented. The trade's usual lead is the prior, so that three cars do not make a rule.
import type { Interval } from "../calendar/interval.ts";
import { type LeadTime, leadAtMost } from "../identification/lead-time.ts";
import { timeGrid } from "../identification/time-grid.ts";
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { shortestRun } from "./credible-run.ts";

/** A part's date mark and the build date of the car it was found on. */
export interface DocumentedPair {
  readonly mark: Interval;
  readonly built: Interval;
}

export interface LearnedLead {
  /** Posterior means of ln median and of sigma, as a lead: what identification takes. */
  readonly lead: LeadTime;
  /** Shortest 90 % interval of the median, in months. */
  readonly medianInterval: Interval;
  readonly pairs: number;
}

/** Standard deviations of the prior, both of logarithms (common practice, no source). */
const MEDIAN_DEVIATION = 0.6;
const SIGMA_DEVIATION = 0.3;
const REACH = 2.5;
const MEDIAN_STEPS = 51;
const SIGMA_STEPS = 15;
const LEVEL = 0.9;

/**
 * The lead of a part kind from documented pairs and the usual lead. Likelihood of a pair: the mean over build dates t of
 * G(t − a) − G(t − b) for the mark in [a, b] (identification method, section 5); parts dated after the car and old
 * stock are in G already. Only differences of dates enter, so pairs alike are worked out once and the order is of no
 * matter. No pairs: the usual lead. O(pairs that differ · build dates · 765).
 */
export function learnLead(pairs: readonly DocumentedPair[], usual: LeadTime): LearnedLead {
  const medians = around(usual.median, MEDIAN_DEVIATION, MEDIAN_STEPS);
  const sigmas = around(usual.sigma, SIGMA_DEVIATION, SIGMA_STEPS);
  const dated = pairsAlike(pairs).map(({ pair: { mark, built }, count }) => ({
    mark,
    count,
    grid: timeGrid(built),
  }));
  const logarithms = medians.flatMap((median) =>
    sigmas.map((sigma) => {
      const lead = { median: median.value, sigma: sigma.value };
      return dated.reduce(
        (sum, { mark, count, grid }) =>
          sum + count * Math.log(pairChance(lead, mark, grid.times, grid.weights)),
        median.logPrior + sigma.logPrior,
      );
    }),
  );
  const chances = normaliseLogarithms(logarithms);
  const byMedian = medians.map((_, row) =>
    sigmas.reduce((sum, _sigma, column) => sum + (chances[row * SIGMA_STEPS + column] as number), 0),
  );
  const logMedian = medians.reduce(
    (sum, { value }, row) => sum + Math.log(value) * (byMedian[row] as number),
    0,
  );
  const sigma = chances.reduce(
    (sum, chance, place) => sum + chance * (sigmas[place % SIGMA_STEPS] as Step).value,
    0,
  );
  const run = shortestRun(byMedian, LEVEL);
  return {
    lead: { median: Math.exp(logMedian), sigma },
    medianInterval: { from: (medians[run.first] as Step).value, to: (medians[run.last] as Step).value },
    pairs: pairs.length,
  };
}

/** Pairs of the same distance and widths as one, moved so that the mark begins at 0. */
function pairsAlike(
  pairs: readonly DocumentedPair[],
): readonly { readonly pair: DocumentedPair; readonly count: number }[] {
  const alike = new Map<string, { readonly pair: DocumentedPair; readonly count: number }>();
  for (const { mark, built } of pairs) {
    const rounded = [mark.to, built.from, built.to].map((date) => (date - mark.from).toFixed(6));
    const [markTo = 0, from = 0, to = 0] = rounded.map(Number);
    const count = (alike.get(rounded.join(" "))?.count ?? 0) + 1;
    alike.set(rounded.join(" "), { pair: { mark: { from: 0, to: markTo }, built: { from, to } }, count });
  }
  return [...alike].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, pair]) => pair);
}

interface Step {
  readonly value: number;
  readonly logPrior: number;
}

function around(centre: number, deviation: number, steps: number): readonly Step[] {
  return Array.from({ length: steps }, (_, index) => {
    const away = REACH * ((2 * index) / (steps - 1) - 1);
    return { value: centre * Math.exp(deviation * away), logPrior: (-away * away) / 2 };
  });
}

function pairChance(lead: LeadTime, mark: Interval, times: Float64Array, weights: Float64Array): number {
  let chance = 0;
  times.forEach((time, k) => {
    const within = leadAtMost(lead, time - mark.from) - leadAtMost(lead, time - mark.to);
    chance += (weights[k] as number) * within;
  });
  return Math.max(chance, Number.MIN_VALUE);
}
