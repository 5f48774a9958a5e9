/** Who speaks: a visitor, or a keeper who has signed in and is then known by the name they have in their community. */
import type { Context } from "hono";
import type { Speaker } from "./conversing.ts";
import { visitorCalled } from "./phrases.ts";
import { sessionOf } from "./sessions.ts";
import type { Site } from "./site.ts";
import type { Visitor } from "./visitor.ts";

export async function speakerOf(context: Context, site: Site, visitor: Visitor): Promise<Speaker> {
  const session = await sessionOf(context, site);
  const { conversation, person } = visitor;
  if (session === undefined) return { conversation, person, name: visitorName(person) };
  return { conversation, ...session.guest };
}

/** What a visitor is called by the keepers: enough to tell two apart. */
export function visitorName(person: string): string {
  return visitorCalled(person.replace(/[^0-9A-Za-z]/gu, "").slice(3, 7));
}
