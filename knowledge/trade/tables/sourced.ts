// What every row of a table says about itself: where it comes from, and whether that is a standard read in a
// source or common practice told from memory. Nothing from memory may be shown as a standard.

export type Basis = "standard" | "common practice";

export interface Sourced {
  readonly source: string;
  readonly basis: Basis;
}

/** A stretch of a measured quantity, both ends included. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

export const FROM_MEMORY = {
  source: "common practice, from memory, no source",
  basis: "common practice",
} as const satisfies Sourced;
