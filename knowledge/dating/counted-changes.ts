// What sightings of a part kind say of its successions, brought up to date sighting by sighting. The same sightings give the same
// bytes, whatever was counted before them and in whatever order they come.
import type { Handbook, PartKind } from "../handbook/schema.ts";
import type { LearntChange } from "../identification/learnt-change.ts";
import { asBuiltShares } from "./as-built-shares.ts";
import type { ChangeoverPosterior } from "./changeover-posterior.ts";
import { changesByScope } from "./changes-by-scope.ts";
import {
  type CountedSuccession,
  countedSuccession,
  countSighting,
  type DatedShares,
  keptOf,
} from "./counted-succession.ts";
import { marginFrom, posteriorFrom, whenChanged } from "./dated-change.ts";
import { keptLikelihoods } from "./kept-reports.ts";
import type { Sighting } from "./sighting.ts";
import { type Succession, successionsOf } from "./successions.ts";

export interface CountedChanges {
  readonly part: PartKind;
  readonly successions: readonly CountedSuccession[];
  /** What is counted, by id. */
  readonly sightings: Map<string, Sighting>;
}

/** The successions of a part kind, with nothing counted. */
export function countedChanges(handbook: Handbook, part: PartKind): CountedChanges {
  const successions = successionsOf(handbook, part).flatMap(
    (succession) => countedSuccession(handbook, part, succession) ?? [],
  );
  return { part, successions, sightings: new Map() };
}

/** From now on these sightings and no others are counted. `wanted`: by id. O(their number), and little of those that are counted as they are. */
export function countSightings(
  { successions, sightings }: CountedChanges,
  wanted: ReadonlyMap<string, Sighting>,
): void {
  const count = (sighting: Sighting, sign: 1 | -1) => {
    for (const succession of successions) countSighting(succession, sighting, sign);
  };
  for (const [id, sighting] of wanted) {
    const known = sightings.get(id);
    if (known === sighting) continue;
    if (known !== undefined) count(known, -1);
    sightings.set(id, sighting);
    count(sighting, 1);
  }
  if (sightings.size === wanted.size) return;
  for (const [id, sighting] of sightings) {
    if (wanted.has(id)) continue;
    sightings.delete(id);
    count(sighting, -1);
  }
}

export interface ChangeSeen {
  readonly succession: Succession;
  /** How many dated cars of either kind were seen. */
  readonly seen: number;
  /** The same date and shares as `changeover` gives, to the last digit. */
  readonly change: DatedShares;
}

/** Every succession of which at least so many cars were seen, with what handbook and sightings say of it. */
export function changesSeen({ successions }: CountedChanges, least: number): readonly ChangeSeen[] {
  return successions.filter(({ all }) => all.seen >= least).map(changeSeen);
}

function changeSeen(counted: CountedSuccession): ChangeSeen {
  const { succession, all, ground } = counted;
  const change = keptOf(counted.dates, "all", [all], () => {
    const { setting } = succession;
    const margin = marginFrom(setting, setting.stated, ground, keptLikelihoods(all, ground));
    const { from, cell } = ground.grid;
    return { ...whenChanged(margin), asBuilt: { from, cell, new: asBuiltShares(margin) } };
  });
  return { succession, seen: all.seen, change };
}

/** The posterior of a succession, worked out each time: it is large. */
export function posteriorSeen({
  succession: { setting },
  all,
  ground,
}: CountedSuccession): ChangeoverPosterior {
  return posteriorFrom(setting, setting.stated, ground, keptLikelihoods(all, ground));
}

/** The changes of which at least so many cars were seen: of all cars, and of trims and markets that took them up at another time. */
export function learntChanges({ part, successions }: CountedChanges, least: number): readonly LearntChange[] {
  return successions
    .filter(({ all }) => all.seen >= least)
    .flatMap((counted) => {
      const { succession, change } = changeSeen(counted);
      const of = { part: part.id, old: succession.old, new: succession.new };
      const scoped = changesByScope(counted, least);
      return [{ ...of, shares: change.asBuilt }, ...scoped.map((one) => ({ ...of, ...one }))];
    });
}
