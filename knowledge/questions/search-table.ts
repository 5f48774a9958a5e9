// The table as the search wants it: flat arrays, hypotheses of one class side by side, likelihoods answer
// by answer, questions in order of price. Built once a decision, so the inner loops run over plain numbers.

export interface SearchQuestion {
  readonly id: string;
  readonly cost: number;
  /** cost ÷ (1 − cannotTell): what an informative answer costs on average. */
  readonly effectiveCost: number;
  readonly cannotTell: number;
  readonly answerCount: number;
  /** Answer-major: likelihood[answer × hypotheses + hypothesis]; a row of zeros follows an odd number of answers. */
  readonly likelihood: Float64Array;
}

export interface SearchTable {
  /** Belief in each hypothesis, summing to one when nothing was left out. */
  readonly weights: Float64Array;
  /** Hypotheses of class c stand from classEnds[c − 1] (0 for the first class) up to classEnds[c]. */
  readonly classEnds: Int32Array;
  /** Each hypothesis its own group: 1, 2, 3 … */
  readonly singleEnds: Int32Array;
  /** A row of ones, the likelihood of what is told whatever is true, and a row of zeros. */
  readonly certain: Float64Array;
  /** Cheapest first (effective cost, cost, id): the order that breaks ties between equal scores. */
  readonly questions: readonly SearchQuestion[];
  readonly lambda: number;
}

/** Belief left when no more is asked and the heaviest class is named: total − heaviest. */
export function unresolvedBelief(weights: Float64Array, classEnds: Int32Array): number {
  let hypothesis = 0;
  let total = 0;
  let heaviest = 0;
  for (let c = 0; c < classEnds.length; c += 1) {
    const end = classEnds[c] as number;
    let mass = 0;
    for (; hypothesis < end; hypothesis += 1) mass += weights[hypothesis] as number;
    total += mass;
    if (mass > heaviest) heaviest = mass;
  }
  return total - heaviest;
}
