/** What a community knows of a part kind beside the handbook, for its page. */
import type { Handbook, PartKind } from "../../knowledge/index.ts";
import type { PartPage } from "./handbook-page.ts";
import type { Site } from "./site.ts";

export async function communityPart(
  _site: Site,
  _handbook: Handbook,
  _part: PartKind,
): Promise<Pick<PartPage, "pins" | "sightings" | "changes">> {
  return { pins: [], sightings: [], changes: [] };
}
