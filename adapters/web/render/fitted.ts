/** The timeline of fitted periods as a drawing, and the same as a table for whoever cannot see it or wants the words. */
import { fittedChart, whereItComesFrom, wordedFor } from "../../../bot/index.ts";
import type { Handbook } from "../../../knowledge/index.ts";
import { fittedPeriods } from "../../pictures/fitted-periods.ts";
import type { Drawings } from "../drawings.ts";
import type { PartPage } from "../handbook-page.ts";
import { handbookPage } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";

export function periodsFigure(
  handbook: Handbook,
  { part, changes, sightings }: PartPage,
  drawings: Drawings,
): Markup {
  const known = changes.map(({ from, to, interval }) => ({ old: from, new: to, interval }));
  const chart = fittedChart(part, { changes: known, sightings });
  if (chart === undefined) return html`<p class="aside">${handbookPage.noSources}</p>`;
  const table = chart.rows.flatMap(({ variant: id, name }) =>
    part.variants
      .filter((variant) => variant.id === id)
      .map(
        (variant) =>
          html`<tr><th scope="row">${name}</th><td>${wordedFor(handbook, whereItComesFrom(variant))}</td></tr>`,
      ),
  );
  const address = drawings.address(fittedPeriods(chart));
  return html`<figure class="periods"><img src="${address}" alt="${wordedFor(handbook, chart.description)}"><figcaption>${wordedFor(handbook, handbookPage.whenHint)}</figcaption></figure>
${changes.map(({ words: said }) => html`<p>${said}</p>`)}
<table class="ruled"><thead><tr><th scope="col">${handbookPage.version}</th><th scope="col">${handbookPage.period}</th></tr></thead><tbody>${table}</tbody></table>`;
}
