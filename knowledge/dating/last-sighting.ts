// When a variant went out of use, or came into it, from its own sightings alone: for variants whose successor or
// forerunner nobody has reported. There is then no changeover interval, only how long use lasted at least, and limits.
import type { Interval } from "../calendar/interval.ts";
import { midpoint } from "../calendar/interval.ts";
import { jaricRobertsEnd } from "./doubtful-end.ts";
import { type EndEstimate, solowEnd, straussSadlerEnd } from "./even-end.ts";
import { type ProductionScale, productionScale } from "./production-scale.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";
import { robertsSolowEnd } from "./thinning-end.ts";

/** A sighting of the variant and the chance that it is as built. */
export interface UseSighting {
  readonly built: Interval;
  readonly asBuilt: number;
}

export interface UseSetting {
  /** All of production. */
  readonly window: Interval;
  readonly production?: ReadonlyMap<number, number>;
  /** The other end of use, in months, when it is known: its beginning for a last sighting, its end for a first. */
  readonly otherEnd?: number;
}

/** An estimate turned back into months. */
export interface UseLimit {
  readonly sightings: number;
  readonly estimate: number;
  /** 95 % limit; cut at the window. */
  readonly limit: number;
  /** The limit lies beyond the window: use may have gone on to its end (or begun with it). */
  readonly isOpen: boolean;
  readonly assumption: string;
}

export interface UseEnd {
  /**
   * Until when (from when) use is proved, by the sightings that are as built with .9 or more; undefined for none. A car known
   * to the year alone may have been built on its first day (last day).
   */
  readonly atLeast?: number;
  /** The build dates of the car that proves it; of several the closest known. */
  readonly atLeastBuilt?: Interval;
  readonly solow: Result<UseLimit, Refusal>;
  readonly straussSadler: Result<UseLimit, Refusal>;
  readonly robertsSolow: Result<UseLimit, Refusal>;
  readonly jaricRoberts: Result<UseLimit, Refusal>;
}

/** From here a sighting is trusted: "in use at least until" it. */
const TRUSTED = 0.9;

/** The end of use by all four methods, on the scale of cars built. Show all; trust the later one. */
export function lastSighting(
  setting: UseSetting,
  sightings: readonly UseSighting[],
): Result<UseEnd, Refusal> {
  return useEnd(setting, sightings, false);
}

/** The beginning of use: the same with time running backwards. */
export function firstSighting(
  setting: UseSetting,
  sightings: readonly UseSighting[],
): Result<UseEnd, Refusal> {
  return useEnd(setting, sightings, true);
}

function useEnd(
  setting: UseSetting,
  sightings: readonly UseSighting[],
  isFirst: boolean,
): Result<UseEnd, Refusal> {
  const scale = productionScale(setting.window, setting.production);
  if (!scale) return refused("no-window", "the window of build dates is empty or longer than a century");
  const inside = sightings.filter(
    ({ built }) => midpoint(built) >= scale.window.from && midpoint(built) <= scale.window.to,
  );
  const place = (instant: number): number => (isFirst ? 1 - scale.builtBy(instant) : scale.builtBy(instant));
  const trusted = inside.filter(({ asBuilt }) => asBuilt >= TRUSTED).map(({ built }) => built);
  const record = {
    places: trusted.map((built) => place(midpoint(built))),
    looked: 1,
    ...(setting.otherEnd === undefined ? {} : { begun: place(setting.otherEnd) }),
  };
  const { places, ...rest } = record;
  const doubtful = inside.map(({ built, asBuilt }) => ({
    place: place(midpoint(built)),
    reliability: asBuilt,
  }));
  const inMonths = (estimate: Result<EndEstimate, Refusal>): Result<UseLimit, Refusal> =>
    estimate.ok ? found(useLimit(estimate.value, scale, isFirst)) : estimate;
  const proving = outermost(trusted, isFirst);
  return found({
    ...(proving === undefined
      ? {}
      : { atLeast: proved(proving, scale.window, isFirst), atLeastBuilt: proving }),
    solow: inMonths(solowEnd({ ...rest, places })),
    straussSadler: inMonths(straussSadlerEnd(record)),
    robertsSolow: inMonths(robertsSolowEnd(record)),
    jaricRoberts: inMonths(jaricRobertsEnd({ ...rest, sightings: doubtful })),
  });
}

/** Less than a minute, in months: the end of an interval does not belong to it. */
const DUST = 1e-5;

/** The interval that begins last, or for a first sighting the one that ends first; of several the shortest. */
function outermost(builds: readonly Interval[], isFirst: boolean): Interval | undefined {
  const length = ({ from, to }: Interval): number => to - from;
  const [found] = [...builds].sort(
    (one, other) => (isFirst ? one.to - other.to : other.from - one.from) || length(one) - length(other),
  );
  return found;
}

function proved({ from, to }: Interval, window: Interval, isFirst: boolean): number {
  return isFirst ? Math.min(window.to - DUST, Math.max(from, to - DUST)) : Math.max(window.from, from);
}

function useLimit(estimate: EndEstimate, scale: ProductionScale, isFirst: boolean): UseLimit {
  const instant = (place: number): number => scale.instantAt(isFirst ? 1 - place : place);
  return {
    sightings: estimate.sightings,
    estimate: instant(estimate.estimate),
    limit: instant(estimate.upper),
    isOpen: estimate.upper >= 1,
    assumption: estimate.assumption,
  };
}
