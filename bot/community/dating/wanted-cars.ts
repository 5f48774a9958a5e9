/** Which cars would tell more of a change: worked out when first asked for, and again after something of the part was accepted. */
import {
  type CarWanted,
  carsWanted,
  EVEN_REPLACEMENTS,
  type Handbook,
  type PartKind,
  posteriorSeen,
  type Succession,
} from "../../../knowledge/index.ts";
import { countedChangesOf } from "../observations/learnt-changes.ts";
import type { PartTally } from "../observations/observations-view.ts";

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
  return countedChangesOf(handbook, part, tally).successions.map((counted): WantedOfChange => {
    const { succession } = counted;
    const replacements = succession.setting.replacements ?? EVEN_REPLACEMENTS;
    const wanted = carsWanted(posteriorSeen(counted), replacements)
      .filter(({ informationBits }) => informationBits >= leastBits)
      .slice(0, mostWanted);
    return { succession, wanted };
  });
}
