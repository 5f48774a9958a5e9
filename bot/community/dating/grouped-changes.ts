/** One change trim by trim, market by market, and trim by trim in each market, by the handbook's names for them. */
import {
  type ChangeoverSetting,
  type ChangeoverSighting,
  type GroupedChangeovers,
  groupedChangeovers,
  type Handbook,
  type Sighting,
} from "../../../knowledge/index.ts";
import { leastOfBoth } from "../../conversation/phrases/changeovers.ts";
import { inMarket } from "../phrases/dating.ts";

/** Cars of which the group is not known stand in none. */
export function groupedChanges(
  { cars }: Handbook,
  setting: ChangeoverSetting,
  reports: readonly ChangeoverSighting[],
  sightings: readonly Sighting[],
): readonly GroupedChangeovers[] {
  const trims = new Map(cars.trims.map(({ id, name }) => [id, name]));
  const markets = new Map(cars.markets.map(({ id, name }) => [id, name]));
  const trimName = (id: string): string => trims.get(id) ?? id;
  const marketName = (id: string): string => markets.get(id) ?? id;
  const grouped = groupedChangeovers(setting, reports, sightings, {
    least: leastOfBoth,
    unknown: "left out",
  });
  if (!grouped.ok) return [];
  return grouped.value.map(({ by, groups }) => ({
    by,
    groups: groups.map(({ trim, market, ...group }) => {
      if (trim !== undefined) return { ...group, market: inMarket(trimName(trim), marketName(market)) };
      return { ...group, market: by === "trim" ? trimName(market) : marketName(market) };
    }),
  }));
}
