/**
 * Who speaks on the pages: somebody known by a random secret in a cookie, or, inside a frame, where cookies do not reach, in the form
 * itself. Only digests of it leave this file, so the store holds nothing that could be used to pose as anybody.
 */
import type { Context } from "hono";
import { giveSecret, secretIn } from "./cookies.ts";
import { digestOf, isSameSecret, newSecret, secretForm } from "./secrets.ts";

export interface Visitor {
  readonly conversation: string;
  readonly person: string;
  /** Goes with every form of this visitor; another site cannot know it. */
  readonly formToken: string;
}

/** The visitor of a request, a new one when there is none yet. The answer sets the cookie, which lasts a year from the last visit. */
export function visitorOf(context: Context, isSecure: boolean): Visitor {
  const secret = secretIn(context, "visitor", isSecure) ?? newSecret();
  giveSecret(context, "visitor", secret, isSecure);
  return visitorBehind(secret);
}

/** The visitor of a request that must have one already. */
export function knownVisitor(context: Context, isSecure: boolean): Visitor | undefined {
  const known = secretIn(context, "visitor", isSecure);
  return known === undefined ? undefined : visitorBehind(known);
}

/** The visitor of a frame, by the secret its form carries; undefined for one of the wrong form. */
export function framedVisitor(secret: string): Visitor | undefined {
  return secretForm.test(secret) ? visitorBehind(secret) : undefined;
}

export function hasToken(token: string, expected: string): boolean {
  return isSameSecret(token, expected);
}

function visitorBehind(secret: string): Visitor {
  const place = digestOf(secret, "place").slice(0, 22);
  return { conversation: `web:${place}`, person: `web:${place}`, formToken: digestOf(secret, "form") };
}
