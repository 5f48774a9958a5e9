/**
 * A reply as plain text: what a terminal prints, what a script reads as "text", and what a keeper is handed. The order
 * is that of the blocks and every word is theirs; only line breaks, marks and indents are added here.
 */
import { speaksFor } from "./conversation/phrases/answer.ts";
import { pinnedLead } from "./conversation/phrases/pinned.ts";
import type { Block, Choice, QuestionBlock, Reply } from "./reply.ts";

type EvidenceItem = Extract<Block, { kind: "evidence" }>["items"][number];

/** The whole reply, blocks apart by one empty line where they differ in kind; no line break at the end. */
export function plainText(reply: Reply): string {
  return reply.blocks
    .map(plainBlock)
    .filter((text) => text !== "")
    .join("\n");
}

/** One block as lines. */
function plainBlock(block: Block): string {
  switch (block.kind) {
    case "text":
      return block.text;
    case "understood":
      return lines([understoodLine(block), ...block.remarks]);
    case "standing":
      return block.items.length === 0
        ? ""
        : `${block.lead}: ${block.items.map((item) => `${item.name}, ${item.words}`).join("; ")}.`;
    case "evidence":
      return evidenceLines(block);
    case "question":
      return questionLines(block);
    case "picture":
    case "photograph":
    case "file":
      return `(${block.alternative})`;
    case "pinned":
      return pinnedLines(block);
    case "page":
      return `${block.label}: ${block.path}`;
    case "table":
      return tableLines(block);
    case "timeline":
      return tableLines(block.table);
    case "list":
      return lines([block.lead, ...block.items.map((item) => `  - ${item}`)]);
    case "cautions":
      return lines(block.lines.map((line) => `! ${line}`));
    case "sources":
      return lines(block.items.map((item) => `  [${item.short}] ${item.citation} (grade ${item.grade})`));
    case "choices":
      return buttons(block.choices);
    case "edition":
      return `(${block.text})`;
  }
}

function understoodLine(block: Extract<Block, { kind: "understood" }>): string {
  if (block.items.length === 0) return "";
  const items = block.items.map(
    ({ label, value, doubt }) => `${label}: ${value}${doubt === undefined ? "" : ` (${doubt})`}`,
  );
  return `${block.lead} – ${items.join("; ")}.`;
}

function evidenceLines(block: Extract<Block, { kind: "evidence" }>): string {
  const sides = [
    { name: block.first, other: block.rival, items: block.items.filter(({ bans }) => bans > 0) },
    { name: block.rival, other: block.first, items: block.items.filter(({ bans }) => bans <= 0) },
  ];
  return lines(
    sides.flatMap(({ name, other, items }) =>
      items.length === 0 ? [] : [speaksFor(name, other), ...items.map(evidenceLine)],
    ),
  );
}

function evidenceLine({ words, strength, sources }: EvidenceItem): string {
  return `  - ${words} (${strength})${sources === "" ? "" : ` [${sources}]`}`;
}

function questionLines(block: QuestionBlock): string {
  return lines([block.text, buttons([...block.answers, ...block.besides])]);
}

function pinnedLines(block: Extract<Block, { kind: "pinned" }>): string {
  const sources = block.sources.length === 0 ? "" : ` [${block.sources.join("; ")}]`;
  return lines([pinnedLead(block.author, block.date), `${block.text}${sources}`, block.dispute ?? ""]);
}

function tableLines(block: Extract<Block, { kind: "table" }>): string {
  const rows = [block.head, ...block.rows];
  const widths = block.head.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const padded = rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  return lines([block.caption, ...padded.map((row) => `  ${row}`)]);
}

function buttons(choices: readonly Choice[]): string {
  return choices.map((choice) => `[${choice.label}]`).join(" ");
}

function lines(texts: readonly string[]): string {
  return texts.filter((text) => text !== "").join("\n");
}
