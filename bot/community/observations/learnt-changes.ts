/** When one kind gave way to the next, as the accepted sightings of a part say it together with the handbook: what answers are sharpened by. */
import {
  type ChangeSeen,
  type CountedChanges,
  changesSeen,
  countedChanges,
  countSightings,
  type Handbook,
  type LearntChange,
  learntChanges as learntOf,
  type PartKind,
} from "../../../knowledge/index.ts";
import type { PartTally } from "./observations-view.ts";

/** Fewer sightings than these leave the handbook's own periods as they are. */
const leastSightings = 5;

/** The sightings of a tally, counted; what is worked out of them stays with the tally, so that one more costs little. */
export function countedChangesOf(handbook: Handbook, part: PartKind, tally: PartTally): CountedChanges {
  const counted = tally.counted.get(part) ?? countedChanges(handbook, part);
  tally.counted.set(part, counted);
  countSightings(counted, tally.alike);
  return counted;
}

/** Every succession of the part kind, with what handbook and sightings say of it. */
export function changesSeenIn(handbook: Handbook, part: PartKind, tally: PartTally): readonly ChangeSeen[] {
  return changesSeen(countedChangesOf(handbook, part, tally), 0);
}

/** The changes of which enough was seen: of all cars, and of trims and markets that took them up at another time. */
export function learntChanges(handbook: Handbook, part: PartKind, tally: PartTally): readonly LearntChange[] {
  return learntOf(countedChangesOf(handbook, part, tally), leastSightings);
}
