/** Which cars would tell more of a change: worked out when first asked for, and again after something of the part was accepted. */
import {
  briefChangeover,
  type CarWanted,
  carsWanted,
  EVEN_REPLACEMENTS,
  type Handbook,
  type PartKind,
  type Succession,
  sightingsOfChange,
  successionsOf,
} from "../../../knowledge/index.ts";
import { memoryOf } from "../observations/learnt-changes.ts";
import { type PartTally, sightingsAlike } from "../observations/observations-view.ts";

export interface WantedOfChange {
  readonly succession: Succession;
  /** The most telling first. */
  readonly wanted: readonly CarWanted[];
}

const mostWanted = 5;
/** A month that tells less than this is not asked for. */
const leastBits = 0.02;

const kept = new WeakMap<
  PartKind,
  WeakMap<PartTally, { readonly version: number; readonly wanted: readonly WantedOfChange[] }>
>();

export function wantedOf(handbook: Handbook, part: PartKind, tally: PartTally): readonly WantedOfChange[] {
  const ofPart = kept.get(part) ?? new WeakMap();
  kept.set(part, ofPart);
  const known = ofPart.get(tally);
  if (known?.version === tally.version) return known.wanted;
  const wanted = worked(handbook, part, tally);
  ofPart.set(tally, { version: tally.version, wanted });
  return wanted;
}

function worked(handbook: Handbook, part: PartKind, tally: PartTally): readonly WantedOfChange[] {
  const sightings = sightingsAlike(tally);
  return successionsOf(handbook, part).flatMap((succession): readonly WantedOfChange[] => {
    const reports = sightingsOfChange(sightings, [succession.old], [succession.new]);
    const found = briefChangeover(succession.setting, reports, memoryOf(part, succession));
    if (!found.ok) return [];
    const wanted = carsWanted(found.value.posterior, succession.setting.replacements ?? EVEN_REPLACEMENTS)
      .filter(({ informationBits }) => informationBits >= leastBits)
      .slice(0, mostWanted);
    return [{ succession, wanted }];
  });
}
