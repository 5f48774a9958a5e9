/** The page of a shared answer: what was asked, what was seen, the answer with its weights, what is open, the sources, how to cite it. */
import type { AnswerCard } from "../../../bot/index.ts";
import { dayWords } from "../day-words.ts";
import type { Drawings } from "../drawings.ts";
import { answerPage } from "../phrases.ts";
import { renderBlocks, sourceList } from "./blocks.ts";
import { standingRows } from "./figures.ts";
import { html, type Markup } from "./markup.ts";

export interface AnswerPage {
  readonly card: AnswerCard;
  readonly at: number;
  /** The page's own, for citing it. */
  readonly address: string;
  readonly drawings: Drawings;
  /** The form with which its asker withdraws it. */
  readonly withdraw?: Markup;
}

/** "Rear spoiler: First spoiler with drains, very likely (92 %)". */
export function answerTitle({ partName, standing: [first] }: AnswerCard): string {
  const name = `${partName.charAt(0).toUpperCase()}${partName.slice(1)}`;
  return first === undefined ? name : `${name}: ${first.name}, ${first.words}`;
}

export function renderAnswer({ card, at, address, drawings, withdraw }: AnswerPage): Markup {
  const title = answerTitle(card);
  const answer = card.answer.filter((block) => block.kind !== "standing");
  const rendering = { drawings, units: "metric", part: card.part } as const;
  const handbookPath = `/handbook/${card.handbook}/${card.part}`;
  return html`<article class="record">
<h1>${title}</h1>
<p class="aside">${answerPage.sharedOn(dayWords(at))} · ${card.edition}</p>
<section><h2>${answerPage.asked}</h2><p>${answerPage.wanted(card.partName, card.goal)}</p></section>
${facts(card)}
<section><h2>${answerPage.standing}</h2>${standingRows(card.standing)}</section>
<section><h2>${answerPage.answer}</h2>${renderBlocks(answer, rendering)}</section>
${card.settle !== undefined && html`<section><h2>${answerPage.open}</h2><p>${card.settle}</p></section>`}
${card.sources?.kind === "sources" && html`<section><h2>${answerPage.sources}</h2>${sourceList(card.sources.items)}</section>`}
<section class="cite"><h2>${answerPage.cite}</h2><p class="hint">${answerPage.citeHint}</p>
<blockquote id="cite" data-copy="${answerPage.copy}" data-copied="${answerPage.copied}">${answerPage.citation(title, card.edition, dayWords(at), address)}</blockquote></section>
<p class="onward"><a href="${handbookPath}">${card.partName}</a> · <a href="/">${answerPage.askYourself}</a></p>
${withdraw}
</article>`;
}

function facts({ thing, car, seen, untold }: AnswerCard): Markup {
  const cars = car.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`);
  const rows = seen.map(({ label, value, words, isAskers }) => {
    const notes = [words !== "" && answerPage.saidAs(words), !isAskers && answerPage.bySomebodyElse];
    const shown = notes.filter((note) => note !== false).join(", ");
    return html`<div><dt>${label}</dt><dd>${value}${shown !== "" && html` <span class="aside">${shown}</span>`}</dd></div>`;
  });
  return html`${cars.length > 0 && html`<section><h2>${answerPage.thing(thing)}</h2><dl class="facts">${cars}</dl></section>`}
<section><h2>${answerPage.seen}</h2>${rows.length > 0 ? html`<dl class="facts">${rows}</dl>` : html`<p>${answerPage.nothingSeen}</p>`}
${untold.length > 0 && html`<p class="aside">${answerPage.couldNotTell(untold.join("; "))}</p>`}</section>`;
}
