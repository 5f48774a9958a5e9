/** What a part kind's page shows beside the handbook: the community's pins and sightings. Filled from the bot's read views. */
import type { Block } from "../../bot/index.ts";
import type { Interval, PartKind, ProvenanceGrade } from "../../knowledge/index.ts";
import type { CommunityShown } from "./open-community.ts";

export interface PartPage {
  readonly handbook: string;
  readonly part: PartKind;
  /** Whose pins and sightings these are. */
  readonly shown: CommunityShown;
  readonly timelines: readonly Block[];
  readonly wanted: readonly Block[];
  readonly pins: readonly Extract<Block, { kind: "pinned" }>[];
  readonly sightings: readonly {
    readonly variant: string;
    readonly built: Interval;
    readonly grade: ProvenanceGrade;
    readonly isSuspect: boolean;
    readonly words: string;
  }[];
  readonly changes: readonly {
    readonly from: string;
    readonly to: string;
    readonly interval: Interval;
    readonly words: string;
  }[];
  /** Ids of the variants to be laid side by side; empty: all. */
  readonly chosen: readonly string[];
}
