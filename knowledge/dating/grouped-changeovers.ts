// One change trim by trim, market by market, and trim by trim in each market, where the sightings hold at least two of them.
import { changeoverByMarket, type MarketChangeover } from "./changeover-by-market.ts";
import { changeoverByTrimAndMarket } from "./changeover-by-trim-and-market.ts";
import type { ChangeoverSetting } from "./dated-change.ts";
import type { ChangeoverSighting } from "./report-groups.ts";
import { found, type Refusal, type Result } from "./result.ts";

/** `market` is the name of the group, whatever it is grouped by; `trim` is there when it is a trim in a market. */
export type GroupFound = MarketChangeover & { readonly trim?: string };

export interface GroupedChangeovers {
  readonly by: "trim" | "market" | "trim-and-market";
  readonly groups: readonly GroupFound[];
}

/** What is known of the car of a sighting. */
interface SeenCar {
  readonly id: string;
  readonly trim?: string | undefined;
  readonly market?: string | undefined;
}

interface Grouping {
  /** Cars of a trim in a market from which it is dated by itself. */
  readonly least: number;
  /** Sightings that do not say their trim or market: a group under an empty name, or in none. */
  readonly unknown: "together" | "left out";
}

type Cars = readonly { readonly report: ChangeoverSighting; readonly car: SeenCar | undefined }[];

/** Each group with its own date; refused as `changeoverByMarket` is. Cost: three times its own at most. */
export function groupedChangeovers(
  setting: ChangeoverSetting,
  reports: readonly ChangeoverSighting[],
  seen: readonly SeenCar[],
  { least, unknown }: Grouping,
): Result<readonly GroupedChangeovers[], Refusal> {
  const carOf = new Map(seen.map((car) => [car.id, car]));
  const cars: Cars = reports.map((report) => ({ report, car: carOf.get(report.id) }));
  const grouped: GroupedChangeovers[] = [];
  for (const by of ["market", "trim"] as const) {
    const named = cars.map(({ report, car }) => ({ ...report, market: car?.[by] ?? "" }));
    const known = named.filter(({ market }) => market !== "");
    if (new Set(known.map(({ market }) => market)).size < 2) continue;
    const groups = changeoverByMarket(setting, unknown === "together" ? named : known);
    if (!groups.ok) return groups;
    grouped.push({ by, groups: groups.value });
  }
  const both = byBoth(setting, cars, least);
  return both.ok ? found([...grouped, ...both.value]) : both;
}

/** Of cars that say both, where at least two trims and two markets of enough cars are left; else none. */
function byBoth(
  setting: ChangeoverSetting,
  cars: Cars,
  least: number,
): Result<readonly GroupedChangeovers[], Refusal> {
  const reports = cars.flatMap(({ report, car }) => {
    const { trim, market } = car ?? {};
    return trim === undefined || market === undefined ? [] : [{ ...report, trim, market }];
  });
  const groups = changeoverByTrimAndMarket(setting, reports, least);
  if (!groups.ok) return groups;
  const kinds = (by: "trim" | "market"): number => new Set(groups.value.map((group) => group[by])).size;
  const isMixed = kinds("trim") >= 2 && kinds("market") >= 2;
  return found(isMixed ? [{ by: "trim-and-market", groups: groups.value }] : []);
}
