/**
 * For which cars, built when, a part kind has a variant at all: the fitted periods laid over every kind of car (model, trim,
 * market) that was made. Hard ends here; how surely an end is known is the caller's business.
 */
import type { Interval } from "../calendar/interval.ts";
import { intersect } from "../calendar/interval.ts";
import type { FittedPeriod, Handbook, PartKind } from "../handbook/schema.ts";
import { spanOfTexts } from "../identification/eras.ts";

export interface CarKind {
  readonly model: string;
  readonly trim?: string;
  readonly market?: string;
  /** When it was made, in months. */
  readonly made: Interval;
}

/** One fitted period with its place in the part kind. */
export interface PlacedPeriod extends Interval {
  readonly variant: number;
  readonly position: number;
  readonly period: FittedPeriod;
}

/** Every model with every trim it was sold in and every market, over the time that model and trim have in common. */
export function carKinds({ cars }: Handbook): readonly CarKind[] {
  return cars.models.flatMap((model) => {
    const years = spanOfTexts(model.from, model.to);
    if (years === undefined) return [];
    const trims = cars.trims.filter((trim) => trim.models.length === 0 || trim.models.includes(model.id));
    const versions = trims.flatMap((trim) => {
      const own = spanOfTexts(trim.from, trim.to);
      const made = own && intersect(own, years);
      return made === undefined ? [] : [{ model: model.id, trim: trim.id, made }];
    });
    const all = versions.length > 0 ? versions : [{ model: model.id, made: years }];
    if (cars.markets.length === 0) return all;
    return all.flatMap((version) => cars.markets.map((market) => ({ ...version, market: market.id })));
  });
}

/** All fitted periods of a part kind, by beginning. */
export function placedPeriods(part: PartKind): readonly PlacedPeriod[] {
  return part.variants
    .flatMap(({ fitted }, variant) =>
      fitted.flatMap((period, position): readonly PlacedPeriod[] => {
        const span = spanOfTexts(period.from, period.to);
        return span === undefined ? [] : [{ ...span, variant, position, period }];
      }),
    )
    .toSorted((one, other) => one.from - other.from || one.to - other.to || one.variant - other.variant);
}

/** The periods that speak of a kind of car; an empty list in a period speaks of all. */
export function periodsFor(
  periods: readonly PlacedPeriod[],
  { model, trim, market }: CarKind,
): readonly PlacedPeriod[] {
  const agrees = (allowed: readonly string[], id: string | undefined): boolean =>
    allowed.length === 0 || id === undefined || allowed.includes(id);
  return periods.filter(
    ({ period }) =>
      agrees(period.models, model) && agrees(period.trims, trim) && agrees(period.markets, market),
  );
}

export interface Gap extends Interval {
  /** The period that ends before the gap, and the one that begins after it. */
  readonly before: PlacedPeriod | undefined;
  readonly after: PlacedPeriod | undefined;
}

/** The stretches of a car kind's production in which no period holds, in order. `periods` by beginning. */
export function gapsOf(kind: CarKind, periods: readonly PlacedPeriod[]): readonly Gap[] {
  const gaps: Gap[] = [];
  let covered = kind.made.from;
  let before: PlacedPeriod | undefined;
  for (const period of periods) {
    if (period.from > covered && covered < kind.made.to) {
      gaps.push({ from: covered, to: Math.min(period.from, kind.made.to), before, after: period });
    }
    if (before === undefined || period.to > before.to) before = period;
    covered = Math.max(covered, period.to);
  }
  if (covered < kind.made.to) gaps.push({ from: covered, to: kind.made.to, before, after: undefined });
  return gaps;
}
