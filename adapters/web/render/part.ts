/** The page of a part kind: when each version was fitted, the versions side by side, each by itself, the tells with their drawings. */
import { type Block, effortWords, sayClaim, whereItComesFrom, wordedFor } from "../../../bot/index.ts";
import { type Feature, type Handbook, sourceById } from "../../../knowledge/index.ts";
import type { Drawings } from "../drawings.ts";
import type { PartPage } from "../handbook-page.ts";
import { chat, handbookPage } from "../phrases.ts";
import { renderBlocks, sourceList } from "./blocks.ts";
import { periodsFigure } from "./fitted.ts";
import { editionWords, searchForm } from "./handbook.ts";
import { html, type Markup } from "./markup.ts";

export function renderPart(handbook: Handbook, page: PartPage, drawings: Drawings): Markup {
  const { part } = page;
  const rendering = { drawings, units: "metric", part: part.id } as const;
  const pins =
    page.pins.length === 0
      ? html`<p class="aside">${handbookPage.noPins}</p>`
      : renderBlocks(page.pins, rendering);
  return html`<article class="record">
<h1>${capitalised(part.name)}</h1>
<p class="edition">${editionWords(handbook)}</p>
<div class="beside">${drawingOf(handbook, drawings, part.drawing)}<div><p>${part.summary}</p><p class="onward"><a href="/?text=${encodeURIComponent(chat.whichIsThis(part.name))}#say">${handbookPage.askAbout(part.name)}</a></p>${contents(handbook, page)}</div></div>
<section id="pinned"><h2>${handbookPage.pinned}</h2>${pins}</section>
<section id="when"><h2>${handbookPage.when}</h2>${periodsFigure(handbook, page, drawings)}${renderBlocks(page.timelines, rendering)}</section>
<section id="wanted"><h2>${wordedFor(handbook, handbookPage.wanted)}</h2><p>${handbookPage.whose[page.shown.why](page.shown.id)}</p>${renderBlocks(page.wanted, rendering)}</section>
<section id="side-by-side"><h2>${handbookPage.sideBySide}</h2>${sideBySide(handbook, page)}</section>
<section id="each"><h2>${handbookPage.each}</h2>${part.variants.map((variant) => version(handbook, page, variant, drawings))}</section>
<section id="tells"><h2>${handbookPage.tells}</h2>${part.features.map((feature) => tell(handbook, feature, drawings))}</section>
${misbeliefs(handbook, page)}
${sourcesSection(handbook, page)}
${searchForm("")}
</article>`;
}

function contents(handbook: Handbook, { part }: PartPage): Markup {
  const links: readonly (readonly [string, string])[] = [
    ["pinned", handbookPage.pinned],
    ["when", handbookPage.when],
    ["wanted", wordedFor(handbook, handbookPage.wanted)],
    ["side-by-side", handbookPage.sideBySide],
    ["each", handbookPage.each],
    ["tells", handbookPage.tells],
    ...(part.misbeliefs.length > 0 ? [["misbeliefs", handbookPage.misbeliefs] as const] : []),
    ["sources", handbookPage.sources],
  ];
  return html`<nav class="contents noprint" aria-label="${handbookPage.contents}"><ul>${links.map(([id, label]) => html`<li><a href="#${id}">${label}</a></li>`)}</ul></nav>`;
}

function sideBySide(handbook: Handbook, { part, chosen }: PartPage): Markup {
  // An old link may name kinds that have gone, and one alone is beside nothing.
  const picked = part.variants.filter(({ id }) => chosen.includes(id));
  const shown = picked.length > 1 ? picked : part.variants;
  const boxes = part.variants.map(
    ({ id, name }) =>
      html`<label><input type="checkbox" name="kind" value="${id}"${shown.some((one) => one.id === id) && html` checked`}> ${name}</label>`,
  );
  const head = shown.map(({ id, name }) => html`<th scope="col"><a href="#version-${id}">${name}</a></th>`);
  const rows = part.features.map(
    (feature) =>
      html`<tr><th scope="row"><a href="#tell-${feature.id}">${feature.name}</a></th>${shown.map(({ tells }) => html`<td>${sayClaim(feature, tells[feature.id])}</td>`)}</tr>`,
  );
  const origins = shown.map((variant) => html`<td>${wordedFor(handbook, whereItComesFrom(variant))}</td>`);
  return html`<form action="#side-by-side" class="choose noprint"><fieldset><legend>${handbookPage.choose}</legend>${boxes}</fieldset><button type="submit">${handbookPage.chosen}</button></form>
<section class="scroll" tabindex="0" aria-label="${handbookPage.sideBySide}"><table class="ruled columns"><thead><tr><th scope="col">${handbookPage.feature}</th>${head}</tr></thead><tbody><tr><th scope="row">${handbookPage.origin}</th>${origins}</tr>${rows}</tbody></table></section>`;
}

