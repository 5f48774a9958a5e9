/** How long before the car, or the next mark, a mark was made, and whether that is usual: said once, when one of the two is dated. */
import {
  type DateFeature,
  type Feature,
  featureById,
  type Interval,
  type LeadTime,
} from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { Assessed } from "../assessed.ts";
import { leadTime, type UsualMonths } from "../phrases/lead-time.ts";
import { lastTold } from "./say-value.ts";

/** 1.2816 standard deviations to either side hold 80 of 100 (normal distribution). */
const fourFifths = 1.2816;

/** A line for each date mark told in this turn; none for broken links or wide dates. */
export function sayLeadTimes(assessed: Assessed, justTold: readonly string[]): readonly Block[] {
  const broken = new Set(assessed.identification.brokenLinks.map((link) => link.earlier));
  const dates = assessed.part.features.filter((feature) => feature.kind === "date");
  return dates.flatMap((feature): readonly Block[] => {
    const next = nextOf(assessed, feature);
    const isTold =
      justTold.includes(feature.id) || (next?.feature !== undefined && justTold.includes(next.feature.id));
    const mark = onlyReading(assessed, feature);
    if (!isTold || next === undefined || mark === undefined || broken.has(feature.id)) return [];
    const months = middle(next.when) - middle(mark);
    const width = mark.to - mark.from + next.when.to - next.when.from;
    if (months < 0 || width > widestDates) return [];
    const text = leadTime(feature.name, next.feature?.name, months, usualMonths(assessed, feature));
    return [{ kind: "text", text }];
  });
}

/** What most parts take from this mark to what comes next. */
function usualMonths(
  { compiled, part }: Pick<Assessed, "compiled" | "part">,
  feature: DateFeature,
): UsualMonths {
  const link = compiled.dates.get(feature.id);
  const { median, sigma } = link?.lead ?? feature.lead ?? part.lead;
  return monthsOfMost({ median, sigma }, link?.cars ?? 0);
}

/** The months that four parts in five take. `taught`: on how many parts the lead rests. */
export function monthsOfMost({ median, sigma }: LeadTime, taught: number): UsualMonths {
  const factor = Math.exp(fourFifths * sigma);
  return { from: median / factor, to: median * factor, taught };
}

/** Wider than this together, the dates say no number of months. */
const widestDates = 3;

/** The next mark, where it was read once, or the car's build date; of a loose part there is none. */
function nextOf(assessed: Assessed, feature: DateFeature) {
  const id = assessed.compiled.dates.get(feature.id)?.next;
  const { built, isLoosePart } = assessed.facts.car;
  if (id === undefined) {
    return built === undefined || isLoosePart === true ? undefined : { feature: undefined, when: built };
  }
  const next = featureById(assessed.part, id);
  const when = next && onlyReading(assessed, next);
  return next === undefined || when === undefined ? undefined : { feature: next, when };
}

function onlyReading({ facts }: Assessed, feature: Feature): Interval | undefined {
  const value = lastTold(feature.id, facts.reports)?.value;
  if (value?.kind !== "date" || value.readings.length !== 1) return undefined;
  return value.readings[0]?.interval;
}

function middle(interval: Interval): number {
  return (interval.from + interval.to) / 2;
}
