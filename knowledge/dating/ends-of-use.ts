// The last old and the first new sighting: what people quote, and no interval (in simulated works the stretch between
// the two holds the change in about half of all cases). So each comes with its chance of being as built.
import { midpoint } from "../calendar/interval.ts";
import { byCodeUnit } from "../handbook/problem.ts";
import type { ChangeoverSighting } from "./report-groups.ts";

/** A sighting at the end of a variant's use. */
export interface EndSighting {
  readonly id: string;
  /** Middle of its build interval, in months. */
  readonly at: number;
  /** Chance that the works fitted what was reported. */
  readonly asBuilt: number;
}

export interface EndsOfUse {
  /** Latest sighting of the old variant and earliest of the new one, whatever they are worth. */
  readonly lastOld?: EndSighting;
  readonly firstNew?: EndSighting;
  /** The same without the suspects: those that are more likely than not not as built. */
  readonly lastOldUnsuspected?: EndSighting;
  readonly firstNewUnsuspected?: EndSighting;
}

const SUSPECT = 0.5;

/** The ends of use; `notAsBuilt`: chance per sighting id, sightings without one lie outside the window and are passed over. */
export function endsOfUse(
  sightings: readonly ChangeoverSighting[],
  notAsBuilt: ReadonlyMap<string, number>,
): EndsOfUse {
  const judged = sightings.flatMap((sighting) => {
    const doubt = notAsBuilt.get(sighting.id);
    if (doubt === undefined) return [];
    return [{ isNew: sighting.isNew, id: sighting.id, at: midpoint(sighting.built), asBuilt: 1 - doubt }];
  });
  const endOf = (isNew: boolean, trustedOnly: boolean): EndSighting | undefined => {
    const direction = isNew ? 1 : -1;
    const first = judged
      .filter((sighting) => sighting.isNew === isNew && (!trustedOnly || sighting.asBuilt >= 1 - SUSPECT))
      .sort((one, other) => direction * (one.at - other.at) || byCodeUnit(one.id, other.id))[0];
    return first && { id: first.id, at: first.at, asBuilt: first.asBuilt };
  };
  const ends = {
    lastOld: endOf(false, false),
    firstNew: endOf(true, false),
    lastOldUnsuspected: endOf(false, true),
    firstNewUnsuspected: endOf(true, true),
  };
  return Object.fromEntries(Object.entries(ends).filter(([, end]) => end !== undefined));
}
