/** When a part could be bought over the counter, and what of that is left to a car of a given build date. */
import type { Interval } from "../calendar/interval.ts";
import type { Variant } from "../handbook/schema.ts";
import { spanOfTexts } from "./eras.ts";

/** A part is marked up to this many months before it is first sold. */
const MARKED_BEFORE_SALE = 3;
/** A service part whose sale had ended is not impossible: old stock counts as this many months of sale. */
const OLD_STOCK_MONTHS = 0.1;

/** The sale periods of a variant; one of a reproduction or service part without any is taken as on sale throughout. */
export function saleSpans(variant: Variant, throughout: Interval): readonly Interval[] {
  const spans = variant.sold
    .map((period) => spanOfTexts(period.from, period.to))
    .filter((span) => span !== undefined);
  return spans.length === 0 && variant.origin !== "production" ? [throughout] : spans;
}

/** What is left of the sale after `earliest` (the middle of the build interval, or the start of production). */
export function saleLeft(spans: readonly Interval[], earliest: number): readonly Interval[] {
  return spans
    .map((span) => ({ from: Math.max(span.from, earliest), to: span.to }))
    .filter((span) => span.to > span.from);
}

/** Months of sale that are left; a pure service part keeps a trace, so that it is never impossible. */
export function serviceMonths(variant: Variant, left: readonly Interval[]): number {
  const months = left.reduce((sum, span) => sum + span.to - span.from, 0);
  return months > 0 || variant.origin !== "service" ? months : OLD_STOCK_MONTHS;
}

/** When a part from this sale can have been marked: three months before each period to its end. */
export function markSpans(spans: readonly Interval[]): readonly Interval[] {
  return spans.map((span) => ({ from: span.from - MARKED_BEFORE_SALE, to: span.to }));
}
