/**
 * A reply as a Discord message within Discord's limits: pure. The question stands on every page of a long answer, so that its
 * buttons never stand without it.
 */
import type { Block, Reply } from "../../bot/index.ts";
import { changeoverPicture } from "../pictures/changeover-picture.ts";
import { controlsOf } from "./controls.ts";
import { fitted, plainLine } from "./markdown.ts";
import { blockText, bold } from "./render-blocks.ts";
import { type Holder, type Row, rowsFor } from "./rows.ts";
import { splitText } from "./split-text.ts";

const LONGEST_CONTENT = 2000;
const LONGEST_ALTERNATIVE = 1024;
const MOST_ATTACHMENTS = 10;
/** A question this long leaves little room for anything else; it is then paged with the rest. */
const LONGEST_QUESTION = 1200;

export interface Rendered {
  readonly content: string;
  readonly rows: readonly Row[];
  readonly page: number;
  readonly pages: number;
  /** At most ten, in reading order; bytes are made and fetched by whoever sends them. */
  readonly attachments: readonly Attached[];
}

export type Attached =
  | { readonly kind: "picture"; readonly name: string; readonly svg: string; readonly alternative: string }
  | {
      readonly kind: "photograph";
      readonly name: string;
      readonly photograph: string;
      readonly alternative: string;
    }
  | { readonly kind: "file"; readonly name: string; readonly text: string; readonly alternative: string };

export interface Shown {
  readonly holder: Holder;
  /** From 0; beyond the last it is the last. */
  readonly page: number;
  /** Of our own pages, when there is one. */
  readonly address?: string | undefined;
  /** Words of the adapter that stand first. */
  readonly before?: string;
}

export function renderReply(reply: Reply, { holder, page, address, before }: Shown): Rendered {
  const controls = controlsOf(reply);
  const asked = controls.question === undefined ? "" : bold(controls.question.text);
  const isApart = asked.length <= LONGEST_QUESTION;
  const body = [before ?? "", ...reply.blocks.map((block) => blockText(block, address)), isApart ? "" : asked]
    .filter((text) => text !== "")
    .join("\n\n");
  const question = isApart ? asked : "";
  const room = LONGEST_CONTENT - (question === "" ? 0 : question.length + 2);
  const pages = splitText(body, room);
  const count = Math.max(1, pages.length);
  const shown = Math.min(Math.max(0, page), count - 1);
  return {
    content: [pages[shown] ?? "", question].filter((text) => text !== "").join("\n\n"),
    rows: rowsFor(controls, holder, shown, count),
    page: shown,
    pages: count,
    attachments: reply.blocks.flatMap(attachedOf).slice(0, MOST_ATTACHMENTS),
  };
}

function attachedOf(block: Block, index: number): readonly Attached[] {
  switch (block.kind) {
    case "picture":
      return [
        {
          kind: "picture",
          name: `${nameOf(block.path, index)}.png`,
          svg: block.svg,
          alternative: alternativeOf(block.alternative),
        },
      ];
    case "timeline":
      return [
        {
          kind: "picture",
          name: `timeline-${index + 1}.png`,
          svg: changeoverPicture(block.chart),
          alternative: alternativeOf(block.chart.description),
        },
      ];
    case "photograph":
      return [
        {
          kind: "photograph",
          name: `photograph-${index + 1}.jpg`,
          photograph: block.photograph,
          alternative: alternativeOf(block.alternative),
        },
      ];
    case "file":
      return [
        { kind: "file", name: block.name, text: block.text, alternative: alternativeOf(block.alternative) },
      ];
    default:
      return [];
  }
}

function nameOf(path: string | null, index: number): string {
  const name = /([^/]+?)(?:\.svg)?$/u.exec(path ?? "")?.[1] ?? "chart";
  return `${name.replaceAll(/[^\w-]/gu, "-")}-${index + 1}`;
}

/** Alternative text is a description and no sentence of the conversation: beyond the limit it is cut at a word. */
function alternativeOf(text: string): string {
  const line = plainLine(text);
  if (line.length <= LONGEST_ALTERNATIVE) return line;
  return fitted(line, LONGEST_ALTERNATIVE);
}
