// One change as trims and markets took it up, for the as-built mix: only where the handbook's periods or the sightings
// say that they differ, because a change divided without need is known less well.
import type { Handbook, PartKind } from "../handbook/schema.ts";
import type { ChangeScope } from "../identification/learnt-change.ts";
import type { LikelihoodMemory } from "./border-likelihood.ts";
import { briefChangeover } from "./brief-changeover.ts";
import type { AsBuiltShares } from "./changeover.ts";
import { changeoverByMarket } from "./changeover-by-market.ts";
import type { ScopedChangeover, ScopedSighting } from "./changeover-by-trim-and-market.ts";
import { apartWithin, areApart } from "./scopes-apart.ts";
import { type Sighting, sightingsOfChange } from "./sighting.ts";
import { statedChange } from "./stated-change.ts";
import type { Succession } from "./successions.ts";

export interface ScopedShares {
  readonly scope: ChangeScope;
  /** Without a cell where too little was seen of such cars: what the handbook has of them stands. */
  readonly shares: AsBuiltShares;
}

export interface ChangeOfScopes {
  readonly handbook: Handbook;
  readonly part: PartKind;
  readonly succession: Succession;
  readonly sightings: readonly Sighting[];
  /** Fewer sightings than these of a trim or market say nothing of it by itself. */
  readonly least: number;
}

const fields = [
  { by: "market", list: "markets" },
  { by: "trim", list: "trims" },
] as const;

type Field = (typeof fields)[number];

/**
 * The change market by market, then trim by trim, then by trim and market together; none of them where nothing tells the cars
 * apart. The narrowest scope that holds a car decides, so cars of a trim and market of which too little was seen go by one of the two.
 */
export function changesByScope(change: ChangeOfScopes, memory?: LikelihoodMemory): readonly ScopedShares[] {
  return [
    ...fields.flatMap((field) => {
      const stated = statedApart(change, field);
      return stated.length > 0
        ? byHandbook(change, field, stated, memory)
        : bySightings(change, field, memory);
    }),
    ...byBoth(change, memory),
  ];
}

interface StatedOf {
  readonly id: string;
  readonly stated: ReturnType<typeof statedChange>;
}

/** What the handbook states of each trim or market that was fitted with both; none where it states the same of all. */
function statedApart({ handbook, part, succession }: ChangeOfScopes, { list }: Field): readonly StatedOf[] {
  const periodsOf = (variant: string, id: string) =>
    (part.variants.find((one) => one.id === variant)?.fitted ?? []).filter(
      (period) => period[list].length === 0 || period[list].includes(id),
    );
  const stated = handbook.cars[list].flatMap(({ id }): readonly StatedOf[] => {
    const [old, fresh] = [periodsOf(succession.old, id), periodsOf(succession.new, id)];
    return old.length === 0 || fresh.length === 0 ? [] : [{ id, stated: statedChange(old, fresh) }];
  });
  return new Set(stated.map((one) => JSON.stringify(one.stated))).size < 2 ? [] : stated;
}

/** Each by itself, with what the handbook states of it. */
function byHandbook(
  { succession, sightings, least }: ChangeOfScopes,
  { by }: Field,
  groups: readonly StatedOf[],
  memory: LikelihoodMemory | undefined,
): readonly ScopedShares[] {
  return groups.flatMap(({ id, stated }): readonly ScopedShares[] => {
    const own = sightings.filter((sighting) => sighting[by] === id);
    const reports = sightingsOfChange(own, [succession.old], [succession.new]);
    const { stated: _, ...setting } = succession.setting;
    const { window } = setting;
    if (reports.reduce((sum, { count = 1 }) => sum + count, 0) < least)
      return [{ scope: { [by]: id }, shares: { from: window.from, cell: 1, new: new Float64Array(0) } }];
    const found = briefChangeover(
      { ...setting, ...(stated === undefined ? {} : { stated }) },
      reports,
      memory,
    );
    return found.ok ? [{ scope: { [by]: id }, shares: found.value.asBuilt }] : [];
  });
}

/** All together about one common date, when two of which enough was seen have 90 % intervals that do not meet. */
function bySightings(
  { handbook, succession, sightings, least }: ChangeOfScopes,
  { by, list }: Field,
  memory: LikelihoodMemory | undefined,
): readonly ScopedShares[] {
  const groupOf = new Map(sightings.map((sighting) => [sighting.id, sighting[by]]));
  const reports = sightingsOfChange(sightings, [succession.old], [succession.new]).flatMap((report) => {
    const market = groupOf.get(report.id);
    return market === undefined ? [] : [{ ...report, market }];
  });
  const counts = new Map<string, number>();
  for (const { market, count = 1 } of reports) counts.set(market, (counts.get(market) ?? 0) + count);
  const known = [...counts.values()].filter((count) => count >= least);
  if (known.length < 2) return [];
  const named = handbook.cars[list].map(({ id }) => id);
  const found = changeoverByMarket(succession.setting, reports, named, memory);
  if (!found.ok) return [];
  if (!areApart(found.value.filter((one) => one.sightings >= least))) return [];
  return found.value.map(({ market, asBuilt }) => ({ scope: { [by]: market }, shares: asBuilt }));
}

/**
 * Trims within markets. Where the handbook states one of the two apart, the other may differ within it; else both have to matter:
 * trims within a market and markets within a trim.
 */
function byBoth(change: ChangeOfScopes, memory: LikelihoodMemory | undefined): readonly ScopedShares[] {
  const { succession, least } = change;
  const sightings = scopedSightings(change);
  const stated = fields.map((field) => ({ field, groups: statedApart(change, field) }));
  const [known, other] = stated.filter(({ groups }) => groups.length > 0);
  if (other !== undefined) return [];
  if (known !== undefined) {
    const { by } = known.field;
    return known.groups.flatMap(({ id, stated: said }) => {
      const { stated: _, ...rest } = succession.setting;
      const setting = { ...rest, ...(said === undefined ? {} : { stated: said }) };
      const own = sightings.filter((one) => one[by] === id);
      return apartWithin(setting, own, least, by, memory).map(sharesOfScope);
    });
  }
  const found = apartWithin(succession.setting, sightings, least, "market", memory);
  if (found.length === 0) return [];
  const acrossMarkets = apartWithin(succession.setting, sightings, least, "trim", memory);
  return acrossMarkets.length === 0 ? [] : found.map(sharesOfScope);
}

function sharesOfScope({ trim, market, asBuilt }: ScopedChangeover): ScopedShares {
  return { scope: { trim, market }, shares: asBuilt };
}

function scopedSightings({ succession, sightings }: ChangeOfScopes): readonly ScopedSighting[] {
  const carOf = new Map(sightings.map((sighting) => [sighting.id, sighting]));
  return sightingsOfChange(sightings, [succession.old], [succession.new]).flatMap((report) => {
    const { trim, market } = carOf.get(report.id) ?? {};
    return trim === undefined || market === undefined ? [] : [{ ...report, trim, market }];
  });
}
