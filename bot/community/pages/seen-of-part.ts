/** What a community has seen of a part kind: cars as marks on its timeline, and when one kind gave way to the next. */
import { formatInterval, type Interval, successionsOf } from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import { blocksInWordsOf, wordedFor } from "../../conversation/named-thing.ts";
import type { SeenOnCar } from "../../conversation/saying/fitted-chart.ts";
import { variantName } from "../../conversation/saying/say-variant.ts";
import type { Block } from "../../reply.ts";
import { isSuspect, judgedChange } from "../dating/changeover-findings.ts";
import { pageOfChanges } from "../dating/page-of-changes.ts";
import {
  datedSightings,
  emptyTally,
  type ObservationsView,
  type PartTally,
  tallyKey,
} from "../observations/observations-view.ts";
import * as phrases from "../phrases/seen-of-part.ts";

export interface SeenOfPart {
  readonly sightings: readonly SeenOnCar[];
  /** A drawing each with its table. */
  readonly timelines: readonly Block[];
  /** Which cars would narrow the changes most; also where nothing has been seen yet. */
  readonly wanted: readonly Block[];
  readonly changes: readonly {
    readonly from: string;
    readonly to: string;
    readonly interval: Interval;
    readonly words: string;
  }[];
}

/** Fewer cars than these say too little of a change to be shown beside the handbook's periods. */
const leastCars = 5;
/** More would be a black stripe. */
const mostMarks = 400;
const nothingSeen: PartTally = emptyTally();

/** Of a part kind that no handbook has. */
export const nothingOfPart: SeenOfPart = { sightings: [], timelines: [], wanted: [], changes: [] };

export function seenOfPart(knowledge: Knowledge, view: ObservationsView, partId: string): SeenOfPart {
  const part = findPart(knowledge, partId);
  const { handbook } = knowledge;
  const tally = view.parts.get(tallyKey({ handbook: handbook.cover.id, part: partId })) ?? nothingSeen;
  if (part === undefined) return nothingOfPart;
  const seen = successionsOf(handbook, part)
    .flatMap((succession) => judgedChange(succession, tally) ?? [])
    .filter((change) => change.seen >= leastCars);
  const suspects = new Set(seen.flatMap(({ judged }) => judged.filter(isSuspect).map(({ id }) => id)));
  const dated = datedSightings(tally);
  const { timelines, wanted } = pageOfChanges(handbook, part, tally);
  return {
    timelines: blocksInWordsOf(handbook, timelines),
    wanted: blocksInWordsOf(handbook, wanted),
    sightings: dated.slice(0, mostMarks).map(({ id, variant, built, grade }) => ({
      variant,
      built,
      grade,
      isSuspect: suspects.has(id),
      words: wordedFor(
        handbook,
        phrases.sightingWords(variantName(part, variant), formatInterval(built), grade),
      ),
    })),
    changes: seen.map(({ succession, change, seen: cars }) => ({
      from: succession.old,
      to: succession.new,
      interval: change.interval,
      words: wordedFor(
        handbook,
        phrases.changed(
          variantName(part, succession.old),
          variantName(part, succession.new),
          formatInterval(change.interval),
          cars,
        ),
      ),
    })),
  };
}
