/** Sheets into a spreadsheet file: CSV holds one, XLSX all of them, with the heads standing still while one scrolls. */
import { writeFile } from "node:fs/promises";
import { extname } from "node:path";
import { stringify } from "csv-stringify/sync";
import writeExcelFile from "write-excel-file/node";
import { type Cell, cellText, type Sheet } from "../../knowledge/index.ts";
import { OutsideError } from "../errors.ts";

/** What XLSX allows for the name of a sheet. */
const LONGEST_NAME = 31;

/** Writes by the file's ending, .csv or .xlsx. Throws OutsideError for any other, and when it cannot be written. */
export async function writeSheets(file: string, sheets: readonly Sheet[]): Promise<void> {
  const ending = extname(file).toLowerCase();
  const [only, ...others] = sheets;
  if (ending === ".xlsx") return kept(file, await workbook(sheets));
  if (ending !== ".csv") throw new OutsideError(`${file}: a file that ends in .csv or .xlsx is needed`);
  if (only === undefined || others.length > 0) {
    throw new OutsideError(`${file}: CSV holds one part kind; name it with --part, or write .xlsx`);
  }
  return kept(file, commaSeparated(only));
}

/** Texts that a spreadsheet would take for a formula are guarded by a quote, which reading takes off. */
function commaSeparated({ rows }: Sheet): string {
  const texts = rows.map((row) => row.map((cell) => cellText(cell)));
  return stringify(texts, { bom: true, escape_formulas: true, record_delimiter: "windows" });
}

async function workbook(sheets: readonly Sheet[]): Promise<Buffer> {
  const names = sheetNames(sheets.map(({ name }) => name));
  const pages = sheets.map(({ rows }, index) => ({
    data: rows.map((row, line) => row.map((cell) => written(cell, line))),
    sheet: names[index] ?? `Sheet${index + 1}`,
    stickyRowsCount: 2,
    stickyColumnsCount: 1,
    columns: (rows[0] ?? []).map((head) => ({
      width: Math.min(40, Math.max(12, cellText(head).length + 2)),
    })),
  }));
  return writeExcelFile(pages).toBuffer();
}

function written(
  cell: Cell,
  line: number,
): {
  value: string | number;
  type: StringConstructor | NumberConstructor;
  fontWeight?: "bold";
  textColor?: string;
} | null {
  if (typeof cell === "number") return { value: cell, type: Number };
  const value = cellText(cell);
  if (value === "") return null;
  if (line === 0) return { value, type: String, fontWeight: "bold" };
  return line === 1 ? { value, type: String, textColor: "#666666" } : { value, type: String };
}

/** Names cut to what is allowed, each its own. */
function sheetNames(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let cut = name.slice(0, LONGEST_NAME);
    for (let number = 2; taken.has(cut); number += 1) cut = `${name.slice(0, LONGEST_NAME - 3)}-${number}`;
    taken.add(cut);
    return cut;
  });
}

async function kept(file: string, content: string | Buffer): Promise<void> {
  try {
    await writeFile(file, content);
  } catch (failure) {
    throw new OutsideError(`${file}: cannot be written`, failure);
  }
}
