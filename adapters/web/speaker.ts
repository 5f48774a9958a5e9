/** Who speaks: a visitor, or a keeper who has signed in and is then known by the name they have in their community. */
import type { Context } from "hono";
import type { Speaker } from "./conversing.ts";
import { sessionOf } from "./sessions.ts";
import type { Site } from "./site.ts";
import type { Visitor } from "./visitor.ts";

export async function speakerOf(context: Context, site: Site, visitor: Visitor): Promise<Speaker> {
  const session = await sessionOf(context, site);
  const { conversation, person } = visitor;
  if (session === undefined) return { conversation, person };
  return { conversation, ...session.guest };
}
