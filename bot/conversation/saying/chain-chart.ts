/** Kinds that followed each other, for whoever draws them: a lane a kind with the cars seen, and between two lanes what is known of the change. */
import type { Interval } from "../../../knowledge/index.ts";
import type { ChangeoverChart, ChangeoverMark } from "./changeover-chart.ts";

export interface ChainChart
  extends Pick<ChangeoverChart, "title" | "description" | "heading" | "span" | "legend"> {
  /** In the order in which they followed each other. */
  readonly lanes: readonly {
    readonly name: string;
    readonly marks: readonly Omit<ChangeoverMark, "side">[];
  }[];
  /** From each lane to the next: one fewer than lanes. */
  readonly changes: readonly {
    /** Holds the change with 90 % at least. */
    readonly interval: Interval;
    readonly words: string;
  }[];
}
