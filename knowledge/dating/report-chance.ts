// The chance that a variant is reported of a car, given what share of the works' output it then was. Between the two
// stand swapped parts, misread parts, and members who report one variant more readily than the other.
import type { Circumstance } from "./change-priors.ts";

/** What is known of how a sighting came about. */
export interface ReportGround {
  /** Whether the new variant was reported. */
  readonly isNew: boolean;
  /** Chance that the part is not the one the car was built with, by its provenance grade; 0 stays 0. */
  readonly swap: number;
  /** Chance that the variant was misread. */
  readonly misread: number;
  /** Whether the car was looked for (a survey, a wanted car) whatever it would show. */
  readonly isSought: boolean;
}

/** How much the replacements on sale are of the new and of the old type; any scale, not both 0. */
export interface Replacements {
  readonly old: number;
  readonly new: number;
}

/** Weights for one sighting under one circumstance; "same" is the reported variant. */
export interface ReportTerms {
  readonly swapped: number;
  readonly misread: number;
  /** Share of the reported variant among the replacements. */
  readonly replacement: number;
  /** P(read as the variant) = base + slope · its share at the works. */
  readonly sameBase: number;
  readonly otherBase: number;
  readonly slope: number;
  readonly sameReporting: number;
  readonly otherReporting: number;
}

/** σ = γs ÷ (1 − s + γs): the chance of a swap when its odds are multiplied by γ. */
export function swapChance(swap: number, swapOdds: number): number {
  return swap === 0 ? 0 : (swapOdds * swap) / (1 - swap + swapOdds * swap);
}

/** The weights of a sighting under a circumstance. */
export function reportTerms(
  ground: ReportGround,
  circumstance: Circumstance,
  replacements: Replacements,
): ReportTerms {
  const [leanNew, leanOld] = circumstance.replacementLean;
  const newWeight = leanNew * replacements.new;
  const oldWeight = leanOld * replacements.old;
  const both = newWeight + oldWeight;
  const replacement = (ground.isNew ? newWeight : oldWeight) / both;
  const otherReplacement = (ground.isNew ? oldWeight : newWeight) / both;
  const [readyNew, readyOld] = ground.isSought ? [1, 1] : circumstance.reporting;
  const { misread } = ground;
  const swapped = swapChance(ground.swap, circumstance.swapOdds);
  const readRight = 1 - 2 * misread;
  return {
    swapped,
    misread,
    replacement,
    sameBase: misread + readRight * swapped * replacement,
    otherBase: misread + readRight * swapped * otherReplacement,
    slope: readRight * (1 - swapped),
    sameReporting: ground.isNew ? readyNew : readyOld,
    otherReporting: ground.isNew ? readyOld : readyNew,
  };
}

/**
 * P(the report) = κ·p ÷ (κ·p + κ′·p′), p = m + (1 − 2m)(σq + (1 − σ)F), primes for the other variant. `share`, `rest`:
 * shares of the reported and the other variant in the works' output, summing to one.
 */
export function reportChance(terms: ReportTerms, share: number, rest: number): number {
  const same = terms.sameBase + terms.slope * share;
  if (terms.sameReporting === terms.otherReporting) return same;
  const other = terms.otherBase + terms.slope * rest;
  return (terms.sameReporting * same) / (terms.sameReporting * same + terms.otherReporting * other);
}

/** What a reported variant leaves open about one car. */
export interface ReportVerdict {
  /** Chance that the works fitted another variant than was reported. */
  readonly notAsBuilt: number;
  /** Chance that the part is not the one the car was built with, of whatever variant. */
  readonly swapped: number;
}

/**
 * The verdict for a known share of the reported variant:
 * not as built = 1 − F[(1−σ)(1−m) + σ·r_s] ÷ [(1−σ)·r_n + σ·r_s], swapped = σ·r_s ÷ [the same], r_s = m + (1−2m)q,
 * r_n = m + (1−2m)F. Who reports does not enter: it is the same for a swapped and an untouched part.
 */
export function reportVerdict(terms: ReportTerms, share: number): ReportVerdict {
  const { misread, swapped } = terms;
  const readSwapped = misread + (1 - 2 * misread) * terms.replacement;
  const readUntouched = misread + (1 - 2 * misread) * share;
  const read = (1 - swapped) * readUntouched + swapped * readSwapped;
  if (!(read > 0)) return { notAsBuilt: 1 - share, swapped };
  const asBuilt = (share * ((1 - swapped) * (1 - misread) + swapped * readSwapped)) / read;
  return { notAsBuilt: 1 - asBuilt, swapped: (swapped * readSwapped) / read };
}
