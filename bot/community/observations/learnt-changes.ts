/** When one kind gave way to the next, as the accepted sightings of a part say it together with the handbook: what answers are sharpened by. */
import {
  type BriefChangeover,
  briefChangeover,
  changesByScope,
  type Handbook,
  type LearntChange,
  type LikelihoodMemory,
  type PartKind,
  type Succession,
  sightingsOfChange,
  successionsOf,
} from "../../../knowledge/index.ts";
import { type PartTally, sightingsAlike } from "./observations-view.ts";

/** Fewer sightings than these leave the handbook's own periods as they are. */
const leastSightings = 5;

export interface ChangeSeen {
  readonly succession: Succession;
  /** How many dated cars of either kind were seen. */
  readonly seen: number;
  readonly change: BriefChangeover;
}

/** What kinds of sightings say of a succession is worked out once and remembered; it depends on the succession alone. */
const memories = new WeakMap<PartKind, Map<string, LikelihoodMemory>>();

export function memoryOf(part: PartKind, { old, new: fresh }: Succession): LikelihoodMemory {
  const ofPart = memories.get(part) ?? new Map<string, LikelihoodMemory>();
  memories.set(part, ofPart);
  const known = ofPart.get(`${old} ${fresh}`) ?? new Map();
  ofPart.set(`${old} ${fresh}`, known);
  return known;
}

/** Every succession of the part kind of which at least so many cars were seen, with what handbook and sightings say of it. */
export function changesSeen(
  handbook: Handbook,
  part: PartKind,
  tally: PartTally,
  least: number,
): readonly ChangeSeen[] {
  const sightings = sightingsAlike(tally);
  return successionsOf(handbook, part).flatMap((succession): readonly ChangeSeen[] => {
    const reports = sightingsOfChange(sightings, [succession.old], [succession.new]);
    const seen = reports.reduce((sum, { count = 1 }) => sum + count, 0);
    if (seen < least) return [];
    const found = briefChangeover(succession.setting, reports, memoryOf(part, succession));
    return found.ok ? [{ succession, seen, change: found.value }] : [];
  });
}

/** The changes of which enough was seen: of all cars, and of trims and markets that took them up at another time. */
export function learntChanges(handbook: Handbook, part: PartKind, tally: PartTally): readonly LearntChange[] {
  const sightings = sightingsAlike(tally);
  return changesSeen(handbook, part, tally, leastSightings).flatMap(({ succession, change }) => {
    const of = { part: part.id, old: succession.old, new: succession.new };
    const memory = memoryOf(part, succession);
    const scoped = changesByScope({ handbook, part, succession, sightings, least: leastSightings }, memory);
    return [{ ...of, shares: change.asBuilt }, ...scoped.map((one) => ({ ...of, ...one }))];
  });
}
