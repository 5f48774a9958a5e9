/** A change trim by trim and market by market: each group's date, whether it is that of the others, and from whom it borrows. */
import { formatInterval, type GroupedChangeovers, sayProbability } from "../../../knowledge/index.ts";
import { flowing, section } from "./laid-out.ts";
import { oneLine } from "./one-line.ts";
import {
  commonDateWords,
  groupName,
  groupsLean,
  groupWords,
  headings,
  inMarket,
  monthWords,
} from "./phrases.ts";

export function sayGroups(grouped: readonly GroupedChangeovers[]): readonly string[] {
  return grouped.flatMap(({ by, groups }) => [
    ...section(
      headings.markets[by],
      groups.map(({ market, trim, median, interval, sightings, onCommonDate }) => [
        oneLine(trim === undefined ? groupName(market) : inMarket(trim, market)),
        groupWords(monthWords(median), formatInterval(interval), sightings) +
          commonDateWords(sayProbability(onCommonDate)),
      ]),
    ),
    ...flowing(groupsLean[by]),
  ]);
}
