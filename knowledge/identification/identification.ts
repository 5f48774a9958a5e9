/**
 * What the identification room answers: a ranked, explained and honest verdict. These are the values that the
 * conversation renders; how they are computed stands in the files beside this one.
 */
import type { CarDescription } from "../evidence/car-description.ts";
import type { Goal } from "../evidence/goal.ts";
import type { Report } from "../evidence/report.ts";
import type { Handbook } from "../handbook/schema.ts";

/** Accepted sightings that sharpen the handbook's frequencies: `weight` parts of this variant showed this state. */
export interface ObservedState {
  readonly part: string;
  readonly variant: string;
  readonly feature: string;
  readonly state: string;
  readonly weight: number;
}

/** A car, and what was said of its part. */
export interface Told {
  readonly car: CarDescription;
  readonly reports: readonly Report[];
}

export interface IdentificationInput {
  readonly handbook: Handbook;
  readonly part: string;
  readonly goal: Goal;
  readonly car: CarDescription;
  readonly reports: readonly Report[];
  readonly observed?: readonly ObservedState[];
}

/** A class of the goal: a variant id for "which-variant" and "what-should-it-have", else one of the goal's class names. */
export interface ClassProbability {
  readonly class: string;
  readonly probability: number;
}

export interface RankedVariant {
  /** Variant id, or "not-in-the-handbook". */
  readonly variant: string;
  readonly name: string;
  readonly probability: number;
}

/** One fact's part in the duel between the first class and its rival, in decimal bans: positive speaks for the first. */
export interface Weight {
  readonly feature: string;
  readonly bans: number;
}

export interface Duel {
  readonly first: string;
  readonly rival: string;
  /** What the car alone (dates, trims, replaced shares) says before any fact. */
  readonly priorBans: number;
  readonly weights: readonly Weight[];
}

export interface Contradiction {
  readonly feature: string;
  /** The fact that it does not go with: without that one it would be believed far sooner. Null when no single one is. */
  readonly against: string | null;
  /** `against` is a state that no kind in the handbook shows together with this one. */
  readonly isNeverTogether: boolean;
  readonly misreadProbability: number;
  readonly conflictBans: number;
}

/** A reading that needs a word back: a number whose unit was not said, or that sits far from every variant. */
export interface DoubtfulReading {
  readonly feature: string;
  readonly reason: "unit" | "outlier";
  /** For "unit": the unit probably meant, and its probability. */
  readonly meantUnit?: string;
  readonly probability: number;
}

export interface BrokenDateLink {
  readonly earlier: string;
  /** A date feature, or "built" for the car's build date. */
  readonly later: string;
  /** "hardly-time": it may have been made before, but there was no time to get it there. */
  readonly problem: "too-long-before" | "hardly-time" | "after";
}

export interface Identification {
  readonly ranking: readonly RankedVariant[];
  readonly classes: readonly ClassProbability[];
  /** Null while the first class stands below one half. */
  readonly verdict: ClassProbability | null;
  /** "right-for-car" only: P(the kind it was built with) = as built + right kind, replaced. */
  readonly kindItWasBuiltWith?: number;
  readonly entropyBits: number;
  /** How far the facts moved the prior; below 0.25 bit the answer rests on the car alone. */
  readonly movedBits: number;
  readonly duel: Duel | null;
  readonly contradictions: readonly Contradiction[];
  readonly doubtful: readonly DoubtfulReading[];
  readonly brokenLinks: readonly BrokenDateLink[];
  /** Facts whose removal would change the first class. */
  readonly hingesOn: readonly string[];
  /** For the first two or three variants left: the features not yet reported that tell them apart best. */
  readonly toldApartBy: readonly { readonly variant: string; readonly features: readonly string[] }[];
  /** Facts that fit the best variant worst, when "not in the handbook" stands at 0.2 or more. */
  readonly misfits: readonly string[];
}