type Variant = PartPage["part"]["variants"][number];

function version(handbook: Handbook, { part }: PartPage, variant: Variant, drawings: Drawings): Markup {
  const twins = variant.resembles.flatMap((id) => part.variants.find((one) => one.id === id) ?? []);
  const rows: readonly (readonly [string, Markup | string])[] = [
    ...(variant.material === undefined ? [] : [[handbookPage.material, variant.material] as const]),
    ...(variant.needs.length === 0 ? [] : [[handbookPage.needs, variant.needs.join("; ")] as const]),
    ...(twins.length === 0
      ? []
      : [
          [
            handbookPage.resembles,
            html`${twins.map(({ id, name }, index) => html`${index > 0 && "; "}<a href="#version-${id}">${name}</a>`)}`,
          ] as const,
        ]),
    [handbookPage.sources, shortly(handbook, variant.sources)],
  ];
  return html`<section class="version" id="version-${variant.id}"><h3>${variant.name}</h3>
<div class="beside">${drawingOf(handbook, drawings, variant.drawing)}<div><p class="aside">${wordedFor(handbook, whereItComesFrom(variant))}</p><p>${variant.summary}</p>${variant.remarks.map((remark) => html`<p>${remark}</p>`)}
<dl class="facts">${rows.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl></div></div></section>`;
}

function tell(handbook: Handbook, feature: Feature, drawings: Drawings): Markup {
  const tools = feature.tools.length === 0 ? "" : ` · ${handbookPage.tools}: ${feature.tools.join(", ")}`;
  const photograph = feature.photograph && html` ${handbookPage.photographDoes}`;
  return html`<section class="tell" id="tell-${feature.id}"><h3>${capitalised(feature.name)}</h3>
<div class="beside">${drawingOf(handbook, drawings, feature.drawing)}<div>
<p class="ask">${feature.question}</p>
${feature.why !== undefined && html`<p>${feature.why}</p>`}
<p><strong>${handbookPage.check}.</strong> ${feature.check}</p>
<p class="aside">${handbookPage.effort}: ${effortWords(feature.effort)}${tools}.${photograph} ${shortly(handbook, feature.sources, true)}</p>
</div></div>${states(handbook, feature, drawings)}</section>`;
}

function states(handbook: Handbook, feature: Feature, drawings: Drawings): Markup | undefined {
  if (feature.kind !== "states") return undefined;
  const items = feature.states.map(
    ({ name, drawing }) => html`<li>${drawingOf(handbook, drawings, drawing, true)}<span>${name}</span></li>`,
  );
  return html`<ul class="states">${items}</ul>`;
}

function misbeliefs(handbook: Handbook, { part }: PartPage): Markup | undefined {
  if (part.misbeliefs.length === 0) return undefined;
  const rows = part.misbeliefs.map(
    ({ id, claim, correction, sources }) =>
      html`<div id="said-${id}"><dt>“${claim}”</dt><dd>${correction} ${shortly(handbook, sources, true)}</dd></div>`,
  );
  return html`<section id="misbeliefs"><h2>${handbookPage.misbeliefs}</h2><dl class="stacked">${rows}</dl></section>`;
}

function sourcesSection(handbook: Handbook, { part }: PartPage): Markup {
  const ids = [
    ...part.variants.flatMap(({ sources, fitted, tells }) => [
      ...sources,
      ...fitted.flatMap((period) => period.sources),
      ...Object.values(tells).flatMap((claim) => claim.sources),
    ]),
    ...part.features.flatMap(({ sources }) => sources),
    ...part.misbeliefs.flatMap(({ sources }) => sources),
  ];
  const items: Extract<Block, { kind: "sources" }>["items"] = [...new Set(ids)].flatMap(
    (id) => sourceById(handbook, id) ?? [],
  );
  const list = items.length === 0 ? html`<p>${handbookPage.noSources}</p>` : sourceList(items);
  return html`<section id="sources"><h2>${handbookPage.sources}</h2>${list}</section>`;
}

function shortly(handbook: Handbook, ids: readonly string[], isAside = false): Markup | string {
  const shorts = ids.flatMap((id) => sourceById(handbook, id)?.short ?? []);
  if (shorts.length === 0) return isAside ? "" : handbookPage.noSources;
  return html`<span class="source">[${shorts.join("; ")}]</span>`;
}

function drawingOf(
  handbook: Handbook,
  drawings: Drawings,
  path: string | undefined,
  isSmall = false,
): Markup | undefined {
  const svg = path === undefined ? undefined : handbook.drawings.get(path);
  if (svg === undefined) return undefined;
  const size = isSmall ? html` width="160" height="100"` : html` width="320" height="200"`;
  return html`<img class="drawing" src="${drawings.address(svg)}" alt="${drawings.words(svg)}"${size}>`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
