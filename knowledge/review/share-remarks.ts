/** Three or more variants that each have a share of the same cars, and together more than all of them: no two of them contradict. */
import { formatInterval } from "../calendar/date-text.ts";
import { type Interval, intersect } from "../calendar/interval.ts";
import type { PartKind } from "../handbook/schema.ts";
import type { CarKind, PlacedPeriod } from "./fitted-coverage.ts";
import { type Margin, note } from "./remark.ts";

/** Shares are rounded: each beside the first may pass the whole by this much. */
const SLACK = 0.05;

/** Variants whose shares pass the whole at one time. */
export interface Crowd extends Interval {
  readonly periods: readonly PlacedPeriod[];
  readonly share: number;
}

/**
 * The longest such stretch of each set of periods, in order of time. `sure`: a period without the months by which its ends may be off.
 * Cost: periods squared.
 */
export function crowdsOf(
  kind: CarKind,
  periods: readonly PlacedPeriod[],
  sure: (period: PlacedPeriod) => Interval,
): readonly Crowd[] {
  const within = periods.flatMap((period) => {
    const span = intersect(sure(period), kind.made);
    return span === undefined ? [] : [{ period, ...span }];
  });
  const ends = [...new Set(within.flatMap(({ from, to }) => [from, to]))].toSorted(
    (one, other) => one - other,
  );
  const crowds = new Map<string, Crowd>();
  for (const [index, from] of ends.entries()) {
    const to = ends[index + 1] ?? from;
    const there = within.filter((span) => span.from <= from && span.to >= to).map(({ period }) => period);
    const share = there.reduce((sum, { period }) => sum + period.share, 0);
    if (to === from || there.length < 3 || share <= 1 + SLACK * (there.length - 1)) continue;
    const key = there.map(({ variant, position }) => `${variant} ${position}`).join();
    const known = crowds.get(key);
    if (known === undefined || known.to - known.from < to - from) {
      crowds.set(key, { from, to, periods: there, share });
    }
  }
  return [...crowds.values()];
}

export function noteCrowd(margin: Margin, part: PartKind, { periods, share, from, to }: Crowd): void {
  const ids = periods.map(({ variant }) => part.variants[variant]?.id ?? "");
  const last = periods.at(-1);
  if (last === undefined) return;
  note(margin, {
    severity: "doubt",
    code: "period-overlap",
    path: ["variants", last.variant, "fitted", last.position],
    message: `${ids.slice(0, -1).join(", ")} and ${ids.at(-1)} are together on ${Math.round(share * 100)} % of the same cars, ${formatInterval({ from, to })}`,
    mend: "lower their share: until they come to 1, or give them different models, trims or markets",
  });
}
