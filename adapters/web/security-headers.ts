/**
 * What a browser may do with our pages: load from here alone, run no inline script, send forms here alone, stand in nobody's frame;
 * only the ask box may be framed. Content Security Policy Level 3 (W3C).
 */
import type { MiddlewareHandler } from "hono";

const policy = (frameAncestors: string) =>
  [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data:",
    "connect-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
    `frame-ancestors ${frameAncestors}`,
  ].join("; ");

const alone = policy("'none'");
const framed = policy("*");

/** Sets the headers before anything answers; an answer may set its own policy instead. Set afterwards they would cost the short way out. */
export const securityHeaders: MiddlewareHandler = async (context, next) => {
  const isEmbedded = /^\/embed(?:\/|$)/u.test(context.req.path);
  context.header("content-security-policy", isEmbedded ? framed : alone);
  context.header("x-content-type-options", "nosniff");
  // Not "no-referrer": forms would then come with the origin "null" (Fetch standard, "append a request Origin header").
  context.header("referrer-policy", "same-origin");
  context.header("cross-origin-opener-policy", "same-origin");
  context.header("cross-origin-resource-policy", isEmbedded ? "cross-origin" : "same-origin");
  context.header("permissions-policy", "camera=(), geolocation=(), microphone=()");
  context.header("cache-control", "no-store");
  if (!isEmbedded) context.header("x-frame-options", "DENY");
  await next();
};
