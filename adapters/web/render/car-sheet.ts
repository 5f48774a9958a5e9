/** The page of one car: every part kind with its answer and what it rests on, what nobody has looked at, photographs, date and edition. */
import type { CarSheet, SheetPart } from "../../../bot/index.ts";
import type { Drawings } from "../drawings.ts";
import { answerPage, carSheet } from "../phrases.ts";
import { renderBlocks, sourceList } from "./blocks.ts";
import { standingRows } from "./figures.ts";
import { html, type Markup } from "./markup.ts";

export function renderCarSheet(sheet: CarSheet, pdfPath: string, drawings: Drawings): Markup {
  const { handbookName, thing, car, parts, date, edition } = sheet;
  const looked = parts.filter(({ card }) => card !== undefined);
  const gaps = parts.filter(({ card }) => card === undefined);
  const facts = car.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`);
  return html`<article class="record">
<h1>${carSheet.title(thing, handbookName)}</h1>
<p class="aside">${answerPage.sharedOn(date)} · ${edition}</p>
<p class="onward"><a href="${pdfPath}">${carSheet.asPdf}</a></p>
<section><h2>${answerPage.thing(thing)}</h2>${facts.length > 0 ? html`<dl class="facts">${facts}</dl>` : html`<p>${carSheet.thingUnknown(thing)}</p>`}</section>
<section><h2>${carSheet.atAGlance}</h2>${glance(parts)}</section>
${looked.map((part) => partSection(part, sheet.handbook, drawings))}
${gaps.length > 0 && html`<section><h2>${carSheet.gaps}</h2><ul>${gaps.map(({ name }) => html`<li>${name}</li>`)}</ul></section>`}
${sources(looked)}
<p class="aside">${carSheet.judge}</p>
</article>`;
}

function glance(parts: readonly SheetPart[]): Markup {
  const rows = parts.map(({ name, part, card }) => {
    const [first] = card?.standing ?? [];
    const words = first === undefined ? carSheet.notLooked : `${first.name}, ${first.words}`;
    const shown = card === undefined ? name : html`<a href="#part-${part}">${name}</a>`;
    return html`<tr><th scope="row">${shown}</th><td>${words}</td></tr>`;
  });
  return html`<table class="ruled"><thead><tr><th scope="col">${carSheet.part}</th><th scope="col">${carSheet.verdict}</th></tr></thead><tbody>${rows}</tbody></table>`;
}

function partSection({ part, name, card, photographs }: SheetPart, book: string, drawings: Drawings): Markup {
  if (card === undefined) return html``;
  const seen = card.seen.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`);
  const pictures = photographs.map(
    (id, index) =>
      html`<figure class="picture"><img class="photograph" src="/photographs/${encodeURIComponent(id)}" alt="${carSheet.photograph(name, index + 1)}"></figure>`,
  );
  const answer = card.answer.filter(({ kind }) => kind !== "standing" && kind !== "sources");
  return html`<section id="part-${part}" class="sheetpart"><h2><a href="/handbook/${book}/${part}">${name}</a></h2>
<p class="aside">${answerPage.wanted(card.partName, card.goal)}</p>
${standingRows(card.standing.slice(0, 3))}
${renderBlocks(answer, { drawings, units: "metric", part })}
${seen.length > 0 && html`<h3>${answerPage.seen}</h3><dl class="facts">${seen}</dl>`}
${card.untold.length > 0 && html`<p class="aside">${answerPage.couldNotTell(card.untold.join("; "))}</p>`}
${card.settle !== undefined && html`<p>${card.settle}</p>`}${pictures}</section>`;
}

function sources(parts: readonly SheetPart[]): Markup {
  const all = sheetSources(parts);
  return all.length === 0
    ? html``
    : html`<section><h2>${answerPage.sources}</h2>${sourceList(all)}</section>`;
}

/** The sources of all parts, each once. */
export function sheetSources(parts: readonly SheetPart[]) {
  const all = parts.flatMap(({ card }) => (card?.sources?.kind === "sources" ? card.sources.items : []));
  return [...new Map(all.map((item) => [item.short, item])).values()];
}
