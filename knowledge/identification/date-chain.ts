/** Which mark comes before which: the handbook's `before` links, shortened to the marks that were read. */
import type { DateFeature, PartKind } from "../handbook/schema.ts";
import type { ChainMark, MarkReading } from "./date-marks.ts";
import { type LeadTime, type LearntLead, leadOverBoth } from "./lead-time.ts";

interface DateLink {
  readonly feature: DateFeature;
  readonly lead: LeadTime;
  /** On how many documented cars, or parts with both marks, the lead rests; 0: on the handbook. */
  readonly cars: number;
  /** Id of the mark made next; undefined: the car's build date. */
  readonly next: string | undefined;
}
export type DateLinks = ReadonlyMap<string, DateLink>;

/** Id of the mark that is made after this one on the same part; undefined: the car's build date comes next. */
export function nextMark(part: PartKind, { before }: DateFeature): string | undefined {
  return part.features.some(({ id, kind }) => id === before && kind === "date") ? before : undefined;
}

/** The links of a part kind, by feature. A lead learnt is that to what the handbook has come next. */
export function dateLinks(part: PartKind, learnt: readonly LearntLead[] = []): DateLinks {
  const dates = part.features.filter((feature) => feature.kind === "date");
  return new Map(
    dates.map((feature) => {
      const next = nextMark(part, feature);
      const found = learnt.find((one) => one.part === part.id && one.feature === feature.id);
      const lead = found?.lead ?? feature.lead ?? part.lead;
      return [feature.id, { feature, lead, cars: found?.cars ?? 0, next }];
    }),
  );
}

/** The next mark on the way to the build date that was read, and the lead to it; a circle of links ends the way. */
export function nextRead(
  links: DateLinks,
  feature: string,
  wasRead: (feature: string) => boolean,
): { readonly next: string | undefined; readonly lead: LeadTime } | undefined {
  const start = links.get(feature);
  if (!start) return undefined;
  let { lead, next } = start;
  const passed = new Set([feature]);
  while (next !== undefined && !passed.has(next)) {
    if (wasRead(next)) return { next, lead };
    passed.add(next);
    const link = links.get(next);
    if (!link) break;
    lead = leadOverBoth(lead, link.lead);
    next = link.next;
  }
  return { next: undefined, lead };
}

/**
 * The chain of the marks that were read, seen from its last; undefined when none was. Of several marks that nothing
 * follows but the build date, the handbook's last stands for the part and the others beside it, so that one part
 * never gives two items of evidence.
 */
export function chainOf(links: DateLinks, readings: ReadonlyMap<string, MarkReading>): ChainMark | undefined {
  const read = [...links.keys()].filter((feature) => readings.has(feature));
  const onward = new Map(
    read.map((feature) => [feature, nextRead(links, feature, (other) => readings.has(other))]),
  );
  const build = (feature: string): ChainMark | undefined => {
    const reading = readings.get(feature);
    const way = onward.get(feature);
    if (!reading || !way) return undefined;
    const before = read
      .filter((other) => other !== feature && onward.get(other)?.next === feature)
      .map(build)
      .filter((mark) => mark !== undefined);
    return { feature, reading, lead: way.lead, before };
  };
  const ends = read.filter((feature) => onward.get(feature)?.next === undefined).map(build);
  const last = ends.at(-1);
  if (!last) return undefined;
  const others = ends.slice(0, -1).flatMap((mark) => (mark ? [{ ...mark, beside: last.lead }] : []));
  return { ...last, before: [...last.before, ...others] };
}
