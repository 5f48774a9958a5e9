/** Style, script and drawings: kept by the browser for ever, for their address changes with them. */
import type { Hono } from "hono";
import { refuse } from "../respond.ts";
import type { Site } from "../site.ts";
import { staticFile, versionOf } from "../static-files.ts";

const FOR_EVER = "public, max-age=31536000, immutable";
const AN_HOUR = "public, max-age=3600";

export function fileRoutes(app: Hono, site: Site): void {
  app.get("/static/:name", (context) => {
    const file = staticFile(context.req.param("name"));
    if (file === undefined) return refuse(context, site, "notFound");
    const caching = cachingOf(context.req.query("v"), versionOf(context.req.param("name")));
    const headers = { "content-type": file.type, "cache-control": caching, ...forAnybody };
    return context.body(file.text, 200, headers);
  });
  app.get("/drawings/:name", (context) => {
    const svg = site.drawings.found(context.req.param("name"));
    if (svg === undefined) return refuse(context, site, "notFound");
    const headers = {
      "content-type": "image/svg+xml",
      "cache-control": FOR_EVER,
      // Opened by itself a drawing is a document: it may style itself, and nothing else.
      "content-security-policy":
        "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'",
      ...forAnybody,
    };
    return context.body(svg, 200, headers);
  });
  app.get("/photographs/:id", async (context) => {
    const photograph = await site.photographs?.read(context.req.param("id"));
    if (photograph === undefined) return refuse(context, site, "notFound");
    return context.body(new Uint8Array(photograph.bytes), 200, {
      "content-type": photograph.mediaType,
      "cache-control": "private, max-age=3600",
      "content-security-policy": "default-src 'none'; sandbox; frame-ancestors 'none'",
    });
  });
}

/** Of two processes the older may be asked for what only the newer has: that must not be kept under its name. */
function cachingOf(asked: string | undefined, own: string): string {
  if (asked === undefined) return AN_HOUR;
  return asked === own ? FOR_EVER : "no-store";
}

/** Pages of forums may load these. */
const forAnybody = { "cross-origin-resource-policy": "cross-origin" } as const;
