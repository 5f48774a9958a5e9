/** For whatever watches the process: does it live, does it take messages, and how is it doing. */
import type { Hono } from "hono";
import type { Site } from "../site.ts";

export function watchingRoutes(app: Hono, site: Pick<Site, "isReady" | "metrics">): void {
  app.get("/healthz", (context) => context.text("alive\n"));
  app.get("/readyz", (context) =>
    site.isReady() ? context.text("ready\n") : context.text("not ready\n", 503),
  );
  app.get("/metrics", async (context) =>
    context.body(await site.metrics.text(), 200, { "content-type": site.metrics.contentType }),
  );
  for (const path of ["/healthz", "/readyz", "/metrics"]) {
    app.all(path, (context) => context.text("only GET and HEAD\n", 405, { allow: "GET, HEAD" }));
  }
}
