/** Signing in by a single-use link, and out again. The link shows a button; only pressing it uses the link up. */
import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { clientAddress } from "../client-address.ts";
import { formBytes } from "../limits.ts";
import { signIn } from "../phrases.ts";
import { html } from "../render/markup.ts";
import { goTo, refuse, showPage } from "../respond.ts";
import { isFromHere } from "../same-origin.ts";
import { endSession, openSession, sessionOf } from "../sessions.ts";
import { takeSignInLink } from "../sign-in-links.ts";
import type { Site } from "../site.ts";
import { formOf } from "../uploads.ts";
import { hasToken, knownVisitor, visitorOf } from "../visitor.ts";

export function signInRoutes(app: Hono, site: Site): void {
  const small = bodyLimit({ maxSize: formBytes, onError: (context) => refuse(context, site, "tooLarge") });

  app.get("/sign-in", (context) => {
    const main = html`<h1>${signIn.title}</h1><p>${signIn.how}</p>`;
    return showPage(context, site, { title: signIn.title, place: "desk", main, isPrivate: true });
  });

  app.get("/sign-in/:community/:secret", (context) => {
    const { formToken } = visitorOf(context, site.isSecure);
    const { community, secret } = context.req.param();
    const action = `/sign-in/${encodeURIComponent(community)}/${encodeURIComponent(secret)}`;
    const main = html`<h1>${signIn.title}</h1><p>${signIn.ready}</p>
<form method="post" action="${action}"><input type="hidden" name="token" value="${formToken}"><button type="submit" class="main">${signIn.button}</button></form>`;
    return showPage(context, site, { title: signIn.title, place: "desk", main, isPrivate: true });
  });

  app.post("/sign-in/:community/:secret", small, async (context) => {
    const visitor = knownVisitor(context, site.isSecure);
    const { fields } = await formOf(context);
    // Nobody is signed in as somebody else by a form of another page.
    const isOurs =
      isFromHere(context, site.address) && hasToken(fields.token ?? "", visitor?.formToken ?? "");
    if (visitor === undefined || !isOurs) return refuse(context, site, "stale");
    if (!site.limits.signIn.take(clientAddress(context, site))) return refuse(context, site, "tooMuch");
    const { community, secret } = context.req.param();
    const guest = await takeSignInLink(site.store, site.clock, community, secret);
    if (guest === undefined) {
      site.metrics.refused("sign-in");
      context.status(403);
      const main = html`<h1>${signIn.title}</h1><p>${signIn.spent}</p><p>${signIn.how}</p>`;
      return showPage(context, site, { title: signIn.title, place: "desk", main, isPrivate: true });
    }
    await openSession(context, site, guest);
    return goTo(context, "/desk");
  });

  app.post("/sign-out", small, async (context) => {
    const session = await sessionOf(context, site);
    const { fields } = await formOf(context);
    const isOurs =
      isFromHere(context, site.address) && hasToken(fields.token ?? "", session?.formToken ?? "");
    if (session === undefined || !isOurs) return refuse(context, site, "stale");
    await endSession(context, site);
    const main = html`<h1>${signIn.isOut}</h1>`;
    return showPage(context, site, { title: signIn.isOut, main, isPrivate: true });
  });
}
