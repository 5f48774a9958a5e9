/**
 * Whose pins and sightings a reader of the open pages is shown: those of the community they have signed in to; else of the only one there is;
 * else of the site's own. What is shown is named on the page.
 */
import type { Context } from "hono";
import { sessionOf } from "./sessions.ts";
import type { Site } from "./site.ts";

/** The community of visitors, as the bot has it. */
const own = "home";

export interface CommunityShown {
  readonly id: string;
  readonly why: "signed-in" | "only" | "own";
}

export async function communityShown(context: Context, site: Site): Promise<CommunityShown> {
  const session = await sessionOf(context, site);
  if (session !== undefined) return { id: session.guest.community, why: "signed-in" };
  const known = await site.pages.communities();
  const [only] = known;
  if (only !== undefined && known.length === 1 && only !== own) return { id: only, why: "only" };
  return { id: own, why: "own" };
}
