// What the question policy is told: what may be true, what may be asked, and what an error costs.
// Nothing of the trade is left in it, so that any table of the same shape can be searched and checked.

export interface Hypothesis {
  readonly id: string;
  /** Present belief, ≥ 0; need not sum to one over the table. */
  readonly prior: number;
  /** What the verdict would say if this hypothesis were true. */
  readonly class: string;
}

export interface Question {
  readonly id: string;
  /** Effort, > 0; 1 = a look from outside. */
  readonly cost: number;
  readonly answers: readonly string[];
  /** Row-major, hypotheses × answers: P(answer | hypothesis), given that something was told. */
  readonly likelihood: Float64Array;
  /** P("cannot tell"), the same for all hypotheses, in [0, 1). */
  readonly cannotTell: number;
}

export interface QuestionTable {
  readonly hypotheses: readonly Hypothesis[];
  /** Questions still open; those already asked are not in the table. */
  readonly questions: readonly Question[];
  /** Price of a wrong verdict, in looks from outside. */
  readonly lambda: number;
}
