/** Whether a reader is a keeper here now: a role may have ended since they signed in. */
import type { Context } from "hono";
import { type OpenSession, sessionOf } from "./sessions.ts";
import type { Site } from "./site.ts";

export async function keeperOf(context: Context, site: Site): Promise<OpenSession | "nobody" | "no keeper"> {
  const session = await sessionOf(context, site);
  if (session === undefined) return "nobody";
  const { community, person, standing } = session.guest;
  const now = await site.pages.standing(community, person, standing);
  return now === "keeper" || now === "owner" ? session : "no keeper";
}
