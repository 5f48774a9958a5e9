/** The handbook's contents and the results of a search. */
import { formatInterval, type Handbook, parseDateText, shortEdition } from "../../../knowledge/index.ts";
import type { Drawings } from "../drawings.ts";
import type { Entry } from "../handbook-search.ts";
import { handbookPage } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";

export function renderContents(handbooks: readonly Handbook[], drawings: Drawings): Markup {
  return html`<h1>${handbookPage.title}</h1>${searchForm("")}${handbooks.map((handbook) => bookContents(handbook, drawings))}`;
}

export function renderFound(words: string, entries: readonly Entry[]): Markup {
  const rows = entries.map(
    ({ kind, name, context, path }) =>
      html`<li><a href="${path}">${name}</a> <span class="aside">${handbookPage.kinds[kind]} · ${context}</span></li>`,
  );
  return html`<h1>${handbookPage.title}</h1>${searchForm(words)}
<p role="status">${handbookPage.found(entries.length, words)}</p><ul class="found">${rows}</ul>`;
}

export function searchForm(words: string): Markup {
  return html`<form action="/handbook" class="search" role="search"><label for="q">${handbookPage.search}</label><span class="row"><input id="q" name="q" type="search" value="${words}" maxlength="120" aria-describedby="q-hint"><button type="submit">${handbookPage.search}</button></span><span class="hint" id="q-hint">${handbookPage.searchHint}</span></form>`;
}

/** "Wexcombe Shrike, edition 3f2a91c0, closed March 2024". */
export function editionWords({ cover, edition }: Handbook): string {
  const edited = parseDateText(cover.edited);
  const month = edited === undefined ? cover.edited : formatInterval(edited);
  return handbookPage.edition(cover.name, shortEdition(edition), month);
}

function bookContents(handbook: Handbook, drawings: Drawings): Markup {
  const { cover, parts, drawings: own } = handbook;
  const cards = parts.map(({ id, name, summary, variants, drawing }) => {
    const svg = drawing === undefined ? undefined : own.get(drawing);
    const picture =
      svg !== undefined &&
      html`<img class="drawing" src="${drawings.address(svg)}" alt="" width="160" height="100">`;
    return html`<li>${picture}<div><h3><a href="/handbook/${cover.id}/${id}">${name}</a></h3><p>${summary}</p><p class="aside">${handbookPage.versions(variants.length)}</p></div></li>`;
  });
  return html`<section><h2>${cover.name}</h2><p>${cover.summary}</p>
<p class="edition">${editionWords(handbook)}</p>
<ul class="cards">${cards}</ul></section>`;
}
