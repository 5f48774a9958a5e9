// Hypotheses put side by side class by class, in a table's own order within a class. The order of first
// appearance decides, never a name, so that renaming classes or hypotheses changes nothing.

import type { Hypothesis } from "./question-table.ts";

export interface BeliefsByClass {
  /** Index into the table's hypotheses, class by class. */
  readonly order: Int32Array;
  /** Belief in the hypothesis at each place of `order`; the sum over all hypotheses, kept or not, is one. */
  readonly weights: Float64Array;
  /** End of each class in `order`. */
  readonly classEnds: Int32Array;
}

/**
 * The hypotheses whose normalised prior is at least `floor` and above 0, grouped by class.
 * All priors zero, or no hypothesis: nothing is kept. Cost: linear.
 */
export function beliefsByClass(hypotheses: readonly Hypothesis[], floor: number): BeliefsByClass {
  let total = 0;
  for (const { prior } of hypotheses) total += prior;
  const classNumbers = new Map<string, number>();
  const classOf = new Int32Array(hypotheses.length).fill(-1);
  const counts: number[] = [];
  hypotheses.forEach(({ prior, class: name }, index) => {
    if (!(prior > 0) || prior < floor * total) return;
    const number = classNumbers.get(name) ?? classNumbers.size;
    classNumbers.set(name, number);
    classOf[index] = number;
    counts[number] = (counts[number] ?? 0) + 1;
  });
  const classEnds = new Int32Array(counts.length);
  let kept = 0;
  const places = counts.map((count, number) => {
    const start = kept;
    kept += count;
    classEnds[number] = kept;
    return start;
  });
  const order = new Int32Array(kept);
  const weights = new Float64Array(kept);
  hypotheses.forEach(({ prior }, index) => {
    const number = classOf[index] as number;
    if (number < 0) return;
    const place = places[number] as number;
    places[number] = place + 1;
    order[place] = index;
    weights[place] = prior / total;
  });
  return { order, weights, classEnds };
}
