// How often each observer is right, from cars that several people saw: nobody is taken for the truth, the true kinds and the error
// rates are estimated together. A. P. Dawid & A. M. Skene, "Maximum likelihood estimation of observer error-rates using the EM
// algorithm", Applied Statistics 28, 1979.

import { groupedBy } from "./grouped-by.ts";

/** What one observer said of one item; the same observer may have looked several times. */
export interface Label {
  readonly item: string;
  readonly observer: string;
  /** Index of the class, from 0. */
  readonly label: number;
}

export interface ObserverReliability {
  /** Share of each true class. */
  readonly shares: readonly number[];
  /** P(says the column | is the row), by observer. */
  readonly errorRates: ReadonlyMap<string, readonly (readonly number[])[]>;
  /** P(class | everything said of the item), by item. */
  readonly truths: ReadonlyMap<string, readonly number[]>;
  readonly logLikelihood: number;
}

export interface ReliabilityPrior {
  /** Sightings as good as already made by everybody in each row: right ones, and wrong ones in every other column. 0: none. */
  readonly right: number;
  readonly wrong: number;
}

const none: ReliabilityPrior = { right: 0, wrong: 0 };
const mostRounds = 5000;
const settled = 1e-12;

/** EM from the shares of the votes until the log likelihood stands still. O(rounds · labels · classes). */
export function observerReliability(
  labels: readonly Label[],
  classes: number,
  prior: ReliabilityPrior = none,
): ObserverReliability {
  const byItem = groupedBy(labels, ({ item }) => item);
  let truths = new Map([...byItem].map(([item, said]) => [item, voteShares(said, classes)]));
  let last = Number.NEGATIVE_INFINITY;
  for (let round = 0; ; round += 1) {
    const shares = classShares(truths, classes);
    const errorRates = ratesOf(labels, truths, classes, prior);
    const next = truthsOf(byItem, shares, errorRates);
    truths = next.truths;
    if (Math.abs(next.logLikelihood - last) < settled || round === mostRounds) {
      return { shares, errorRates, truths, logLikelihood: next.logLikelihood };
    }
    last = next.logLikelihood;
  }
}

function voteShares(said: readonly Label[], classes: number): readonly number[] {
  return Array.from(
    { length: classes },
    (_, one) => said.filter(({ label }) => label === one).length / said.length,
  );
}

function classShares(truths: ReadonlyMap<string, readonly number[]>, classes: number): readonly number[] {
  return Array.from({ length: classes }, (_, one) => {
    let sum = 0;
    for (const chances of truths.values()) sum += chances[one] ?? 0;
    return sum / truths.size;
  });
}

function ratesOf(
  labels: readonly Label[],
  truths: ReadonlyMap<string, readonly number[]>,
  classes: number,
  { right, wrong }: ReliabilityPrior,
): ReadonlyMap<string, readonly (readonly number[])[]> {
  const byObserver = groupedBy(labels, ({ observer }) => observer);
  const rowOf = (said: readonly Label[], row: number): readonly number[] => {
    const counts = Array.from({ length: classes }, (_, column) => (column === row ? right : wrong));
    for (const { item, label } of said) counts[label] = (counts[label] ?? 0) + (truths.get(item)?.[row] ?? 0);
    const total = counts.reduce((sum, count) => sum + count, 0);
    return counts.map((count) => (total === 0 ? 1 / classes : count / total));
  };
  return new Map(
    [...byObserver].map(([observer, said]) => [
      observer,
      Array.from({ length: classes }, (_, row) => rowOf(said, row)),
    ]),
  );
}

function truthsOf(
  byItem: ReadonlyMap<string, readonly Label[]>,
  shares: readonly number[],
  errorRates: ReadonlyMap<string, readonly (readonly number[])[]>,
): { readonly truths: Map<string, readonly number[]>; readonly logLikelihood: number } {
  let logLikelihood = 0;
  const truths = new Map<string, readonly number[]>();
  for (const [item, said] of byItem) {
    const weights = shares.map((share, row) =>
      said.reduce(
        (chance, { observer, label }) => chance * (errorRates.get(observer)?.[row]?.[label] ?? 0),
        share,
      ),
    );
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    logLikelihood += Math.log(total);
    truths.set(
      item,
      weights.map((weight) => weight / total),
    );
  }
  return { truths, logLikelihood };
}
