/** One block of a reply as Discord's markdown. Words and their order are the bot's; only marks are added here. */
import { type Block, pinnedLead, plainText, type Reply } from "../../bot/index.ts";
import { escaped } from "./markdown.ts";

type Of<Kind extends Block["kind"]> = Extract<Block, { kind: Kind }>;

/** A table wider than this breaks its lines on a telephone; it is then set as a record a row. */
const WIDEST_TABLE = 56;
const LARGEST_TABLE = 900;

/** The block as text; empty for what is shown otherwise: questions, choices, pictures, files. `address` is that of our own pages. */
export function blockText(block: Block, address: string | undefined): string {
  switch (block.kind) {
    case "text":
      return tonedText(block.text, block.tone ?? "plain");
    case "understood":
      return understoodText(block);
    case "standing":
      return standingText(block);
    case "evidence":
      return evidenceText(block);
    case "pinned":
      return pinnedText(block);
    case "table":
      return tableText(block);
    case "list":
      return lines([lead(block.lead), ...block.items.map((item) => `- ${escaped(item)}`)]);
    case "cautions":
      return lines(block.lines.map((line) => `> **!** ${escaped(line)}`));
    case "sources":
      return lines(
        block.items.map(({ short, citation, grade }) => small(`[${short}] ${citation} (grade ${grade})`)),
      );
    case "edition":
      return small(block.text);
    case "page":
      return address === undefined ? "" : `${escaped(block.label)}: ${address}${block.path}`;
    case "question":
    case "picture":
    case "timeline":
    case "photograph":
    case "file":
    case "choices":
      return "";
  }
}

function tonedText(text: string, tone: "plain" | "answer" | "caution" | "aside"): string {
  switch (tone) {
    case "plain":
      return escaped(text);
    case "answer":
      return bold(text);
    case "caution":
      return `> **!** ${escaped(text)}`;
    case "aside":
      return small(text);
  }
}

function understoodText({ lead: words, items, remarks }: Of<"understood">): string {
  const told = items.map(
    ({ label, value, doubt }) =>
      `${escaped(label)}: **${escaped(value)}**${doubt === undefined ? "" : ` (${escaped(doubt)})`}`,
  );
  const line =
    told.length === 0 ? "" : `${escaped(words)}${/[.:]$/u.test(words) ? "" : " –"} ${told.join("; ")}.`;
  return lines([line, ...remarks.map(escaped)]);
}

function standingText({ lead: words, items }: Of<"standing">): string {
  if (items.length === 0) return "";
  return lines([lead(words), ...items.map((item) => `- ${escaped(item.name)}, ${escaped(item.words)}`)]);
}

/** The bot's own plain words, whose first line of each side is set in bold. */
function evidenceText(block: Of<"evidence">): string {
  return plainText({ blocks: [block] } as unknown as Reply)
    .split("\n")
    .map((line) => (line.startsWith("  - ") ? `- ${escaped(line.slice(4))}` : bold(line)))
    .join("\n");
}

function pinnedText({ author, date, text, sources, dispute }: Of<"pinned">): string {
  const cited = sources.length === 0 ? "" : ` [${sources.join("; ")}]`;
  const quoted = escaped(`${text}${cited}`)
    .split("\n")
    .map((line) => `> ${line}`);
  return lines([
    bold(pinnedLead(author, date)),
    ...quoted,
    dispute === undefined ? "" : `> **!** ${escaped(dispute)}`,
  ]);
}

function tableText({ caption, head, rows }: Of<"table">): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? "").length)));
  const total = widths.reduce((sum, width) => sum + width + 2, -2);
  // A page that ended within it would leave it open.
  const isNarrow = total <= WIDEST_TABLE && total * all.length <= LARGEST_TABLE;
  if (!isNarrow) {
    // Cells that are lists themselves would run into each other.
    const areLists = rows.some(([, ...rest]) => rest.some((cell) => cell.includes(";")));
    return lines([bold(caption), ...rows.map((row) => recordLine(head, row, areLists))]);
  }
  const set = all.map((row) =>
    row
      .map((cell, column) => harmlessCell(cell).padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  return lines([bold(caption), "```", ...set, "```"]);
}

/** In a table set as it stands nothing is formatting but its own end; a mention shall not even look like one. */
function harmlessCell(cell: string): string {
  return cell
    .replaceAll("`", "'")
    .replaceAll(/\s+/gu, " ")
    .replaceAll(/<(?=@)/gu, "<\u200b")
    .replaceAll(/@(?=everyone|here)/gu, "@\u200b");
}

function recordLine(
  head: readonly string[],
  [first = "", ...rest]: readonly string[],
  areLists: boolean,
): string {
  const cells = rest.flatMap((cell, index) =>
    cell === "" ? [] : [`${escaped(head[index + 1] ?? "")}: ${escaped(cell)}`],
  );
  if (areLists) return lines([`- **${escaped(first)}**`, ...cells.map((cell) => `  - ${cell}`)]);
  return `- **${escaped(first)}** – ${cells.join("; ")}`;
}

function lead(words: string): string {
  if (words === "") return "";
  return escaped(/[.:?!]$/u.test(words) ? words : `${words}:`);
}

export function bold(text: string): string {
  return text
    .split("\n")
    .map((line) => (line.trim() === "" ? "" : `**${escaped(line)}**`))
    .join("\n");
}

function small(text: string): string {
  return text
    .split("\n")
    .map((line) => (line.trim() === "" ? "" : `-# ${escaped(line)}`))
    .join("\n");
}

function lines(texts: readonly string[]): string {
  return texts.filter((text) => text !== "").join("\n");
}
