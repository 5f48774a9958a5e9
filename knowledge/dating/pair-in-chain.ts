// One changeover of a chain taken by itself, between the middles of its neighbours. The chain assumes that variants are
// reported evenly; the pair does not. Of the two intervals people are shown the wider.
import type { Interval } from "../calendar/interval.ts";
import { midpoint } from "../calendar/interval.ts";
import type { ChainSighting } from "./chain-reports.ts";
import { type Changeover, changeover } from "./changeover.ts";
import type { ChainSetting, ChangeoverChain } from "./changeover-chain.ts";
import type { ChangeoverSetting } from "./dated-change.ts";
import type { ChangeoverSighting } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface PairOfChain {
  readonly setting: ChangeoverSetting;
  readonly sightings: readonly ChangeoverSighting[];
}

/**
 * What is asked of variant `change` and the next by themselves: their own sightings within the neighbours' medians. Refused
 * for a change the chain does not have.
 */
export function pairOfChain(
  setting: ChainSetting,
  sightings: readonly ChainSighting[],
  chain: ChangeoverChain,
  change: number,
): Result<PairOfChain, Refusal> {
  if (!chain.changeovers[change]) return refused("out-of-range", "the chain has no such changeover");
  const window: Interval = {
    from: Math.max(setting.window.from, chain.changeovers[change - 1]?.median ?? -Infinity),
    to: Math.min(setting.window.to, chain.changeovers[change + 1]?.median ?? Infinity),
  };
  const between = sightings.filter(
    ({ variant, built }) =>
      (variant === change || variant === change + 1) &&
      midpoint(built) >= window.from &&
      midpoint(built) < window.to,
  );
  const stated = setting.stated?.[change];
  return found({
    setting: {
      window,
      replacements: {
        old: setting.replacements[change] as number,
        new: setting.replacements[change + 1] as number,
      },
      ...(setting.production ? { production: setting.production } : {}),
      ...(stated ? { stated } : {}),
    },
    sightings: between.map((sighting) => ({
      ...sighting,
      isNew: sighting.variant === change + 1,
      isSought: false,
    })),
  });
}

/** The changeover of that pair. Refused also when the neighbours leave no time. */
export function pairInChain(
  setting: ChainSetting,
  sightings: readonly ChainSighting[],
  chain: ChangeoverChain,
  change: number,
): Result<Changeover, Refusal> {
  const pair = pairOfChain(setting, sightings, chain, change);
  return pair.ok ? changeover(pair.value.setting, pair.value.sightings) : pair;
}

/** The wider of two intervals; the first when they are equally wide. */
export function widerInterval(one: Interval, other: Interval): Interval {
  return other.to - other.from > one.to - one.from ? other : one;
}
