/**
 * A reply as lines for a terminal or a pipe: pure, block by block, for a given width, with colour or without. Rendered
 * from the blocks themselves and not from markup, so that nothing a member wrote can become formatting.
 */
import { styleText } from "node:util";
import { type Block, type Choice, pinnedLead, type QuestionBlock, type Reply } from "../../bot/index.ts";
import { evidenceLines, standingLines, tableLines } from "./render-figures.ts";
import type { SavedFiles } from "./save-files.ts";
import { areCounted, numberedChoices } from "./typed-choice.ts";
import { clean, HARD_SPACE, padded, textWidth, wrapped } from "./wrap.ts";

export interface Page {
  /** Columns; from 24 on no line is longer than this, but for the path of a drawing or a file, which stays in one piece. */
  readonly width: number;
  readonly colour: boolean;
  /** Where a drawing of the handbook lies for the person at this terminal; the path itself when not given. */
  readonly locate?: (path: string) => string;
  /** Where the files of the reply were saved; the others are printed. */
  readonly saved?: SavedFiles;
  /** Choices stand without numbers: another reply's may still be typed. */
  readonly isBetween?: boolean;
}

type Style = "bold" | "dim" | "yellow" | "cyan";

/** The lines of a reply, without a line end; blocks are set apart by an empty line. No blocks: no lines. */
export function renderReply(reply: Reply, page: Page): readonly string[] {
  const numbered = page.isBetween === true ? [] : numberedChoices(reply);
  const sections = reply.blocks
    .map((block) => blockLines(block, page, numbered))
    .filter((lines) => lines.length > 0);
  return sections.flatMap((lines, index) => (index === 0 ? lines : ["", ...lines]));
}

function blockLines(block: Block, page: Page, numbered: readonly Choice[]): readonly string[] {
  const { width } = page;
  switch (block.kind) {
    case "text":
      return textLines(block.text, block.tone ?? "plain", page);
    case "understood":
      return understoodLines(block, page);
    case "standing":
      return [...lead(block.lead, page), ...standingLines(block.items, width)];
    case "evidence":
      return evidenceLines(block, width);
    case "question":
      return [
        ...painted("bold", wrapped(block.text, width), page),
        ...(block.expects === "choice" && areCounted(block.answers)
          ? countedLines(block, page)
          : choiceLines(block.answers, block.besides, page, numbered)),
      ];
    case "picture":
      return pictureLines(block, page);
    case "photograph":
      return wrapped(block.alternative, width, "[photograph] ");
    case "file":
      return fileLines(block, page);
    case "page":
      return wrapped(`${block.label}: ${block.path}`, width);
    case "pinned":
      return pinnedLines(block, page);
    case "table":
      return tableBlockLines(block, page);
    case "timeline":
      return tableBlockLines(block.table, page);
    case "list":
      return [...lead(block.lead, page), ...block.items.flatMap((item) => wrapped(item, width, "  - "))];
    case "cautions":
      return block.lines.flatMap((line) => painted("yellow", wrapped(line, width, "! "), page));
    case "sources":
      return block.items.flatMap((item) =>
        painted("dim", wrapped(`[${item.short}] ${item.citation} (grade ${item.grade})`, width, "  "), page),
      );
    case "choices":
      return choiceLines(block.choices, [], page, numbered);
    case "edition":
      return painted("dim", wrapped(block.text, width), page);
  }
}

function tableBlockLines(table: Extract<Block, { kind: "table" }>, page: Page): readonly string[] {
  return [...painted("bold", wrapped(table.caption, page.width), page), ...tableLines(table, page.width)];
}

function textLines(
  text: string,
  tone: "plain" | "answer" | "caution" | "aside",
  page: Page,
): readonly string[] {
  switch (tone) {
    case "plain":
      return wrapped(text, page.width);
    case "answer":
      return painted("bold", wrapped(text, page.width), page);
    case "caution":
      return painted("yellow", wrapped(text, page.width, "! "), page);
    case "aside":
      return painted("dim", wrapped(text, page.width), page);
  }
}

