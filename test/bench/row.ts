// One row of the bench: figures measured in this run, some of them held to a budget of ours. A figure without a budget
// stands beside one that has it, so that the reader sees what it was measured against.

export type Budget = { readonly atMost: number } | { readonly atLeast: number };

export interface Figure {
  readonly what: string;
  readonly value: number;
  /** "ms", "%", "x" for a ratio, "" for a plain number. */
  readonly unit: string;
  readonly budget?: Budget;
  /** What the figure was drawn from or compared with, in a few words. */
  readonly remark?: string;
}

export interface Row {
  /** What `--only` takes. */
  readonly name: string;
  readonly about: string;
  /** The numbers that chance starts from; the same numbers give the same draws. */
  readonly starts: readonly number[];
  readonly measure: () => readonly Figure[] | Promise<readonly Figure[]>;
}

/** Undefined for a figure without a budget. A figure that is no number misses. */
export function holds({ value, budget }: Figure): boolean | undefined {
  if (budget === undefined) return undefined;
  return "atMost" in budget ? value <= budget.atMost : value >= budget.atLeast;
}
