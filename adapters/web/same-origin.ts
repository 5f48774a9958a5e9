/**
 * Whether a form comes from our own pages, as browsers tell: Sec-Fetch-Site where they send it, else Origin. The token in the form is the
 * other half (OWASP, Cross-Site Request Forgery Prevention Cheat Sheet).
 */
import type { Context } from "hono";

/** False for a request that a browser says comes from another site; a client that says nothing is judged by its token alone. */
export function isFromHere(context: Context, address: string): boolean {
  const site = context.req.header("sec-fetch-site");
  if (site !== undefined) return site === "same-origin" || site === "none";
  const origin = context.req.header("origin");
  if (origin === undefined) return true;
  return origin === address || origin === new URL(context.req.url).origin;
}
