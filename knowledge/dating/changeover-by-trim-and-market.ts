// One change in each trim of each market. Within a market the trims scatter about that market's own date, so that a trim of few
// cars borrows from the others of its market and from no other market; one of too few cars is left to the wider scope.
import { byCodeUnit } from "../handbook/problem.ts";
import { changeoverByMarket, type MarketChangeover } from "./changeover-by-market.ts";
import type { ChangeoverSetting } from "./dated-change.ts";
import type { ChangeoverSighting } from "./report-groups.ts";
import { found, type Refusal, type Result } from "./result.ts";

/** A sighting whose car's trim and market are both known. */
export interface ScopedSighting extends ChangeoverSighting {
  readonly trim: string;
  readonly market: string;
}

/** A trim in a market; `onCommonDate` is that of its wider scope. */
export interface ScopedChangeover extends MarketChangeover {
  readonly trim: string;
}

/** The scope that the others of it are borrowed from. */
export type WiderScope = "market" | "trim";

/**
 * The change of every trim in every market of which at least `least` cars were seen, by the wider scope and then the narrower, each
 * sorted by name; none of the others. Refused as `changeoverByMarket` is. O(wider scopes) times its cost.
 */
export function changeoverByTrimAndMarket(
  setting: ChangeoverSetting,
  sightings: readonly ScopedSighting[],
  least: number,
  wider: WiderScope = "market",
): Result<readonly ScopedChangeover[], Refusal> {
  const narrower = wider === "market" ? "trim" : "market";
  const groups: ScopedChangeover[] = [];
  for (const name of [...new Set(sightings.map((one) => one[wider]))].sort(byCodeUnit)) {
    const own = sightings.filter((one) => one[wider] === name);
    const star = changeoverByMarket(
      setting,
      own.map((one) => ({ ...one, market: one[narrower] })),
    );
    if (!star.ok) return star;
    groups.push(
      ...star.value
        .filter((group) => group.sightings >= least)
        .map((group) => {
          const both =
            wider === "market" ? { market: name, trim: group.market } : { market: group.market, trim: name };
          return { ...group, ...both };
        }),
    );
  }
  return found(groups);
}
