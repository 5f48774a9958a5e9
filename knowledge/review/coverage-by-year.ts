/** How much of what was made in each year a part kind's fitted periods cover. */
import { intersect, yearInterval } from "../calendar/interval.ts";
import type { Handbook, PartKind } from "../handbook/schema.ts";
import { productionSpan } from "../identification/eras.ts";
import { type CarKind, carKinds, gapsOf, periodsFor, placedPeriods } from "./fitted-coverage.ts";

export interface YearCoverage {
  readonly year: number;
  /** Made in the year; undefined where the handbook has no figure. */
  readonly made: number | undefined;
  /** Share of the year's months, over all kinds of car made then, for which a variant is known; in [0, 1]. */
  readonly covered: number;
  /** How many variants were fitted in it. */
  readonly variants: number;
}

/** One entry a year of production, in order. Kinds of car count alike: what each sold is not in a handbook. */
export function coverageByYear(handbook: Handbook, part: PartKind): readonly YearCoverage[] {
  const span = productionSpan(handbook);
  const periods = placedPeriods(part);
  const kinds = carKinds(handbook).map((kind) => ({ kind, gaps: gapsOf(kind, periodsFor(periods, kind)) }));
  const first = Math.floor(span.from / 12);
  const last = Math.ceil(span.to / 12);
  return Array.from({ length: last - first }, (_, index) => {
    const year = first + index;
    const within = yearInterval(year);
    const months = (one: Pick<CarKind["made"], "from" | "to">): number => {
      const common = intersect(one, within);
      return common === undefined ? 0 : common.to - common.from;
    };
    const made = kinds.reduce((sum, { kind }) => sum + months(kind.made), 0);
    const missing = kinds.reduce((sum, { gaps }) => sum + gaps.reduce((gap, one) => gap + months(one), 0), 0);
    const variants = new Set(periods.filter((period) => months(period) > 0).map(({ variant }) => variant));
    return {
      year,
      made: handbook.cars.production[String(year)],
      covered: made === 0 ? 0 : 1 - missing / made,
      variants: variants.size,
    };
  });
}
