/** What a community has seen of a part kind: cars as marks on its timeline, and when one kind gave way to the next. */
import { formatInterval, type Interval } from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import type { SeenOnCar } from "../../conversation/saying/fitted-chart.ts";
import { variantName } from "../../conversation/saying/say-variant.ts";
import { changesSeen } from "../observations/learnt-knowledge.ts";
import { datedSightings, type ObservationsView } from "../observations/observations-view.ts";
import * as phrases from "../phrases/if-accepted.ts";

export interface SeenOfPart {
  readonly sightings: readonly SeenOnCar[];
  readonly changes: readonly {
    readonly from: string;
    readonly to: string;
    readonly interval: Interval;
    readonly words: string;
  }[];
}

/** From here on a car is marked: more likely not as built than as built. */
const suspect = 0.5;
/** More would be a black stripe. */
const mostMarks = 400;

export function seenOfPart(knowledge: Knowledge, view: ObservationsView, partId: string): SeenOfPart {
  const part = findPart(knowledge, partId);
  const tally = view.parts.get(`${knowledge.handbook.cover.id} ${partId}`);
  if (part === undefined || tally === undefined) return { sightings: [], changes: [] };
  const seen = changesSeen(knowledge, part, tally);
  const judged = seen.flatMap(({ change }) => change.sightings);
  const suspects = new Set(judged.filter(({ notAsBuilt }) => notAsBuilt > suspect).map(({ id }) => id));
  const dated = datedSightings(tally);
  return {
    sightings: dated.slice(0, mostMarks).map(({ id, variant, built, grade }) => ({
      variant,
      built,
      grade,
      isSuspect: suspects.has(id),
      words: phrases.sightingWords(variantName(part, variant), formatInterval(built), grade),
    })),
    changes: seen.map(({ succession, change }) => ({
      from: succession.old,
      to: succession.new,
      interval: change.interval,
      words: phrases.changed(
        variantName(part, succession.old),
        variantName(part, succession.new),
        formatInterval(change.interval),
        change.sightings.length,
      ),
    })),
  };
}
