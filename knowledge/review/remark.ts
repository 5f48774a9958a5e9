/**
 * What a reader who knows the trade would write in the margin of a handbook: where, what, and how to mend it. The loader
 * finds what cannot be read; a review finds what can be read and still does not hold, or could be better.
 */
import type { Place, Problem, ProblemCode } from "../handbook/problem.ts";
import type { Path, YamlReading } from "../handbook/yaml-reading.ts";

/**
 * A fault stops the handbook from being served; a doubt is most likely an error of fact or writing; a wish would make the
 * answers better.
 */
export const severities = ["fault", "doubt", "wish"] as const;
export type Severity = (typeof severities)[number];

/** Every remark of a review by code, with what it is about in a few words: for editors that list rules. */
export const reviewRules = {
  "variants-alike": "variants that no question can tell apart",
  "claim-unsourced": "claims without a source",
  "source-unused": "a source that nothing rests on",
  "source-too-early": "a source older than what it is named for",
  "source-after-edition": "a source dated after this edition",
  "claim-word-and-count": "a word and a count that contradict each other",
  "claim-short": "shares that leave most parts unaccounted for",
  "claim-against-condition": "a claim about a feature that its own condition rules out",
  "claim-overruled": "a claim that a cause replaces",
  "claim-unit": "a measure that looks like another unit",
  "claim-always-and-more": "a state that is always there beside another",
  "period-gap": "a time for which no variant is known",
  "period-overlap": "two variants on all of the same cars for long",
  "period-twice": "two periods of one variant that overlap",
  "period-beyond-model": "a period that goes beyond the years of its model or trim",
  "sale-before-production": "a part that was sold before it was made",
  "built-outside-production": "a serial built outside of production",
  "production-year-missing": "a year of production without a figure",
  "production-year-strange": "a yearly figure for a year in which nothing was made, or far above all others",
  "feature-unasked": "a feature that no variant claims anything about",
  "feature-same-everywhere": "a feature that is the same on all variants",
  "feature-uncheckable": "a feature that nobody can check",
  "feature-never-applies": "a feature whose condition no variant meets",
  "feature-dear": "a tell that needs much work where a photograph would do",
  "state-unseen": "a state that no variant has",
  "state-muddled": "two states that are told apart no better than by a coin",
  "variant-silent": "a variant about which nothing is claimed",
  "words-collide": "one word for two things",
  "words-near": "two words one typing slip apart",
  "word-twice": "a word listed twice",
  "misbelief-uncorrected": "a misbelief without a real correction",
  "mounting-unused": "a mounting that no part and no car has",
  "mounting-fits-nothing": "a mounting that fits nothing",
  "check-harmful": "a check that hurts the part or the person",
  "check-uncautioned": "a dangerous check without its caution",
  "check-unclear": "a check too short to follow",
} as const;
export type ReviewCode = keyof typeof reviewRules;

export interface Remark {
  readonly severity: Severity;
  readonly code: ReviewCode | ProblemCode;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** What is wrong, lower case, no full stop. */
  readonly message: string;
  /** What to do about it, lower case, no full stop. */
  readonly mend: string;
}

/** Where the remarks on one file are written down. */
export interface Margin {
  readonly file: string;
  readonly remarks: Remark[];
  readonly placeOf: (path: Path, at?: "key" | "value") => Place;
}

export interface Note {
  readonly severity: Severity;
  readonly code: ReviewCode;
  readonly path: Path;
  /** Default: the value. */
  readonly at?: "key" | "value";
  readonly message: string;
  readonly mend: string;
}

export function marginOf(reading: YamlReading): Margin {
  return { file: reading.file, remarks: [], placeOf: reading.placeOf };
}

export function note(margin: Margin, { path, at, severity, code, message, mend }: Note): void {
  margin.remarks.push({
    severity,
    code,
    file: margin.file,
    ...margin.placeOf(path, at),
    message,
    mend,
  });
}

/** What the loader found, with the weight it has here. */
export function asRemark(problem: Problem, severity: Severity): Remark {
  return { severity, ...problem };
}
