/**
 * What the works fitted at a given instant: every fitted period fades in and out as surely as the historian knows
 * its ends, and a little room is left for what lay on the shelf.
 */
import type { CarDescription } from "../evidence/car-description.ts";
import type { FittedPeriod, PartKind } from "../handbook/schema.ts";
import { normalDistribution } from "../numbers/normal-distribution.ts";
import { spanOfTexts } from "./eras.ts";
import { applyChanges, type ChangeOfMix } from "./learnt-change.ts";

/** Standard deviation of a period's end, in months. */
export const endDeviationMonths: Readonly<Record<FittedPeriod["start"], number>> = {
  exact: 0.5,
  about: 2,
  rough: 6,
};
/** Share of cars fitted with any production variant at all, whatever the periods say. */
const SHELF_SHARE = 0.02;

export interface FittedSpan {
  /** Index of the variant. */
  readonly variant: number;
  readonly from: number;
  readonly to: number;
  readonly startDeviation: number;
  readonly endDeviation: number;
  readonly share: number;
  readonly models: readonly string[];
  readonly trims: readonly string[];
  readonly markets: readonly string[];
}

/** The fitted periods of all production variants, in the handbook's order. */
export function fittedSpans(part: PartKind): readonly FittedSpan[] {
  return part.variants.flatMap((variant, index) => {
    if (variant.origin !== "production") return [];
    return variant.fitted.flatMap((period) => {
      const span = spanOfTexts(period.from, period.to);
      if (!span) return [];
      const deviations = {
        startDeviation: endDeviationMonths[period.start],
        endDeviation: endDeviationMonths[period.end],
      };
      const { share, models, trims, markets } = period;
      return [{ variant: index, ...span, ...deviations, share, models, trims, markets }];
    });
  });
}

/** The periods that agree with what is known of the car; an empty list in a period, and an unknown, agree with all. */
export function spansFor(spans: readonly FittedSpan[], car: CarDescription): readonly FittedSpan[] {
  const agrees = (allowed: readonly string[], known: string | undefined): boolean =>
    allowed.length === 0 || known === undefined || allowed.includes(known);
  return spans.filter(
    (span) =>
      agrees(span.models, car.model) && agrees(span.trims, car.trim) && agrees(span.markets, car.market),
  );
}

/** What the mix of a kind of car is made of. */
export interface MixGround {
  readonly spans: readonly FittedSpan[];
  /** One of each two variants: those that stand for such a car. */
  readonly changes: readonly ChangeOfMix[];
  /** Indices of the production variants. */
  readonly production: readonly number[];
  readonly variantCount: number;
}

/**
 * a_v(T) = .98 · raw_v(T) ÷ Σ raw + .02 ÷ n, raw_v(T) = Σ share · Φ((T − from)/s) · Φ((to − T)/s) over the spans
 * (identification method, section 1), divided anew where sightings taught when one variant gave way to another; all
 * raw 0: even. `time` in months, n the production variants. One value per variant, 0 for those that are not production.
 */
export function asBuiltMix(ground: MixGround, time: number): Float64Array {
  const { spans, production } = ground;
  const mix = new Float64Array(ground.variantCount);
  for (const span of spans) {
    const raw =
      span.share *
      normalDistribution((time - span.from) / span.startDeviation) *
      normalDistribution((span.to - time) / span.endDeviation);
    mix[span.variant] = (mix[span.variant] as number) + raw;
  }
  const isFitted = (variant: number): boolean => spans.some((span) => span.variant === variant);
  applyChanges(mix, isFitted, ground.changes, time);
  const total = mix.reduce((sum, raw) => sum + raw, 0);
  for (const variant of production) {
    const shelf = SHELF_SHARE / production.length;
    const fitted = total > 0 ? (mix[variant] as number) / total : 1 / production.length;
    mix[variant] = (1 - SHELF_SHARE) * fitted + shelf;
  }
  return mix;
}
