/** Answers that every route gives in the same way: a page, a refusal, a step on to another page. */
import type { Context } from "hono";
import { refusals } from "./phrases.ts";
import { html, type Markup, type Piece } from "./render/markup.ts";
import { type PageContent, page } from "./render/page.ts";
import type { Site } from "./site.ts";

type Refusal = keyof typeof statuses;
const statuses = {
  notFound: 404,
  tooMuch: 429,
  tooLarge: 413,
  noAnswer: 409,
  stale: 403,
  notAllowed: 403,
  fault: 500,
  unavailable: 503,
} as const;
/** As the page says. */
const SECONDS_TO_WAIT = 60;

export function showPage(context: Context, site: Pick<Site, "assets">, content: PageContent): Response {
  return context.html(page(content, site.assets)) as Response;
}

/** A page that says what was refused and what to do. `sent`: what a person had written, so that it is not lost with the refusal. */
export function refuse(
  context: Context,
  site: Pick<Site, "assets">,
  why: Refusal,
  sent: Readonly<Record<string, string>> = {},
): Response {
  const title = refusals[why];
  const text = refusals[`${why}Text`];
  const main = html`<h1>${title}</h1><p data-refusal="${title}. ${text}">${text}</p>${why === "stale" && openAgain(context)}${whatWasSent(sent)}`;
  if (why === "tooMuch" || why === "unavailable") context.header("retry-after", `${SECONDS_TO_WAIT}`);
  if (isWebhook(context)) return context.json({ problem: `${title}. ${text}` }, statuses[why]) as Response;
  const isEmbedded = context.req.path.startsWith("/embed");
  return context.html(
    page({ title, main, isPrivate: true, isEmbedded }, site.assets),
    statuses[why],
  ) as Response;
}

/** Whoever sends posts reads no pages. */
export function isWebhook(context: Context): boolean {
  return context.req.path.startsWith("/webhook/");
}

/** Where what has grown old is had anew. */
function openAgain({ req }: Context): Markup {
  const place = ["/desk", "/embed"].find((path) => req.path.startsWith(path)) ?? "/";
  return html`<p><a href="${place}">${refusals.openAgain}</a></p>`;
}

const writtenFields = ["question", "answer", "reason", "text", "reading", "words"] as const;

function whatWasSent(sent: Readonly<Record<string, string>>): Piece {
  const written = writtenFields.map((name) => sent[name] ?? "").filter((words) => words.trim() !== "");
  if (written.length === 0) return undefined;
  // The first line end in such a field is left out by browsers.
  return html`<label for="sent">${refusals.sent}</label><textarea id="sent" rows="6" readonly>\n${written.join("\n")}</textarea>`;
}

/** After a form: the browser asks for this page, so that opening it again sends nothing twice. */
export function goTo(context: Context, path: string): Response {
  return context.redirect(path, 303);
}
