// One change as trims and markets took it up, for the as-built mix: only where the handbook's periods or the sightings
// say that they differ, because a change divided without need is known less well.
import { byCodeUnit } from "../handbook/problem.ts";
import { asBuiltShares } from "./as-built-shares.ts";
import { changeoverOfGroups } from "./changeover-by-market.ts";
import {
  type CountedSuccession,
  keptOf,
  type ScopedShares,
  type ScopeField,
  scopeFields,
  scopeOf,
} from "./counted-succession.ts";
import { marginFrom } from "./dated-change.ts";
import { keptLikelihoods } from "./kept-reports.ts";
import { apartWithin, areApart } from "./scopes-apart.ts";
import { statedChange } from "./stated-change.ts";

/**
 * The change market by market, then trim by trim, then by trim and market together; none of them where nothing tells the cars
 * apart. Fewer sightings than `least` of a scope say nothing of it by itself. The narrowest scope that holds a car decides, so cars of
 * a trim and market of which too little was seen go by one of the two.
 */
export function changesByScope(counted: CountedSuccession, least: number): readonly ScopedShares[] {
  return [
    ...scopeFields.flatMap((field) => {
      const stated = statedApart(counted, field);
      return stated.length > 0
        ? stated.flatMap((one) => byHandbook(counted, field, one, least))
        : bySightings(counted, field, least);
    }),
    ...byBoth(counted, least),
  ];
}

interface StatedOf {
  readonly id: string;
  readonly stated: ReturnType<typeof statedChange>;
}

/** What the handbook states of each trim or market that was fitted with both; none where it states the same of all. */
function statedApart(
  { handbook, part, succession }: CountedSuccession,
  { list }: ScopeField,
): readonly StatedOf[] {
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

/** One by itself, with what the handbook states of it. */
function byHandbook(
  counted: CountedSuccession,
  { by }: ScopeField,
  { id, stated }: StatedOf,
  least: number,
): readonly ScopedShares[] {
  const own = scopeOf(counted, by, id);
  const { grid } = counted.ground;
  const scope = { [by]: id };
  if (own.seen < least) {
    const { from } = counted.succession.setting.window;
    return [{ scope, shares: { from, cell: 1, new: new Float64Array(0) } }];
  }
  return keptOf(counted.scoped, `${by} ${id}`, [own], () => {
    const likelihoods = keptLikelihoods(own, counted.ground);
    const posterior = marginFrom(counted.succession.setting, stated, counted.ground, likelihoods);
    return [{ scope, shares: { from: grid.from, cell: grid.cell, new: asBuiltShares(posterior) } }];
  });
}

/** All together about one common date, when two of which enough was seen have 90 % intervals that do not meet. */
function bySightings(
  counted: CountedSuccession,
  { by, list }: ScopeField,
  least: number,
): readonly ScopedShares[] {
  const seen = [...counted.scopes[by]].filter(([, reports]) => reports.seen > 0);
  if (seen.filter(([, reports]) => reports.seen >= least).length < 2) return [];
  const named = counted.handbook.cars[list].map(({ id }) => id);
  const ids = [...new Set([...named, ...seen.map(([id]) => id)])].sort(byCodeUnit);
  const groups = ids.map((market) => ({ market, reports: scopeOf(counted, by, market) }));
  return keptOf(
    counted.scoped,
    `${by}: ${least}: ${ids.join(" ")}`,
    groups.map(({ reports }) => reports),
    () => {
      const found = changeoverOfGroups(
        counted.succession.setting,
        counted.ground,
        groups.map(({ market, reports }) => ({
          market,
          sightings: reports.seen,
          likelihoods: keptLikelihoods(reports, counted.ground),
        })),
      );
      if (!areApart(found.filter((one) => one.sightings >= least))) return [];
      return found.map(({ market, asBuilt }) => ({ scope: { [by]: market }, shares: asBuilt }));
    },
  );
}

/**
 * Trims within markets. Where the handbook states one of the two apart, the other may differ within it; else both have to matter:
 * trims within a market and markets within a trim.
 */
function byBoth(counted: CountedSuccession, least: number): readonly ScopedShares[] {
  const { setting } = counted.succession;
  const stated = scopeFields.map((field) => ({ by: field.by, groups: statedApart(counted, field) }));
  const [known, other] = stated.filter(({ groups }) => groups.length > 0);
  if (other !== undefined) return [];
  if (known === undefined) {
    const found = apartWithin(counted, { setting, wider: "market", least });
    return found.length === 0 || apartWithin(counted, { setting, wider: "trim", least }).length === 0
      ? []
      : found;
  }
  const { stated: _, ...rest } = setting;
  return known.groups.flatMap(({ id, stated: said }) => {
    const ofOne = { ...rest, ...(said === undefined ? {} : { stated: said }) };
    return apartWithin(counted, { setting: ofOne, wider: known.by, least, only: id });
  });
}
