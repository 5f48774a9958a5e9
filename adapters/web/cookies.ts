/** The two cookies: whose conversation it is, and which keeper has signed in. Out of reach of scripts and of other sites. */
import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import { secretForm } from "./secrets.ts";

export type CookieName = "visitor" | "session";

const DAY_SECONDS = 86_400;
/** A visitor comes back to a conversation for a year; a keeper signs in anew each day. */
const ages: Readonly<Record<CookieName, number>> = { visitor: 365 * DAY_SECONDS, session: DAY_SECONDS / 2 };

/** The secret in a cookie; undefined when there is none of the right form. */
export function secretIn(context: Context, name: CookieName, isSecure: boolean): string | undefined {
  const value = getCookie(context, name, isSecure ? "host" : undefined);
  return value !== undefined && secretForm.test(value) ? value : undefined;
}

/**
 * Sets a cookie. A visitor's is Lax, so that who comes by a link from a forum finds the conversation again; a keeper's is Strict. Under
 * https it is bound to this host alone (prefix __Host-).
 */
export function giveSecret(context: Context, name: CookieName, secret: string, isSecure: boolean): void {
  setCookie(context, name, secret, {
    path: "/",
    httpOnly: true,
    sameSite: name === "session" ? "Strict" : "Lax",
    maxAge: secret === "" ? 0 : ages[name],
    ...(isSecure ? { secure: true, prefix: "host" as const } : {}),
  });
}

/** Takes a cookie back. */
export function takeSecret(context: Context, name: CookieName, isSecure: boolean): void {
  giveSecret(context, name, "", isSecure);
}
