/**
 * A report is one thing that one person said about one feature. It is a claim to be weighed, never a truth:
 * the identification room passes it through a mistake channel.
 */
import type { Interval } from "../calendar/interval.ts";

/** State id for "the part has no such feature at all". */
export const notThere = "not-there";

/** How firmly something was said: the chance that the speaker looked rather than guessed. */
export const certainties = { firm: 1, thinks: 0.75, maybe: 0.5 } as const;

export type LengthUnit = "mm" | "cm" | "in";
export type MassUnit = "g" | "kg" | "lb" | "oz";
export type MeasurementUnit = LengthUnit | MassUnit;
export type Instrument = "tape" | "rule" | "caliper" | "kitchen-scale" | "guess";

export type ReportValue =
  | { readonly kind: "state"; readonly state: string }
  /** Evidence that fits several states, such as a density; weights in [0, 1], states not named weigh 0. */
  | { readonly kind: "weighed-states"; readonly weights: Readonly<Record<string, number>> }
  | {
      readonly kind: "measurement";
      /** The number as said, in `unit`. */
      readonly value: number;
      /** Half the width of what the words leave open: "17 inches" is 0.5, "17 3/8" is 1/16. */
      readonly halfWidth: number;
      /** Null when no unit was said. */
      readonly unit: MeasurementUnit | null;
      readonly instrument?: Instrument;
      /** True once the person has confirmed the unit we proposed. */
      readonly unitConfirmed?: boolean;
    }
  /** All readings of one date mark that fit, with weights that need not sum to one. */
  | {
      readonly kind: "date";
      readonly readings: readonly { readonly interval: Interval; readonly weight: number }[];
    }
  | { readonly kind: "cannot-tell" };

export interface Report {
  readonly feature: string;
  /** Who said it, an id within the case. */
  readonly by: string;
  /** In [0, 1]; see `certainties`. Hearsay has 0 and is not evidence. */
  readonly certainty: number;
  /** As said, masked and bounded. */
  readonly words: string;
  readonly value: ReportValue;
}
