/** An observation as a row of cells; what was told of features goes along as it was understood, in one cell. */
import { civilDayAt, type Interval } from "../../../knowledge/index.ts";
import type { Observation } from "./observation.ts";

export const columns = [
  "id",
  "stands",
  "by",
  "credit",
  "handbook",
  "part",
  "kind",
  "model",
  "trim",
  "market",
  "built from",
  "built to",
  "history",
  "seen from",
  "seen to",
  "links",
  "as built by ruling",
  "told",
] as const;
export type Column = (typeof columns)[number];

export function rowOf(id: string, observation: Observation): readonly string[] {
  const { saw, stands, byName, isRuledAsBuilt } = observation;
  const { model = "", trim = "", market = "", built } = saw.car;
  return [
    id,
    stands,
    byName,
    yesNo(saw.credit),
    saw.handbook,
    saw.part,
    saw.variant ?? observation.kinds[0]?.variant ?? "",
    model,
    trim,
    market,
    ...daysOf(built),
    saw.grade,
    ...daysOf(saw.seen ?? undefined),
    saw.links.join(" "),
    yesNo(isRuledAsBuilt),
    saw.reports.length === 0 ? "" : JSON.stringify(saw.reports),
  ];
}

function yesNo(holds: boolean): string {
  return holds ? "yes" : "no";
}

/** First and last day, both belonging to it. */
function daysOf(interval: Interval | undefined): readonly [string, string] {
  if (interval === undefined) return ["", ""];
  return [dayOf(interval.from), dayOf(Math.max(interval.from, interval.to - 1e-5))];
}

function dayOf(instant: number): string {
  const { year, month, day } = civilDayAt(instant);
  return `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}
