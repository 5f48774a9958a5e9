/** A change over time for whoever draws it: the old sightings on one side of a ruler, the new ones on the other, what is known of the date hatched. */
import type { Interval, ProvenanceGrade } from "../../../knowledge/index.ts";

export interface ChangeoverChart {
  readonly title: string;
  /** Everything that is in the drawing, in sentences. */
  readonly description: string;
  /** Above the drawing, a phrase each. */
  readonly heading: readonly string[];
  /** Beside each side. */
  readonly old: string;
  readonly new: string;
  /** What the ruler shows, in months. */
  readonly span: Interval;
  readonly marks: readonly ChangeoverMark[];
  /** 90 % interval of the change. */
  readonly band?: Interval;
  /** Most likely month of the change. */
  readonly month?: Interval;
  /** Only what is in the drawing. */
  readonly legend: readonly { readonly sign: ChangeoverSign; readonly words: string }[];
}

export type ChangeoverSign = ProvenanceGrade | "suspect" | "range" | "band" | "month";

export interface ChangeoverMark {
  readonly side: "old" | "new";
  readonly built: Interval;
  readonly grade: ProvenanceGrade;
  readonly isSuspect: boolean;
  /** For whoever rests on the mark. */
  readonly words: string;
}
