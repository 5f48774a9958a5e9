/** A change trim by trim, market by market, and trim by trim in each market, where the list holds at least two of them. */
import {
  type ChangeoverSetting,
  type ChangeoverSighting,
  changeoverByMarket,
  changeoverByTrimAndMarket,
  type MarketChangeover,
  type Refusal,
  type Result,
  type Sighting,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { leastOfBoth } from "./phrases.ts";

/** Each group with its own date. */
export interface GroupedFindings {
  readonly by: "trim" | "market" | "trim-and-market";
  readonly groups: readonly GroupFound[];
}

/** `market` is the name of the group; `trim` is there when it is a trim in a market. */
export type GroupFound = MarketChangeover & { readonly trim?: string };

export function groupsOf(
  setting: ChangeoverSetting,
  reports: readonly ChangeoverSighting[],
  sightings: readonly Sighting[],
): readonly GroupedFindings[] {
  const carOf = new Map(sightings.map((sighting) => [sighting.id, sighting]));
  const cars = reports.map((report) => ({ report, car: carOf.get(report.id) }));
  return [
    ...(["market", "trim"] as const).flatMap((by) => groupedBy(setting, cars, by)),
    ...groupedByBoth(setting, cars),
  ];
}

type Cars = readonly { readonly report: ChangeoverSighting; readonly car: Sighting | undefined }[];

/** Sightings that do not say their group stand together under an empty name. */
function groupedBy(
  setting: ChangeoverSetting,
  cars: Cars,
  by: "trim" | "market",
): readonly GroupedFindings[] {
  const reports = cars.map(({ report, car }) => ({ ...report, market: car?.[by] ?? "" }));
  if (new Set(reports.flatMap(({ market }) => (market === "" ? [] : [market]))).size < 2) return [];
  return [{ by, groups: granted(changeoverByMarket(setting, reports)) }];
}

/** Of cars that say both, where at least two trims and two markets of enough cars are left; else none. */
function groupedByBoth(setting: ChangeoverSetting, cars: Cars): readonly GroupedFindings[] {
  const reports = cars.flatMap(({ report, car }) => {
    const { trim, market } = car ?? {};
    return trim === undefined || market === undefined ? [] : [{ ...report, trim, market }];
  });
  const groups = granted(changeoverByTrimAndMarket(setting, reports, leastOfBoth));
  const kinds = (by: "trim" | "market") => new Set(groups.map((group) => group[by])).size;
  return kinds("trim") < 2 || kinds("market") < 2 ? [] : [{ by: "trim-and-market", groups }];
}

/** What was refused here was checked before: the window. */
function granted<Value>(result: Result<Value, Refusal>): Value {
  if (result.ok) return result.value;
  throw new OutsideError(result.problem.message);
}
