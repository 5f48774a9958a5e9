/**
 * What aligns: the standing with a bar a row, the evidence as a balance. Drawn as SVG with plain attributes, because the pages allow no
 * inline style; length carries the weight and hatching the side, so that both read in black and white.
 */
import type { Block } from "../../../bot/index.ts";
import { evidence } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";

type Standing = Extract<Block, { kind: "standing" }>;
type Evidence = Extract<Block, { kind: "evidence" }>;

const LENGTH = 200;
/** Wide and low, so that the bars lie close under their words. */
const SPAN = 480;
const HALF = SPAN / 2;
/** Two bans, a hundred to one, fill a side. */
const FULL_BANS = 2;
const HATCH = 4;

/** Names with their probability in words and a bar; the words are the number, so the bar is for the eye alone. */
export function standingRows(items: Standing["items"]): Markup {
  const rows = items.map(
    ({
      name,
      words,
      probability,
    }) => html`<li><span class="name">${name}</span> <span class="words">${words}</span>
<svg class="bar" viewBox="0 0 ${LENGTH} 8" preserveAspectRatio="none" aria-hidden="true"><rect class="track" width="${LENGTH}" height="8"/><rect class="full" width="${rounded(probability * LENGTH)}" height="8"/></svg></li>`,
  );
  return html`<ol class="standing">${rows}</ol>`;
}

/** The balance: facts in words, each over its bar, from the centre line to the side it speaks for. */
export function evidenceBalance({ first, rival, items }: Evidence): Markup {
  const rows = items.map(({ words, bans, strength, sources }) => {
    const side = bans > 0 ? first : rival;
    return html`<li><p><span class="fact">${words}</span> <span class="aside">(<span class="unseen">${evidence.speaksFor(side)}, </span>${strength})</span>${sources !== "" && html` <span class="source">[${sources}]</span>`}</p>${balanceBar(bans)}</li>`;
  });
  return html`<figure class="evidence">
<div class="sides" aria-hidden="true"><span>◂ ${rival}</span><span>${first} ▸</span></div>
<ol>${rows}</ol>
<figcaption>${evidence.caption}</figcaption>
</figure>`;
}

function balanceBar(bans: number): Markup {
  const length = Math.min(HALF, (Math.abs(bans) / FULL_BANS) * HALF);
  const shown = Math.max(2, length);
  const bar =
    bans > 0
      ? html`<rect class="full" x="${HALF}" y="2" width="${rounded(shown)}" height="8"/>`
      : html`<path class="against" d="${hatched(HALF - shown, HALF)}"/>`;
  return html`<svg class="balance" viewBox="0 0 ${SPAN} 12" aria-hidden="true"><path class="axis" d="M0 11.5H${SPAN}"/>${bar}<path class="centre" d="M${HALF} 0V12"/></svg>`;
}

/** Outline and slanting strokes of a bar from `left` to `right`. */
function hatched(left: number, right: number): string {
  const strokes = [`M${rounded(left)} 2H${rounded(right)}V10H${rounded(left)}z`];
  for (let at = left + HATCH; at < right + 8; at += HATCH) {
    const bottom = Math.max(left, at - 8);
    const top = Math.min(right, at);
    strokes.push(`M${rounded(top)} ${rounded(2 + at - top)}L${rounded(bottom)} ${rounded(2 + at - bottom)}`);
  }
  return strokes.join("");
}

function rounded(length: number): number {
  return Math.round(length * 10) / 10;
}
