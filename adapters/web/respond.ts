/** Answers that every route gives in the same way: a page, a refusal, a step on to another page. */
import type { Context } from "hono";
import { refusals } from "./phrases.ts";
import { html } from "./render/markup.ts";
import { type PageContent, page } from "./render/page.ts";
import type { Site } from "./site.ts";

type Refusal = "notFound" | "tooMuch" | "tooLarge" | "stale" | "notAllowed" | "fault";
const statuses = {
  notFound: 404,
  tooMuch: 429,
  tooLarge: 413,
  stale: 403,
  notAllowed: 403,
  fault: 500,
} as const;

export function showPage(context: Context, site: Pick<Site, "assets">, content: PageContent): Response {
  return context.html(page(content, site.assets)) as Response;
}

/** A page that says what was refused and what to do. */
export function refuse(context: Context, site: Pick<Site, "assets">, why: Refusal): Response {
  const title = refusals[why];
  const text = refusals[`${why}Text`];
  const main = html`<h1>${title}</h1><p>${text}</p>`;
  const isEmbedded = context.req.path.startsWith("/embed");
  return context.html(
    page({ title, main, isPrivate: true, isEmbedded }, site.assets),
    statuses[why],
  ) as Response;
}

/** After a form: the browser asks for this page, so that opening it again sends nothing twice. */
export function goTo(context: Context, path: string): Response {
  return context.redirect(path, 303);
}
