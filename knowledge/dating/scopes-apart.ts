// When a scope of trim and market together is worth having: only where neither trim nor market alone tells the cars apart.
import type { LikelihoodMemory } from "./border-likelihood.ts";
import {
  changeoverByTrimAndMarket,
  type ScopedChangeover,
  type ScopedSighting,
  type WiderScope,
} from "./changeover-by-trim-and-market.ts";
import type { ChangeoverSetting } from "./dated-change.ts";

/** With two groups neither is known to be the one away from the common date; that their intervals do not meet needs no such choice. */
export function areApart(groups: readonly Pick<ScopedChangeover, "interval">[]): boolean {
  if (groups.length < 2) return false;
  const latestStart = Math.max(...groups.map(({ interval }) => interval.from));
  const earliestEnd = Math.min(...groups.map(({ interval }) => interval.to));
  return latestStart > earliestEnd;
}

/** The groups of those wider scopes within which they are apart, when both were seen enough to say so. */
export function apartWithin(
  setting: ChangeoverSetting,
  sightings: readonly ScopedSighting[],
  least: number,
  wider: WiderScope,
  memory?: LikelihoodMemory,
): readonly ScopedChangeover[] {
  const narrower = wider === "market" ? "trim" : "market";
  const counts = new Map<string, Map<string, number>>();
  for (const { count = 1, ...one } of sightings) {
    const own = counts.get(one[wider]) ?? new Map<string, number>();
    counts.set(one[wider], own.set(one[narrower], (own.get(one[narrower]) ?? 0) + count));
  }
  const enough = new Set(
    [...counts].flatMap(([name, own]) =>
      [...own.values()].filter((seen) => seen >= least).length < 2 ? [] : [name],
    ),
  );
  if (enough.size === 0) return [];
  const asked = sightings.filter((one) => enough.has(one[wider]));
  const star = changeoverByTrimAndMarket(setting, asked, least, wider, memory);
  if (!star.ok) return [];
  return [...enough].flatMap((name) => {
    const own = star.value.filter((group) => group[wider] === name);
    return areApart(own) ? own : [];
  });
}
