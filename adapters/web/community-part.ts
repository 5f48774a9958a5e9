/** What a community knows of a part kind beside the handbook, for its page. */
import type { Handbook, PartKind } from "../../knowledge/index.ts";
import type { PartPage } from "./handbook-page.ts";
import type { Site } from "./site.ts";

/** The community whose knowledge the open pages show. */
const openCommunity = "home";

export async function communityPart(
  { pages }: Site,
  { cover }: Handbook,
  part: PartKind,
): Promise<Pick<PartPage, "pins" | "sightings" | "changes">> {
  const pins = await pages.pins(openCommunity);
  return {
    pins: pins
      .filter((pin) => pin.handbook === cover.id && (pin.part === null || pin.part === part.id))
      .map(({ block }) => block),
    sightings: [],
    changes: [],
  };
}
