/** How long before the car a mark was made, and whether that is usual: said once, when the mark or the car is dated. */
import type { Feature, Interval } from "../../../knowledge/index.ts";
import { featureById } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { Assessed } from "../assessed.ts";
import { leadTime } from "../phrases/lead-time.ts";
import { lastTold } from "./say-value.ts";

/** 1.2816 standard deviations to either side hold 80 of 100 (normal distribution). */
const fourFifths = 1.2816;

/** A line for each date mark told in this turn that comes last before the car; none for broken links or wide dates. */
export function sayLeadTimes(assessed: Assessed, justTold: readonly string[]): readonly Block[] {
  const { facts, part, identification } = assessed;
  const { built } = facts.car;
  if (built === undefined || facts.car.isLoosePart === true) return [];
  const broken = new Set(identification.brokenLinks.map((link) => link.earlier));
  return justTold.flatMap((id): readonly Block[] => {
    const feature = featureById(part, id);
    const mark = feature === undefined ? undefined : onlyReading(assessed, feature);
    if (feature?.kind !== "date" || mark === undefined || feature.before !== undefined || broken.has(id))
      return [];
    const link = assessed.compiled.dates.get(id);
    const { median, sigma } = link?.lead ?? feature.lead ?? part.lead;
    const months = middle(built) - middle(mark);
    const factor = Math.exp(fourFifths * sigma);
    const width = mark.to - mark.from + built.to - built.from;
    if (months < 0 || width > widestDates) return [];
    return [
      { kind: "text", text: leadTime(feature.name, months, median / factor, median * factor, link?.cars) },
    ];
  });
}

/** Wider than this together, the dates say no number of months. */
const widestDates = 3;

function onlyReading({ facts }: Assessed, feature: Feature): Interval | undefined {
  const value = lastTold(feature.id, facts.reports)?.value;
  if (value?.kind !== "date" || value.readings.length !== 1) return undefined;
  return value.readings[0]?.interval;
}

function middle(interval: Interval): number {
  return (interval.from + interval.to) / 2;
}
