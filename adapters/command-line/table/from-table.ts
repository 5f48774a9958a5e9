/**
 * `table from FILE`: a spreadsheet into the handbook, step by step: which sheet is which part kind, which column is which feature,
 * which cells could not be read, what would change in words; and only then, if wanted, the files.
 */
import { changeInWords, moreChanges, nothingChanged } from "../../../bot/index.ts";
import {
  applyTables,
  changesBetween,
  type Handbook,
  type HandbookFile,
  loadHandbook,
  problemText,
  type ReadTable,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { readHandbookFolder, writeHandbookFiles } from "../../handbook-folder/index.ts";
import { BrokenHandbookError } from "../../handbooks.ts";
import { readSheets } from "../../spreadsheets/index.ts";
import { type Asker, openAsker } from "../asker.ts";
import { fileOf } from "../file-of.ts";
import { readOptions, UsageError } from "../options.ts";
import { unknownPart } from "../unknown-part.ts";
import { partOfSheet } from "./part-of-sheet.ts";
import { readGuided } from "./read-guided.ts";

/** More changes than this are counted and not listed. */
const MOST_LISTED = 200;

export async function run(words: readonly string[]): Promise<void> {
  const { file, rest } = fileOf("table", words);
  const options = readOptions("table", rest, {
    handbook: "text",
    part: "text",
    write: "flag",
    partly: "flag",
  });
  const { handbook: folder, part, write, partly } = options;
  if (folder === undefined) throw new UsageError("--handbook is needed: the folder to write into", "table");
  const { files, handbook } = await openFiles(folder);
  if (part !== undefined && !handbook.parts.some(({ id }) => id === part)) throw unknownPart(handbook, part);
  const asker = openAsker();
  try {
    const tables = await readTables(file, handbook, part, asker);
    const unread = [...tables.values()].reduce((sum, table) => sum + table.unread.length, 0);
    const applied = applyTables(files, tables);
    if (!applied.loaded.ok) {
      print(applied.loaded.problems.map(problemText));
      throw new OutsideError(`${file}: the handbook would not be sound with it; nothing written`);
    }
    const changes = changesBetween(handbook, applied.loaded.handbook).map(changeInWords);
    print(changes.length === 0 ? [nothingChanged] : changes.slice(0, MOST_LISTED));
    if (changes.length > MOST_LISTED) print([moreChanges(changes.length - MOST_LISTED)]);
    if (applied.changed.length === 0) return refuseUnread(file, unread);
    const isWanted = await isWriting(asker, { write, partly, unread, changes: changes.length });
    if (isWanted) await writeHandbookFiles(folder, applied.changed);
    print([isWanted ? `written: ${applied.changed.map(({ path }) => path).join(", ")}` : "nothing written"]);
    if (!partly || !isWanted) refuseUnread(file, unread);
  } finally {
    asker?.close();
  }
}

async function openFiles(
  folder: string,
): Promise<{ readonly files: readonly HandbookFile[]; readonly handbook: Handbook }> {
  const reading = await readHandbookFolder(folder);
  if (!reading.ok) throw new BrokenHandbookError(folder, reading.problems);
  const loaded = loadHandbook(reading.files);
  if (!loaded.ok) throw new BrokenHandbookError(folder, loaded.problems);
  return { files: reading.files, handbook: loaded.handbook };
}

async function readTables(
  file: string,
  handbook: Handbook,
  named: string | undefined,
  asker: Asker | undefined,
): Promise<ReadonlyMap<string, ReadTable>> {
  const tables = new Map<string, ReadTable>();
  for (const sheet of await readSheets(file)) {
    const part = partOfSheet(handbook, sheet, named);
    if (part === undefined) {
      print([`${sheet.name}: no part kind of that name; the sheet is left aside (--part names one)`]);
      continue;
    }
    if (tables.has(part.id)) throw new OutsideError(`${file}: two sheets for ${part.id}; keep one of them`);
    const read = await readGuided({ part, sources: handbook.sources, sheet }, asker);
    print([
      ...read.unread.map(
        ({ sheet: name, cell, written, message, mend }) =>
          `${name}!${cell}${written === "" ? "" : ` “${written}”`}: ${message}\n    → ${mend}`,
      ),
      `${sheet.name}: ${read.cells} cells, ${read.unread.length} not read`,
    ]);
    tables.set(part.id, read);
  }
  return tables;
}

interface Wish {
  readonly write: boolean;
  readonly partly: boolean;
  readonly unread: number;
  readonly changes: number;
}

async function isWriting(
  asker: Asker | undefined,
  { write, partly, unread, changes }: Wish,
): Promise<boolean> {
  if (partly) return true;
  if (write) return unread === 0;
  if (asker === undefined) return false;
  const beside = unread === 0 ? "" : `, leaving ${unread} ${unread === 1 ? "cell" : "cells"} aside`;
  const answer = await asker.ask(
    `Write ${changes === 1 ? "this change" : `these ${changes} changes`}${beside}? yes or no: `,
  );
  return /^y(es)?$/iu.test(answer ?? "");
}

function refuseUnread(file: string, unread: number): void {
  if (unread === 0) return;
  const cells = unread === 1 ? "1 cell was" : `${unread} cells were`;
  throw new OutsideError(`${file}: ${cells} not read; mend them, or give --partly to write the rest`);
}

function print(lines: readonly string[]): void {
  if (lines.length > 0) process.stdout.write(`${lines.join("\n")}\n`);
}
