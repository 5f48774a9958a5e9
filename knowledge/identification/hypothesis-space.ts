/**
 * What may be true of a part: a variant of the handbook and the way it came to this car, or something that is not
 * in the handbook: an undocumented kin of a known variant, or a kin of nothing.
 */
import type { PartKind, Variant } from "../handbook/schema.ts";

/** Ways a part came to a car, then the two kinds of part that are not in the handbook. Order is the order of sums. */
export const ways = [
  "works",
  "service",
  "used",
  "reproduction",
  "other-maker",
  "kin",
  "kin-of-nothing",
] as const;
export type Way = (typeof ways)[number];

export interface HypothesisSpace {
  readonly size: number;
  readonly ids: readonly string[];
  readonly ways: readonly Way[];
  /** Index of the variant; −1 for the kin of nothing. */
  readonly variants: Int32Array;
  /** Hypotheses before this index are in the handbook. */
  readonly inHandbook: number;
}

/** Every variant with every way open to its origin; which of them a given car allows is the prior's business. */
export function hypothesisSpace(part: PartKind): HypothesisSpace {
  const ids: string[] = [];
  const waysOf: Way[] = [];
  const variants: number[] = [];
  const add = (way: Way, variant: number, id: string): void => {
    ids.push(id);
    waysOf.push(way);
    variants.push(variant);
  };
  let inHandbook = 0;
  for (const way of ways) {
    if (way === "kin") inHandbook = ids.length;
    part.variants.forEach((variant, index) => {
      if (way === "kin-of-nothing" || !isOpen(way, variant)) return;
      add(way, index, way === "kin" ? `kin-of:${variant.id}` : `${variant.id}:${way}`);
    });
  }
  add("kin-of-nothing", -1, "kin-of-nothing");
  return { size: ids.length, ids, ways: waysOf, variants: Int32Array.from(variants), inHandbook };
}

function isOpen(way: Way, variant: Variant): boolean {
  switch (way) {
    case "works":
    case "used":
      return variant.origin === "production";
    case "service":
      return variant.origin === "service" || (variant.origin === "production" && variant.sold.length > 0);
    case "reproduction":
    case "other-maker":
      return variant.origin === way;
    case "kin":
      return true;
    case "kin-of-nothing":
      return false;
  }
}
