/** What is known of the car a part sits on, or belongs to. Everything is optional: an unknown is averaged over, never guessed. */
import type { Interval } from "../calendar/interval.ts";

/** How well the car's history is known: the chance that its parts are still those it was built with. */
export const provenanceGrades = [
  "documented-from-new",
  "one-owner",
  "history-unknown",
  "known-replaced",
] as const;
export type ProvenanceGrade = (typeof provenanceGrades)[number];

export interface CarDescription {
  readonly model?: string;
  readonly trim?: string;
  readonly market?: string;
  readonly built?: Interval;
  /** Model year as said ("1981 model"); read into `built` with its own slack by the language room. */
  readonly modelYear?: number;
  readonly grade?: ProvenanceGrade;
  /** The part is loose: bought, found, offered. It has no car, hence no build date and no trim. */
  readonly isLoosePart?: boolean;
  /** Chassis number with its last figures masked. Never the clear number. */
  readonly maskedSerial?: string;
  /** Keyed digest of the whole number: tells one car from another, and gives the number away to nobody. */
  readonly serialDigest?: string;
}
