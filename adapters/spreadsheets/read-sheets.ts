/** A spreadsheet file into sheets of plain cells: CSV in whatever dress a spreadsheet gave it, or XLSX with all its sheets. */
import { readFile, stat } from "node:fs/promises";
import { basename, extname } from "node:path";
import { parse } from "csv-parse/sync";
import readExcelFile from "read-excel-file/node";
import type { Cell, Sheet } from "../../knowledge/index.ts";
import { OutsideError } from "../errors.ts";

/** Larger tables of variants do not exist; larger files may be bombs. */
const MOST_BYTES = 10_000_000;
const MOST_CELLS = 2_000_000;

/** The sheets of a file by its ending, .csv or .xlsx. Throws OutsideError for any other, and for what cannot be read. */
export async function readSheets(file: string): Promise<readonly Sheet[]> {
  const ending = extname(file).toLowerCase();
  if (ending !== ".csv" && ending !== ".xlsx") {
    throw new OutsideError(`${file}: a file that ends in .csv or .xlsx is needed; save it as one of these`);
  }
  const bytes = await bytesOf(file);
  const sheets = ending === ".csv" ? [csvSheet(file, bytes)] : await excelSheets(file, bytes);
  const cells = sheets.reduce(
    (sum, { rows }) => sum + rows.reduce((inRows, row) => inRows + row.length, 0),
    0,
  );
  if (cells > MOST_CELLS) throw new OutsideError(`${file}: more than ${MOST_CELLS} cells`);
  return sheets;
}

async function bytesOf(file: string): Promise<Buffer> {
  try {
    const { size } = await stat(file);
    if (size > MOST_BYTES) throw new OutsideError(`${file}: larger than ${MOST_BYTES / 1_000_000} MB`);
    return await readFile(file);
  } catch (failure) {
    if (failure instanceof OutsideError) throw failure;
    throw new OutsideError(`${file}: cannot be read`, failure);
  }
}

function csvSheet(file: string, bytes: Buffer): Sheet {
  const text = textOf(bytes);
  try {
    const rows: string[][] = parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
    });
    return { name: basename(file, extname(file)), rows: rows.map((row) => row.map(unguarded)) };
  } catch (failure) {
    throw new OutsideError(
      `${file}: no CSV: ${failure instanceof Error ? failure.message : failure}`,
      failure,
    );
  }
}

/** UTF-8, UTF-16 by its mark, or else what Windows spreadsheets wrote for decades. */
function textOf(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (failure) {
    if (failure instanceof TypeError) return new TextDecoder("windows-1252").decode(bytes);
    throw failure;
  }
}

/** Half of Europe parts columns by semicolons: whichever sign stands most often outside quotes in the head. */
function delimiterOf(text: string): string {
  const head =
    text
      .replace(/^\uFEFF/u, "")
      .replaceAll(/"[^"]*"/gu, "")
      .split(/\r?\n/u, 1)[0] ?? "";
  const count = (sign: string) => head.split(sign).length - 1;
  return [";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best), ",");
}

/** Takes off the quote that keeps a spreadsheet from taking a text for a formula. */
function unguarded(cell: string): Cell {
  return /^'[=+\-@\t\r]/u.test(cell) ? cell.slice(1) : cell;
}

async function excelSheets(file: string, bytes: Buffer): Promise<readonly Sheet[]> {
  try {
    const sheets = await readExcelFile(bytes);
    return sheets.map(({ sheet, data }) => ({ name: sheet, rows: data.map((row) => row.map(plainCell)) }));
  } catch (failure) {
    throw new OutsideError(`${file}: no XLSX workbook, or a damaged one`, failure);
  }
}

function plainCell(value: unknown): Cell {
  if (value instanceof Date) return { date: value.toISOString().slice(0, 10) };
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  return null;
}
