/** Turns of a conversation as the page shows them: what was said, then the reply; only the newest can be answered by pressing. */
import type { Block } from "../../../bot/index.ts";
import { chat } from "../phrases.ts";
import type { Turn } from "../transcript.ts";
import { lines, renderBlocks } from "./blocks.ts";
import { html, type Markup } from "./markup.ts";
import type { Controls, Rendering } from "./rendering.ts";

/** All turns; the controls on the newest that answers something, and on what came unasked after it. */
export function renderTurns(turns: readonly Turn[], rendering: Rendering): Markup {
  const { controls: _, ...readOnly } = rendering;
  const newest = turns.findLastIndex(isAsked);
  return html`${turns.map((turn, index) => renderTurn(turn, index >= newest ? rendering : readOnly))}`;
}

/** False of what came by itself, as a keeper's answer does. */
function isAsked({ said, photographs }: Turn): boolean {
  return said !== "" || photographs.length > 0;
}

export function renderTurn(turn: Turn, rendering: Rendering): Markup {
  const photographs = turn.photographs.map(
    (id) =>
      html`<img class="photograph" src="/photographs/${encodeURIComponent(id)}" alt="${chat.youSent}" loading="lazy">`,
  );
  return html`<article class="turn" id="turn-${turn.id}" tabindex="-1">
${isAsked(turn) && html`<div class="said"><h2 class="unseen">${chat.youSaid}</h2>${turn.said !== "" && html`<p>${lines(turn.said)}</p>`}${photographs}</div>`}
<div class="reply"><h2 class="unseen">${chat.itSaid}</h2>${renderBlocks(turn.blocks, { ...rendering, part: turn.part })}${hasAnswer(turn) && shareForm(rendering.controls)}</div>
</article>`;
}

/** In the middle of something else, as of recording an observation, there is nothing to share. */
function hasAnswer({ part, blocks }: Turn): boolean {
  return part !== null && !blocks.some(isOfErrand);
}

/** What can be left is no question about the part. */
function isOfErrand(block: Block): boolean {
  return block.kind === "question" && block.besides.some(({ id }) => id === "leave-it");
}

function shareForm(controls: Controls | undefined): Markup | undefined {
  if (controls?.share === undefined) return undefined;
  return html`<form method="post" action="${controls.share}" class="share" data-once>${controls.hidden}<button type="submit">${chat.share}</button> <span class="hint">${chat.shareHint}</span></form>`;
}
