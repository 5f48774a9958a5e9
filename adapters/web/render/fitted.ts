/** The timeline of fitted periods as a drawing, and the same as a table for whoever cannot see it or wants the words. */
import { whereItComesFrom } from "../../../bot/index.ts";
import { type Interval, parseDateText } from "../../../knowledge/index.ts";
import { type FittedRow, fittedPeriods } from "../../pictures/fitted-periods.ts";
import type { Drawings } from "../drawings.ts";
import type { PartPage } from "../handbook-page.ts";
import { handbookPage } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";

export function periodsFigure(page: PartPage, drawings: Drawings): Markup {
  const { part, changes, sightings } = page;
  const shown = part.variants.filter(
    ({ id, fitted }) => fitted.length > 0 || sightings.some(({ variant }) => variant === id),
  );
  const rows = shown.map(
    ({ id, name, fitted }): FittedRow => ({
      name,
      bars: fitted.flatMap((period) => {
        const span = spanOf(period.from, period.to);
        return span === undefined
          ? []
          : [{ span, isStartSure: period.start === "exact", isEndSure: period.end === "exact" }];
      }),
      marks: sightings.filter(({ variant }) => variant === id),
    }),
  );
  const words = shown.map((variant) => `${variant.name}: ${whereItComesFrom(variant)}`);
  const svg = fittedPeriods({
    title: `${handbookPage.when}: ${part.name}`,
    description: words.join(". "),
    rows,
    changes: changes.flatMap(({ from, to, interval, words: said }) => {
      const places = [from, to].map((id) => shown.findIndex((variant) => variant.id === id));
      const [first = -1, second = -1] = places;
      return first < 0 || second < 0 ? [] : [{ from: first, to: second, interval, words: said }];
    }),
  });
  if (svg === undefined) return html`<p class="aside">${handbookPage.noSources}</p>`;
  const table = shown.map(
    (variant) => html`<tr><th scope="row">${variant.name}</th><td>${whereItComesFrom(variant)}</td></tr>`,
  );
  return html`<figure class="periods"><img src="${drawings.address(svg)}" alt="${words.join(". ")}"><figcaption>${handbookPage.whenHint}</figcaption></figure>
${changes.map(({ words: said }) => html`<p>${said}</p>`)}
<table class="ruled"><thead><tr><th scope="col">${handbookPage.version}</th><th scope="col">${handbookPage.period}</th></tr></thead><tbody>${table}</tbody></table>`;
}

function spanOf(from: string, to: string): Interval | undefined {
  const first = parseDateText(from);
  const last = parseDateText(to);
  return first && last && { from: first.from, to: last.to };
}
