/** All routes with what stands before them: headers, measuring, the limit on requests. Callable without a network, as the tests do. */
import type { Context, MiddlewareHandler } from "hono";
import { Hono } from "hono";
import { matchedRoutes } from "hono/route";
import { UnavailableError } from "../errors.ts";
import { clientAddress } from "./client-address.ts";
import { isWebhook, refuse } from "./respond.ts";
import { answerRoutes } from "./routes/answer.ts";
import { carSheetRoutes } from "./routes/car-sheet.ts";
import { chatRoutes } from "./routes/chat.ts";
import { deskRoutes } from "./routes/desk.ts";
import { deskExportRoutes } from "./routes/desk-export.ts";
import { doorRoutes } from "./routes/doors.ts";
import { embedRoutes } from "./routes/embed.ts";
import { fileRoutes } from "./routes/files.ts";
import { handbookRoutes } from "./routes/handbook.ts";
import { signInRoutes } from "./routes/sign-in.ts";
import { watchingRoutes } from "./routes/watching.ts";
import { webhookRoutes } from "./routes/webhook.ts";
import { isFromHere } from "./same-origin.ts";
import { securityHeaders } from "./security-headers.ts";
import type { Site } from "./site.ts";
import { formOf } from "./uploads.ts";

export function applicationOf(site: Site): Hono {
  const app = new Hono();
  app.use(measured(site));
  app.use(securityHeaders);
  watchingRoutes(app, site);
  app.use(limited(site));
  fileRoutes(app, site);
  chatRoutes(app, site);
  answerRoutes(app, site);
  carSheetRoutes(app, site);
  handbookRoutes(app, site);
  doorRoutes(app, site);
  embedRoutes(app, site);
  webhookRoutes(app, site);
  signInRoutes(app, site);
  deskRoutes(app, site);
  deskExportRoutes(app, site);
  app.notFound((context) => refuse(context, site, "notFound"));
  app.onError(async (failure, context) => {
    // Whoever hung up in the middle waits for no answer, and is no fault of ours.
    if (context.req.raw.signal.aborted) return context.body(null, 400);
    const why = failure instanceof UnavailableError ? "unavailable" : "fault";
    const told = { err: failure, route: routeOf(context) };
    if (why === "fault") site.log.error(told, "request failed");
    else site.log.warn(told, "request could not be answered now");
    return refuse(context, site, why, await sentBy(context, site));
  });
  return app;
}

/** What a form of ours had brought. */
async function sentBy(context: Context, { address }: Site): Promise<Readonly<Record<string, string>>> {
  const isForm = context.req.method === "POST" && !isWebhook(context) && isFromHere(context, address);
  return isForm ? (await formOf(context)).fields : {};
}

function limited(site: Site): MiddlewareHandler {
  return async (context, next) => {
    if (site.limits.requests.take(clientAddress(context, site))) return next();
    site.metrics.refused("rate");
    return refuse(context, site, "tooMuch");
  };
}

/** Times each request by its route; addresses, names and what was asked for never get into a log or a metric. */
function measured({ clock, metrics, log }: Site): MiddlewareHandler {
  return async (context, next) => {
    const begun = clock.milliseconds();
    await next();
    const milliseconds = clock.milliseconds() - begun;
    const route = routeOf(context);
    const { method } = context.req;
    const { status } = context.res;
    metrics.request(route, method, status, milliseconds / 1000);
    if (status >= 500) log.warn({ route, method, status, milliseconds }, "request answered");
    else log.debug({ route, method, status, milliseconds }, "request answered");
  };
}

function routeOf(context: Context): string {
  const route = matchedRoutes(context).findLast(({ path }) => path !== "/*" && path !== "*");
  return route?.path ?? "none";
}
