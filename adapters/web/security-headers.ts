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

/** Sets the headers on every answer that has not set its own policy. */
export const securityHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  const { headers } = context.res;
  const isEmbedded = /^\/embed(?:\/|$)/u.test(context.req.path);
  const own: readonly (readonly [string, string])[] = [
    ["content-security-policy", isEmbedded ? framed : alone],
    ["x-content-type-options", "nosniff"],
    ["referrer-policy", "no-referrer"],
    ["cross-origin-opener-policy", "same-origin"],
    ["cross-origin-resource-policy", isEmbedded ? "cross-origin" : "same-origin"],
    ["permissions-policy", "camera=(), geolocation=(), microphone=()"],
    ["cache-control", "no-store"],
  ];
  for (const [name, value] of own) if (!headers.has(name)) headers.set(name, value);
  if (!isEmbedded) headers.set("x-frame-options", "DENY");
};
