/** A change trim by trim, market by market, and trim by trim in each market; sightings that do not say theirs stand together. */
import {
  type ChangeoverSetting,
  type ChangeoverSighting,
  type GroupedChangeovers,
  groupedChangeovers,
  type Sighting,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { leastOfBoth } from "./phrases.ts";

/** What is refused here was checked before: the window. */
export function groupsOf(
  setting: ChangeoverSetting,
  reports: readonly ChangeoverSighting[],
  sightings: readonly Sighting[],
): readonly GroupedChangeovers[] {
  const grouped = groupedChangeovers(setting, reports, sightings, {
    least: leastOfBoth,
    unknown: "together",
  });
  if (grouped.ok) return grouped.value;
  throw new OutsideError(grouped.problem.message);
}
