/**
 * What aligns: the standing with a bar a row, the evidence as a balance, tables ruled by a thin line. Length carries
 * the weight, not colour, so that it reads in black and white and in a pipe.
 */
import type { Block } from "../../bot/index.ts";
import { clean, padded, textWidth, wrapped } from "./wrap.ts";

type Standing = Extract<Block, { kind: "standing" }>;
type Evidence = Extract<Block, { kind: "evidence" }>;
type Table = Extract<Block, { kind: "table" }>;

const LONGEST_BAR = 20;
/** Half the balance, in columns; two bans (a hundred to one) fill it. */
const BALANCE = 8;
const cellsPerBan = BALANCE / 2;
const NARROW = 40;

/** One row a name: the name, its probability in words, a bar of up to 20 columns. On a narrow page the bar goes first, then the columns. */
export function standingLines(items: Standing["items"], width: number): readonly string[] {
  const words = columnWidth(items.map((item) => item.words));
  const names = columnWidth(items.map((item) => item.name));
  const room = width - names - words - 6;
  if (room < -2) return items.flatMap((item) => wrapped(`${item.name}, ${item.words}`, width, "  "));
  const bar = room >= 8 ? Math.min(LONGEST_BAR, room) : 0;
  return items.map((item) => {
    const cells = "━".repeat(Math.round(item.probability * bar));
    return `  ${padded(clean(item.name), names)}  ${padded(clean(item.words), words)}  ${cells}`.trimEnd();
  });
}

/**
 * A balance: bars to the right speak for the first name, to the left for its rival, the fact in words beside them. A fact
 * that moves less than a sixteenth of the balance shows a dot on the centre line.
 */
export function evidenceLines(block: Evidence, width: number): readonly string[] {
  const heading = [...wrapped(block.rival, width, "  ◂ "), ...wrapped(block.first, width, "  ▸ ")];
  const rows = block.items.flatMap((item) => {
    const sources = item.sources === "" ? "" : ` [${item.sources}]`;
    const strength = item.strength === "" ? "" : ` (${item.strength})`;
    const mark = width < NARROW ? sideOf(item.bans) : balance(item.bans);
    return wrapped(`${item.words}${strength}${sources}`, width, `  ${mark} `);
  });
  return [...heading, ...rows];
}

/** The balance in one column, for a page on which bars have no room. */
function sideOf(bans: number): string {
  if (Math.round(Math.abs(bans) * cellsPerBan) === 0) return "·";
  return bans > 0 ? "▸" : "◂";
}

function balance(bans: number): string {
  const cells = Math.min(BALANCE, Math.round(Math.abs(bans) * cellsPerBan));
  const bar = "━".repeat(cells);
  const left = bans < 0 ? bar.padStart(BALANCE) : " ".repeat(BALANCE);
  const right = bans > 0 ? bar.padEnd(BALANCE) : " ".repeat(BALANCE);
  return `${left}${cells === 0 ? "·" : "│"}${right}`;
}

/** Columns ruled by one thin line; a table too wide for the page is set as one short record a row. */
export function tableLines(block: Table, width: number): readonly string[] {
  const columns = block.head.map((head, column) =>
    columnWidth([head, ...block.rows.map((row) => row[column] ?? "")]),
  );
  const total = columns.reduce((sum, column) => sum + column + 2, 0) - 2;
  if (total > width) return recordLines(block, width);
  const line = (cells: readonly string[]) =>
    columns
      .map((column, index) => padded(clean(cells[index] ?? ""), column))
      .join("  ")
      .trimEnd();
  return [line(block.head), "─".repeat(total), ...block.rows.map(line)];
}

function recordLines(block: Table, width: number): readonly string[] {
  return block.rows.flatMap((row) => {
    const [first = "", ...rest] = row;
    const cells = rest.flatMap((cell, index) =>
      cell === "" ? [] : wrapped(`${block.head[index + 1] ?? ""}: ${cell}`, width, "    "),
    );
    return [...wrapped(first, width, "  "), ...cells];
  });
}

function columnWidth(cells: readonly string[]): number {
  return Math.max(0, ...cells.map((cell) => textWidth(clean(cell))));
}
