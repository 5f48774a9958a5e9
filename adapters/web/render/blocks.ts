/**
 * A reply as HTML, block by block and pure. Every word is the bot's or the handbook's; what a member wrote is text wherever it stands,
 * because `html` escapes it.
 */
import { type Block, pinnedLead, type Reply } from "../../../bot/index.ts";
import { changeoverPicture } from "../../pictures/changeover-picture.ts";
import { chat } from "../phrases.ts";
import { evidenceBalance, standingRows } from "./figures.ts";
import { html, type Markup } from "./markup.ts";
import { questionForm, wordsForm } from "./question.ts";
import type { Rendering } from "./rendering.ts";

/** The blocks in their order. */
export function renderBlocks(blocks: Reply["blocks"], rendering: Rendering): Markup {
  return html`${blocks.map((block) => renderBlock(block, rendering))}`;
}

function renderBlock(block: Block, rendering: Rendering): Markup {
  switch (block.kind) {
    case "text":
      return html`<p class="${block.tone ?? "plain"}">${lines(block.text)}</p>`;
    case "understood":
      return understood(block);
    case "standing":
      return html`<p class="lead">${block.lead}:</p>${standingRows(block.items)}`;
    case "evidence":
      return evidenceBalance(block);
    case "question":
      return questionForm(block, rendering);
    case "picture":
      return html`<figure class="picture"><img class="drawing" src="${rendering.drawings.address(block.svg)}" alt="${block.alternative}"></figure>`;
    case "timeline":
      return html`<figure class="picture"><img class="drawing" src="${rendering.drawings.address(changeoverPicture(block.chart))}" alt="${block.chart.description}"><figcaption>${table(block.table)}</figcaption></figure>`;
    case "photograph":
      return html`<figure class="picture"><img class="photograph" src="/photographs/${encodeURIComponent(block.photograph)}" alt="${block.alternative}"></figure>`;
    case "file":
      return fileLink(block);
    case "page":
      return html`<p class="page"><a href="${localPath(block.path)}"${rendering.isFramed && html` target="_blank" rel="noopener"`}>${block.label}</a></p>`;
    case "pinned":
      return pinned(block);
    case "table":
      return table(block);
    case "list":
      return html`<p class="lead">${block.lead}</p><ul>${block.items.map((item) => html`<li>${item}</li>`)}</ul>`;
    case "cautions":
      return html`<div class="cautions" role="note">${block.lines.map((line) => html`<p>${line}</p>`)}</div>`;
    case "sources":
      return sourceList(block.items);
    case "choices":
      return rendering.controls === undefined
        ? html``
        : html`<div data-once>${wordsForm(block.choices, rendering.controls, "next")}</div>`;
    case "edition":
      return html`<p class="edition">${block.text}</p>`;
  }
}

/** Only a path on this site: a reply must not lead elsewhere. */
export function localPath(path: string): string {
  return /^\/(?![/\\])[\w\-./~%?=&#]*$/u.test(path) ? path : "/";
}

/** Text with its line breaks. */
export function lines(text: string): Markup {
  const [first = "", ...rest] = text.split("\n");
  return html`${first}${rest.map((line) => html`<br>${line}`)}`;
}

function understood(block: Extract<Block, { kind: "understood" }>): Markup {
  const rows = block.items.map(
    ({ label, value, doubt }) =>
      html`<div><dt>${label}</dt><dd>${value}${doubt !== undefined && html` <span class="doubt">${doubt}</span>`}</dd></div>`,
  );
  const list =
    block.items.length > 0 && html`<p class="lead">${block.lead}</p><dl class="facts">${rows}</dl>`;
  return html`${list}${block.remarks.map((remark) => html`<p class="aside">${remark}</p>`)}`;
}

function pinned(block: Extract<Block, { kind: "pinned" }>): Markup {
  const sources =
    block.sources.length > 0 && html` <span class="source">[${block.sources.join("; ")}]</span>`;
  return html`<blockquote class="pinned"><p class="lead">${pinnedLead(block.author, block.date)}</p><p>${lines(block.text)}${sources}</p>${block.dispute !== undefined && html`<p class="doubt">${block.dispute}</p>`}</blockquote>`;
}

export function table(block: Extract<Block, { kind: "table" }>): Markup {
  const head = block.head.map((cell) => (cell === "" ? html`<td></td>` : html`<th scope="col">${cell}</th>`));
  const rows = block.rows.map(([first = "", ...rest]) => {
    const cells = rest.map((cell) => html`<td>${cell}</td>`);
    return html`<tr><th scope="row">${first}</th>${cells}</tr>`;
  });
  return html`<table class="ruled"><caption>${block.caption}</caption><thead><tr>${head}</tr></thead><tbody>${rows}</tbody></table>`;
}

export function sourceList(items: Extract<Block, { kind: "sources" }>["items"]): Markup {
  const rows = items.map(
    ({ short, citation, grade }) =>
      html`<div><dt>[${short}]</dt><dd>${citation} <span class="aside">(grade ${grade})</span></dd></div>`,
  );
  return html`<dl class="sources">${rows}</dl>`;
}

function fileLink({ name, mediaType, text, alternative }: Extract<Block, { kind: "file" }>): Markup {
  const type = /^[a-z]+\/[a-z0-9.+-]+$/u.test(mediaType) ? mediaType : "text/plain";
  const address = `data:${type};charset=utf-8;base64,${Buffer.from(text).toString("base64")}`;
  return html`<p class="page"><a href="${address}" download="${name}">${chat.savedFile(name)}</a> <span class="aside">${alternative}</span></p>`;
}
