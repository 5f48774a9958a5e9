/** One change trim by trim, market by market, and trim by trim in each market, by the handbook's names for them. */
import {
  type ChangeoverSetting,
  type ChangeoverSighting,
  changeoverByMarket,
  changeoverByTrimAndMarket,
  type Handbook,
  type MarketChangeover,
  type Sighting,
} from "../../../knowledge/index.ts";
import { leastOfBoth } from "../../conversation/phrases/changeovers.ts";
import { inMarket } from "../phrases/dating.ts";

/** Trims, markets, or trims in each market, of which at least two were seen, each with its own date. `market`: the group's name. */
export interface GroupedChange {
  readonly by: "trim" | "market" | "trim-and-market";
  readonly groups: readonly MarketChangeover[];
}

type Cars = readonly { readonly report: ChangeoverSighting; readonly car: Sighting | undefined }[];

/** Cars of which the group is not known stand in none. */
export function groupedChanges(
  { cars }: Handbook,
  setting: ChangeoverSetting,
  reports: readonly ChangeoverSighting[],
  sightings: readonly Sighting[],
): readonly GroupedChange[] {
  const carOf = new Map(sightings.map((sighting) => [sighting.id, sighting]));
  const seen: Cars = reports.map((report) => ({ report, car: carOf.get(report.id) }));
  const names = {
    trim: new Map(cars.trims.map(({ id, name }) => [id, name])),
    market: new Map(cars.markets.map(({ id, name }) => [id, name])),
  };
  const nameOf = (by: "trim" | "market", id: string): string => names[by].get(id) ?? id;
  return [
    ...(["market", "trim"] as const).flatMap((by) =>
      groupedBy(setting, seen, by).map((groups) => ({
        by,
        groups: groups.map((group) => ({ ...group, market: nameOf(by, group.market) })),
      })),
    ),
    ...groupedByBoth(setting, seen, nameOf),
  ];
}

/** One list of groups, or none. */
function groupedBy(
  setting: ChangeoverSetting,
  seen: Cars,
  by: "trim" | "market",
): readonly (readonly MarketChangeover[])[] {
  const reports = seen.flatMap(({ report, car }) => {
    const market = car?.[by];
    return market === undefined ? [] : [{ ...report, market }];
  });
  if (new Set(reports.map(({ market }) => market)).size < 2) return [];
  const found = changeoverByMarket(setting, reports);
  return found.ok ? [found.value] : [];
}

/** Where at least two trims and two markets of enough cars are left. */
function groupedByBoth(
  setting: ChangeoverSetting,
  seen: Cars,
  nameOf: (by: "trim" | "market", id: string) => string,
): readonly GroupedChange[] {
  const reports = seen.flatMap(({ report, car }) => {
    const { trim, market } = car ?? {};
    return trim === undefined || market === undefined ? [] : [{ ...report, trim, market }];
  });
  const found = changeoverByTrimAndMarket(setting, reports, leastOfBoth);
  if (!found.ok) return [];
  const kinds = (by: "trim" | "market") => new Set(found.value.map((group) => group[by])).size;
  if (kinds("trim") < 2 || kinds("market") < 2) return [];
  const groups = found.value.map(({ trim, market, ...group }) => ({
    ...group,
    market: inMarket(nameOf("trim", trim), nameOf("market", market)),
  }));
  return [{ by: "trim-and-market", groups }];
}
