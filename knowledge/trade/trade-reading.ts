// The shape every decoder of this room answers in: what a mark can mean, why, and on whose word. A decoder
// returns all readings that fit; it drops one only for a reason that can be stated.
import type { Interval } from "../calendar/interval.ts";
import type { Range, Sourced } from "./tables/sourced.ts";

/** One meaning of a mark, a measurement or a word. `basis` cites a source or says that there is none. */
export interface TradeReading {
  readonly reading: string;
  readonly why: string;
  readonly basis: string;
}

/** What kind of thing carries the mark, so that a tyre's date is never taken for a spoiler's. */
export type TradeSubject = "tyre" | "wheel" | "glass" | "lamp" | "belt" | "mirror" | "car" | "part";

/**
 * What a mark lets a case conclude. A material speaks of what the part is made of (`symbols`: ISO 1043, the
 * most exact first; density in g/cm³). Before `date.from` of a not-before the mark cannot exist; its `date`
 * is the day, month or year in which rule or authority began; it is not firm when earlier marks are
 * merely rare (material marks, SAE years). Weights of a date mark's readings sum to one.
 */
export type TradeEvidence =
  | {
      readonly kind: "material";
      readonly about: TradeSubject;
      readonly symbols: readonly string[];
      readonly densityGramsPerCubicCentimetre?: Range;
      readonly words: string;
    }
  | {
      readonly kind: "not-before";
      readonly about: TradeSubject;
      readonly date: Interval;
      readonly isFirm: boolean;
      readonly words: string;
    }
  | {
      readonly kind: "date-mark";
      readonly about: TradeSubject;
      readonly readings: readonly { readonly interval: Interval; readonly weight: number }[];
      readonly words: string;
    };

/**
 * An answer from general trade knowledge. `cautions` are identifiers of the table of cautions. `isAsked`: the message
 * asks in words, so that what it holds is no fact of a part in hand; a bare or plainly stated mark is not asked.
 */
export interface TradeAnswer {
  readonly topic: string;
  readonly isAsked: boolean;
  readonly readings: readonly TradeReading[];
  readonly cannotSay: string;
  readonly lookNext: string;
  readonly cautions: readonly string[];
  readonly evidence: readonly TradeEvidence[];
}

/** The basis of what no source confirms. */
export const COMMON_PRACTICE = "common practice, no source";

/** How a row of a table is cited: its source when it is a standard, otherwise plainly as common practice. */
export function basisOf(row: Sourced): string {
  if (row.basis === "standard") return row.source;
  return row.source.startsWith("common practice") ? COMMON_PRACTICE : `common practice (${row.source})`;
}
