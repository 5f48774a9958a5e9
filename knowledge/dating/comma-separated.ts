// Comma-separated text as RFC 4180 has it, into cells that know where they stand. Cells are text and stay text: one
// that begins like a formula of a spreadsheet is kept as it was written and never worked out.

export interface Cell {
  readonly text: string;
  /** From 1. */
  readonly column: number;
}

export interface CellRow {
  /** Line of the text on which the row begins, from 1. */
  readonly row: number;
  readonly cells: readonly Cell[];
}

export interface CsvFault {
  readonly row: number;
  readonly column: number;
  readonly message: string;
}

interface Reading {
  readonly rows: CellRow[];
  readonly faults: CsvFault[];
  cells: Cell[];
  line: number;
  firstLine: number;
  at: number;
}

/**
 * The rows of a text, empty lines left out, and what is wrong with its writing. A mark of byte order, and line ends of
 * any system are understood; a quote inside quotes is doubled. O(length).
 */
export function readCommaSeparated(text: string): {
  readonly rows: readonly CellRow[];
  readonly faults: readonly CsvFault[];
} {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const reading: Reading = { rows: [], faults: [], cells: [], line: 1, firstLine: 1, at: 0 };
  while (reading.at < body.length) readCell(body, reading);
  if (reading.cells.length > 0) closeRow(reading);
  return { rows: reading.rows, faults: reading.faults };
}

function readCell(body: string, reading: Reading): void {
  const column = reading.cells.length + 1;
  const isQuoted = body[reading.at] === '"';
  const cell = isQuoted ? quotedCell(body, reading, column) : plainCell(body, reading);
  reading.cells.push({ text: cell, column });
  const sign = body[reading.at];
  if (sign === ",") {
    reading.at += 1;
    // A comma at the very end opens one more, empty cell.
    if (reading.at === body.length) reading.cells.push({ text: "", column: column + 1 });
    return;
  }
  if (sign === "\r" && body[reading.at + 1] === "\n") reading.at += 1;
  reading.at += 1;
  closeRow(reading);
}

function closeRow(reading: Reading): void {
  const isEmpty = reading.cells.every(({ text }) => text.trim() === "");
  if (!isEmpty) reading.rows.push({ row: reading.firstLine, cells: reading.cells });
  reading.cells = [];
  reading.line += 1;
  reading.firstLine = reading.line;
}

function plainCell(body: string, reading: Reading): string {
  const start = reading.at;
  while (reading.at < body.length && !isCellEnd(body[reading.at])) reading.at += 1;
  return body.slice(start, reading.at);
}

function isCellEnd(sign: string | undefined): boolean {
  return sign === "," || sign === "\n" || sign === "\r";
}

function quotedCell(body: string, reading: Reading, column: number): string {
  const pieces: string[] = [];
  const opened = reading.line;
  let from = reading.at + 1;
  for (;;) {
    const quote = body.indexOf('"', from);
    const piece = body.slice(from, quote < 0 ? body.length : quote);
    pieces.push(piece);
    reading.line += piece.split(/\r\n|\r|\n/).length - 1;
    if (quote < 0) {
      reading.faults.push({ row: opened, column, message: "the quote that opens this cell is never closed" });
      reading.at = body.length;
      return pieces.join("");
    }
    if (body[quote + 1] !== '"') {
      reading.at = quote + 1;
      break;
    }
    pieces.push('"');
    from = quote + 2;
  }
  const rest = plainCell(body, reading);
  if (rest.trim() !== "") {
    reading.faults.push({ row: opened, column, message: "there is text after the closing quote" });
  }
  return pieces.join("");
}

/** What a spreadsheet would work out instead of showing. */
const FORMULA = /^[=+\-@\t\r]/u;
const ESCAPED_FORMULA = /^'[=+\-@\t\r]/u;

/** The rows as text with line ends of RFC 4180; a cell that a spreadsheet would take for a formula has an apostrophe put in front. */
export function writeCommaSeparated(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => `${cells.map(writtenCell).join(",")}\r\n`).join("");
}

function writtenCell(text: string): string {
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** The text of a cell as it was before `writeCommaSeparated` made it harmless. */
export function unescapedCell(text: string): string {
  return ESCAPED_FORMULA.test(text) ? text.slice(1) : text;
}
