/**
 * What one message says, as read against a handbook. A reading is a value: it names the words each finding rests on,
 * keeps apart what is evidence and what is hearsay or a question, and lists what was not understood.
 */
import type { Interval } from "../calendar/interval.ts";
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { Goal } from "../evidence/goal.ts";
import type { ReportValue } from "../evidence/report.ts";

/** A finding about a feature of a part. `part` is null when the words fit a feature of several part kinds or of the case in hand. */
export interface FeatureFinding {
  readonly part: string | null;
  readonly feature: string;
  readonly value: ReportValue;
  readonly certainty: number;
  /** The words of the message it rests on. */
  readonly words: string;
}

/** What was said of the car itself; each with its words. */
export type CarFinding =
  | { readonly about: "model" | "trim" | "market"; readonly id: string; readonly words: string }
  | { readonly about: "built"; readonly interval: Interval; readonly words: string }
  | {
      readonly about: "model-year";
      readonly year: number;
      readonly interval: Interval;
      readonly words: string;
    }
  | { readonly about: "grade"; readonly grade: ProvenanceGrade; readonly words: string }
  | { readonly about: "loose-part"; readonly words: string }
  | {
      readonly about: "serial";
      readonly masked: string;
      /** Build date by the handbook's anchors, an interval and never a point. */
      readonly interval?: Interval;
      readonly digest?: string;
      readonly words: string;
    };

/** A variant somebody named: as a claim by somebody else (hearsay), their own guess, or in a question. */
export interface VariantMention {
  readonly part: string;
  readonly variant: string;
  readonly as: "hearsay" | "own-guess" | "question";
  readonly words: string;
}

/** What the speaker wants the bot to do; a message may carry several, in the order said. */
export type Intent =
  | { readonly kind: "goal"; readonly goal: Goal; readonly words: string }
  | { readonly kind: "why" }
  | { readonly kind: "how-to-check"; readonly feature?: string }
  | { readonly kind: "what-do-you-know" }
  | { readonly kind: "cannot-tell"; readonly feature?: string }
  | { readonly kind: "undo" }
  | { readonly kind: "start-over" }
  | { readonly kind: "withdraw"; readonly feature?: string }
  | { readonly kind: "compare"; readonly variants: readonly string[]; readonly part: string | null }
  | { readonly kind: "list-variants"; readonly part: string | null }
  | { readonly kind: "what-fits" }
  | { readonly kind: "photographs" }
  | { readonly kind: "where-from-here" }
  | { readonly kind: "sources" }
  | { readonly kind: "new-case" }
  | { readonly kind: "list-cases" }
  | { readonly kind: "switch-case"; readonly number: number }
  | { readonly kind: "help" }
  | { readonly kind: "price" }
  | { readonly kind: "yes" }
  | { readonly kind: "no" }
  | { readonly kind: "small-talk" };

/** A misbelief of the handbook that the message states. */
export interface MisbeliefFinding {
  readonly part: string;
  readonly misbelief: string;
  readonly words: string;
}

export interface MessageReading {
  /** Part kinds named, in the order said. */
  readonly parts: readonly { readonly part: string; readonly words: string }[];
  readonly findings: readonly FeatureFinding[];
  readonly car: readonly CarFinding[];
  readonly variants: readonly VariantMention[];
  readonly intents: readonly Intent[];
  readonly misbeliefs: readonly MisbeliefFinding[];
  /** Words left aside on purpose, and why. */
  readonly leftAside: readonly {
    readonly words: string;
    readonly because: "hearsay" | "question" | "another-car" | "several-readings" | "not-yet";
  }[];
  /** States that may have been meant of the part in hand, too doubtful to be taken: to be asked back. */
  readonly inDoubt: readonly {
    readonly part: string;
    readonly feature: string;
    readonly state: string;
    readonly words: string;
  }[];
  /** Words close to known ones but not close enough to be taken: "did you mean"; sought only where nothing was understood beside them. */
  readonly nearMisses: readonly {
    readonly words: string;
    readonly meant: string;
    readonly kind: "part" | "feature" | "state" | "variant";
  }[];
  /** Present when the message was longer than is read: only `shownText` was. */
  readonly isCut?: true;
  /** True when nothing in the message was understood at all. */
  readonly isOpaque: boolean;
  /** The message as it may be shown and kept: serials masked, control characters gone, bounded. */
  readonly shownText: string;
}

/** What the reader may use beside the message: the case in hand and the question that was just asked. */
export interface ReadingContext {
  readonly part?: string;
  readonly askedFeature?: string;
  /** The car's build date as told before, for a month that is said without its year. */
  readonly built?: Interval;
  /** Today, for "last month" and to refuse dates that have not happened. */
  readonly today: Interval;
  /** Makes of a chassis number what tells the car from others without giving the number away. */
  readonly serialDigest?: (serial: string) => string;
}
