// What of a part kind was to be had as a replacement, by variant: a swapped part is what the shops held, not what the works
// fitted that year.
import { parseDateText } from "../calendar/date-text.ts";
import type { PartKind, Variant } from "../handbook/schema.ts";

/** Months of sale that a variant counts for beside its own: a used one can always be had (common practice, no source). */
const USED_MONTHS = 12;

/**
 * Months of sale of each variant, in the order given, whatever their era (changeovers from sightings, section 1: q₀): its
 * own over the counter, and those of the service parts and reproductions that resemble it (said of either), divided among
 * all that they resemble; and a year of used ones. Undefined when the handbook says of none of them what was sold.
 */
export function replacementsSold(part: PartKind, variants: readonly string[]): readonly number[] | undefined {
  const months = variants.map((id) =>
    part.variants.reduce((sum, variant) => sum + monthsFor(part, variant, id), 0),
  );
  return months.some((sold) => sold > 0) ? months.map((sold) => sold + USED_MONTHS) : undefined;
}

function monthsFor(part: PartKind, variant: Variant, id: string): number {
  const sold = variant.sold.reduce((sum, period) => sum + monthsOf(period), 0);
  if (variant.id === id) return sold;
  if (variant.origin !== "service" && variant.origin !== "reproduction") return 0;
  const likened = part.variants
    .filter(({ origin }) => origin === "production")
    .filter((made) => made.resembles.includes(variant.id) || variant.resembles.includes(made.id))
    .map((made) => made.id);
  return likened.includes(id) ? sold / likened.length : 0;
}

function monthsOf(period: Variant["sold"][number]): number {
  const [first, last] = [parseDateText(period.from), parseDateText(period.to)];
  return first && last ? Math.max(0, last.to - first.from) : 0;
}
