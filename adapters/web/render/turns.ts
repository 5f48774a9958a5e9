/** Turns of a conversation as the page shows them: what was said, then the reply; only the newest can be answered by pressing. */
import { chat } from "../phrases.ts";
import type { Turn } from "../transcript.ts";
import { lines, renderBlocks } from "./blocks.ts";
import { html, type Markup } from "./markup.ts";
import type { Controls, Rendering } from "./rendering.ts";

/** All turns, the controls on the last one alone. */
export function renderTurns(turns: readonly Turn[], rendering: Rendering): Markup {
  const { controls: _, ...readOnly } = rendering;
  return html`${turns.map((turn, index) => renderTurn(turn, index === turns.length - 1 ? rendering : readOnly))}`;
}

export function renderTurn(turn: Turn, rendering: Rendering): Markup {
  const photographs = turn.photographs.map(
    (id) =>
      html`<img class="photograph" src="/photographs/${encodeURIComponent(id)}" alt="${chat.youSent}" loading="lazy">`,
  );
  const hasSaid = turn.said !== "" || photographs.length > 0;
  return html`<article class="turn" id="turn-${turn.id}" tabindex="-1">
${hasSaid && html`<div class="said"><h2 class="unseen">${chat.youSaid}</h2>${turn.said !== "" && html`<p>${lines(turn.said)}</p>`}${photographs}</div>`}
<div class="reply"><h2 class="unseen">${chat.itSaid}</h2>${renderBlocks(turn.blocks, { ...rendering, part: turn.part })}${turn.part !== null && shareForm(rendering.controls)}</div>
</article>`;
}

function shareForm(controls: Controls | undefined): Markup | undefined {
  if (controls?.share === undefined) return undefined;
  return html`<form method="post" action="${controls.share}" class="share" data-once>${controls.hidden}<button type="submit">${chat.share}</button> <span class="hint">${chat.shareHint}</span></form>`;
}
