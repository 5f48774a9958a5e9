/** The frame that every page stands in: head, way round, content, foot. No inline script or style anywhere. */
import { mainNavigation, navigation, pageTitle, siteName, skipToContent } from "../phrases.ts";
import { html, type Markup, type Piece } from "./markup.ts";

export type Place = "ask" | "handbook" | "desk" | "doors";

export interface PageContent {
  readonly title: string;
  readonly main: Piece;
  /** Which entry of the way round is this page's. */
  readonly place?: Place;
  /** What a search engine or a forum's preview shows. */
  readonly description?: string;
  /** Not for search engines: private pages, and the desk. */
  readonly isPrivate?: boolean;
  /** Stands inside somebody else's page: no head, no foot. */
  readonly isEmbedded?: boolean;
  readonly foot?: Piece;
  /** For tables; text keeps its measure. */
  readonly isWide?: boolean;
}

/** The style and the script are asked for by their digest, so that they are kept for ever and change at once. */
export interface Assets {
  readonly styles: string;
  readonly script: string;
}

const places: readonly { readonly place: Place; readonly path: string; readonly label: string }[] = [
  { place: "ask", path: "/", label: navigation.ask },
  { place: "handbook", path: "/handbook", label: navigation.handbook },
  { place: "desk", path: "/desk", label: navigation.desk },
];

/** A whole HTML document. */
export function page(content: PageContent, assets: Assets): string {
  const { title, main, description, isPrivate, isEmbedded, isWide } = content;
  const body = isEmbedded
    ? html`<main id="content" class="embedded">${main}</main>`
    : html`<a class="skip" href="#content">${skipToContent}</a>
<header class="head"><p class="mark"><a href="/">${siteName}</a></p>${wayRound(content.place)}</header>
<main id="content" tabindex="-1">${main}</main>
<footer class="foot">${content.foot}<p><a href="/doors">${navigation.doors}</a></p></footer>`;
  return `<!doctype html>\n${
    html`<html lang="en">
<head>
<meta charset="utf-8">
<title>${pageTitle(title)}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${description !== undefined && html`<meta name="description" content="${description}">`}
${isPrivate && html`<meta name="robots" content="noindex">`}
<link rel="icon" href="/static/mark.svg" type="image/svg+xml">
<link rel="stylesheet" href="${assets.styles}">
<script src="${assets.script}" defer></script>
</head>
<body${isWide && html` class="wide"`}>
${body}
</body>
</html>`.markup
  }\n`;
}

function wayRound(here: Place | undefined): Markup {
  const entries = places.map(
    ({ place, path, label }) =>
      html`<li><a href="${path}"${place === here && html` aria-current="page"`}>${label}</a></li>`,
  );
  return html`<nav aria-label="${mainNavigation}"><ul>${entries}</ul></nav>`;
}
