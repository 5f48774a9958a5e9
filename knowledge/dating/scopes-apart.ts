// When a scope of trim and market together is worth having: only where groups within a wider scope are apart. They scatter about that
// scope's own date, so that a group of few cars borrows from the others of it.
import { byCodeUnit } from "../handbook/problem.ts";
import { changeoverOfGroups, type MarketChangeover } from "./changeover-by-market.ts";
import type { WiderScope } from "./changeover-by-trim-and-market.ts";
import { type CountedPair, type CountedSuccession, keptOf, type ScopedShares } from "./counted-succession.ts";
import type { ChangeoverSetting } from "./dated-change.ts";
import { keptLikelihoods } from "./kept-reports.ts";

/** With two groups neither is known to be the one away from the common date; that their intervals do not meet needs no such choice. */
export function areApart(groups: readonly Pick<MarketChangeover, "interval">[]): boolean {
  if (groups.length < 2) return false;
  const latestStart = Math.max(...groups.map(({ interval }) => interval.from));
  const earliestEnd = Math.min(...groups.map(({ interval }) => interval.to));
  return latestStart > earliestEnd;
}

interface Within {
  /** With what the handbook states of the wider scope. */
  readonly setting: ChangeoverSetting;
  readonly wider: WiderScope;
  readonly least: number;
  /** The one trim or market looked into; all when left out. */
  readonly only?: string;
}

/** Trims within each market (or markets within each trim) that are apart, of those of which at least `least` cars were seen. */
export function apartWithin(counted: CountedSuccession, within: Within): readonly ScopedShares[] {
  const { wider, only } = within;
  const seen = [...counted.pairs.values()];
  const ids = [...new Set(seen.map((pair) => pair[wider]))].sort(byCodeUnit);
  return ids
    .filter((id) => only === undefined || id === only)
    .flatMap((id) =>
      apartInOne(
        counted,
        within,
        seen.filter((pair) => pair[wider] === id),
      ),
    );
}

function apartInOne(
  counted: CountedSuccession,
  { setting, wider, least, only }: Within,
  pairs: readonly CountedPair[],
): readonly ScopedShares[] {
  if (pairs.filter(({ reports }) => reports.seen >= least).length < 2) return [];
  const narrower = wider === "market" ? "trim" : "market";
  const sorted = [...pairs].sort((one, other) => byCodeUnit(one[narrower], other[narrower]));
  const name = `${wider}: ${least}: ${only ?? ""}: ${sorted.map(({ trim, market }) => `${trim} ${market}`).join(" ")}`;
  return keptOf(
    counted.scoped,
    name,
    sorted.map(({ reports }) => reports),
    () => {
      const groups = sorted.map((pair) => ({
        market: pair[narrower],
        sightings: pair.reports.seen,
        likelihoods: keptLikelihoods(pair.reports, counted.ground),
      }));
      const found = changeoverOfGroups(setting, counted.ground, groups)
        .map((one, at) => ({ ...one, pair: sorted[at] as CountedPair }))
        .filter(({ sightings }) => sightings >= least);
      if (!areApart(found)) return [];
      return found.map(({ pair: { trim, market }, asBuilt }) => ({
        scope: { trim, market },
        shares: asBuilt,
      }));
    },
  );
}
