/** Date marks that cannot stand in the order in which such marks are made, link by link. */
import type { Interval } from "../calendar/interval.ts";
import type { CarDescription } from "../evidence/car-description.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { nextRead } from "./date-chain.ts";
import type { Fact } from "./facts.ts";
import type { BrokenDateLink } from "./identification.ts";
import { leadAtMost } from "./lead-time.ts";

/** A lead this improbable, at its most favourable, breaks the link (judgement, not tuned). */
const BROKEN = 0.02;

/**
 * A link is broken when even its largest possible lead x has G(x) < .02 ("after" when x ≤ 0, else "hardly-time"), or its
 * smallest 1 − G(x) < .02 ("too-long-before"). The car's build date is "built"; a part that is not on a car has none.
 */
export function brokenLinks(
  compiled: CompiledPart,
  car: CarDescription,
  facts: readonly Fact[],
): readonly BrokenDateLink[] {
  const marks = new Map<string, Interval>();
  for (const fact of facts) {
    const hull = hullOf(fact);
    if (hull) marks.set(fact.feature, hull);
  }
  const built = car.isLoosePart ? undefined : car.built;
  return [...marks].flatMap(([earlier, mark]): BrokenDateLink[] => {
    const way = nextRead(compiled.dates, earlier, (feature) => marks.has(feature));
    const later = way?.next === undefined ? built : marks.get(way.next);
    if (!way || !later) return [];
    const link = { earlier, later: way.next ?? "built" };
    const longest = later.to - mark.from;
    if (leadAtMost(way.lead, longest) < BROKEN)
      return [{ ...link, problem: longest <= 0 ? "after" : "hardly-time" }];
    const isTooLong = 1 - leadAtMost(way.lead, later.from - mark.to) < BROKEN;
    return isTooLong ? [{ ...link, problem: "too-long-before" }] : [];
  });
}

/** From the earliest start to the latest end of all readings that fit. */
function hullOf(fact: Fact): Interval | undefined {
  const intervals = fact.reports.flatMap(({ value }) =>
    value.kind === "date"
      ? value.readings.filter(({ weight }) => weight > 0).map(({ interval }) => interval)
      : [],
  );
  if (intervals.length === 0) return undefined;
  return {
    from: Math.min(...intervals.map(({ from }) => from)),
    to: Math.max(...intervals.map(({ to }) => to)),
  };
}
