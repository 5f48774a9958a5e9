/** Features by their ids; an id that this edition of the handbook does not know is passed over, for a case outlives editions. */
import { type Feature, featureById, type PartKind } from "../../knowledge/index.ts";

/** In the order given. */
export function featuresNamed(part: PartKind, ids: readonly string[]): readonly Feature[] {
  return ids.flatMap((id) => featureById(part, id) ?? []);
}