function understoodLines(block: Extract<Block, { kind: "understood" }>, page: Page): readonly string[] {
  const column = Math.max(0, ...block.items.map((item) => textWidth(clean(item.label))));
  const isAligned = column <= Math.min(28, page.width / 2);
  const items = block.items.flatMap((item) => {
    const value = item.doubt === undefined ? item.value : `${item.value} (${item.doubt})`;
    if (!isAligned) return wrapped(`${item.label}: ${value}`, page.width, "  ");
    return wrapped(value, page.width, `  ${padded(clean(item.label), column)}  `);
  });
  const remarks = block.remarks.flatMap((remark) => wrapped(remark, page.width));
  return [...(items.length > 0 ? lead(block.lead, page) : []), ...items, ...remarks];
}

/** Choices with their numbers where numbers can be typed, else in a row of brackets with what stands beside them. */
function choiceLines(
  choices: readonly Choice[],
  besides: readonly Choice[],
  page: Page,
  numbered: readonly Choice[],
): readonly string[] {
  if (choices !== numbered) return besidesLines([...choices, ...besides], page);
  return [...numberedLines(choices, page), ...besidesLines(besides, page)];
}

/** Answers that are counts stand each on a line without a number, to be typed in words or as the count. */
function countedLines({ answers, besides }: QuestionBlock, page: Page): readonly string[] {
  return [
    ...answers.flatMap(({ label }) => wrapped(label, page.width, "  -  ")),
    ...besidesLines(besides, page),
  ];
}

function fileLines(block: Extract<Block, { kind: "file" }>, page: Page): readonly string[] {
  const said = wrapped(block.alternative, page.width, "[file] ");
  const saved = page.saved?.get(block);
  if (saved !== undefined && "path" in saved) return [...said, `  ${clean(saved.path)}`];
  const problem =
    saved === undefined ? [] : painted("yellow", wrapped(saved.problem, page.width, "! "), page);
  return [...said, ...problem, ...block.text.trimEnd().split("\n").map(clean)];
}

function pictureLines(block: Extract<Block, { kind: "picture" }>, page: Page): readonly string[] {
  const alternative = wrapped(block.alternative, page.width, "[picture] ");
  if (block.path === null) return alternative;
  return [...alternative, `  ${clean(page.locate?.(block.path) ?? block.path)}`];
}

function pinnedLines(block: Extract<Block, { kind: "pinned" }>, page: Page): readonly string[] {
  const sources = block.sources.length === 0 ? "" : ` [${block.sources.join("; ")}]`;
  return [
    ...painted("bold", wrapped(pinnedLead(block.author, block.date), page.width), page),
    ...wrapped(`${block.text}${sources}`, page.width, "  "),
    ...(block.dispute === undefined ? [] : painted("yellow", wrapped(block.dispute, page.width, "! "), page)),
  ];
}

function numberedLines(choices: readonly Choice[], page: Page): readonly string[] {
  return choices.flatMap((choice, index) => {
    const number = `${index + 1}`.padStart(3);
    return wrapped(choice.label, page.width, `${number}  `).map((line, row) =>
      row === 0 ? paint("cyan", number, page) + line.slice(number.length) : line,
    );
  });
}

/** What can be typed beside an answer, in brackets and in a row. */
function besidesLines(choices: readonly Choice[], page: Page): readonly string[] {
  if (choices.length === 0) return [];
  const row = choices.map((choice) => `[${choice.label.replaceAll(" ", HARD_SPACE)}]`).join(" ");
  return painted("dim", wrapped(row, page.width, "     "), page);
}

/** The words before rows; what they lead up to stands below, so they end in a colon unless they end in something else. */
function lead(text: string, page: Page): readonly string[] {
  return text === "" ? [] : wrapped(/[.:?!]$/u.test(text) ? text : `${text}:`, page.width);
}

function painted(style: Style, lines: readonly string[], page: Page): readonly string[] {
  return lines.map((line) => paint(style, line, page));
}

function paint(style: Style, text: string, page: Page): string {
  return page.colour && text !== "" ? styleText(style, text, { validateStream: false }) : text;
}
