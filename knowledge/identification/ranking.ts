/** The variants in order of probability, with "not in the handbook" among them. */
import { notInHandbook } from "../evidence/goal.ts";
import type { PartKind } from "../handbook/schema.ts";
import { heaviestFirst } from "./classes.ts";
import type { HypothesisSpace } from "./hypothesis-space.ts";
import type { RankedVariant } from "./identification.ts";

/** P(variant) over all its ways, one per variant in the handbook's order, then P(not in the handbook). */
export function overVariantsOf(
  space: HypothesisSpace,
  part: PartKind,
  probabilities: Float64Array,
): Float64Array {
  const sums = new Float64Array(part.variants.length + 1);
  probabilities.forEach((probability, h) => {
    const index = h < space.inHandbook ? (space.variants[h] as number) : part.variants.length;
    sums[index] = (sums[index] as number) + probability;
  });
  return sums;
}

/** The ranking, greatest first; equal ones in the handbook's order. Variants of probability 0 are left out. */
export function rankingOf(part: PartKind, probabilities: Float64Array): readonly RankedVariant[] {
  return heaviestFirst(probabilities)
    .filter((index) => (probabilities[index] as number) > 0)
    .map((index) => ({
      variant: part.variants[index]?.id ?? notInHandbook,
      name: part.variants[index]?.name ?? "not in the handbook",
      // A sum of many shares may pass one by a rounding.
      probability: Math.min(1, probabilities[index] as number),
    }));
}
