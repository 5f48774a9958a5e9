/**
 * A backup: JSON lines, the same from either engine, so that what was kept in one can be put into the other and read without any.
 * The first line says what it is, the last how much and which digest, so that a file that was cut short is not taken for whole.
 */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { open, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { z } from "zod";
import { OutsideError } from "../errors.ts";
import { type PortableRow, pagesOf } from "./row-stream.ts";

const First = z.strictObject({ format: z.literal("witness-mark backup"), edition: z.literal(1) });
const Last = z.strictObject({ versions: z.number().int(), digest: z.string() });
const Row = z.strictObject({
  kind: z.string(),
  id: z.string(),
  version: z.number().int(),
  at: z.number().int(),
  by: z.string(),
  why: z.string(),
  message: z.string().nullable(),
  kept_start: z.number().int().nullable(),
  kept_end: z.number().int().nullable(),
  state: z.string(),
  outcome: z.string().nullable(),
  digest: z.string(),
});
const names = Object.keys(Row.shape) as readonly (keyof PortableRow)[];

/** Writes `rows` beside `file`, flushes them to the disk, and only then puts them in its place. Returns how many. */
export async function writeBackup(file: string, rows: AsyncIterable<PortableRow>): Promise<number> {
  const part = join(dirname(file), `.${basename(file)}.part`);
  try {
    const versions = await writeFlushed(part, rows);
    await rename(part, file);
    return versions;
  } catch (failure) {
    await rm(part, { force: true });
    if (!isOfTheSystem(failure)) throw failure;
    throw new OutsideError(`backup: ${file} cannot be written (${failure.code})`, failure);
  }
}

async function writeFlushed(part: string, rows: AsyncIterable<PortableRow>): Promise<number> {
  const handle = await open(part, "w", 0o600);
  const hash = createHash("sha256");
  const write = async (text: string) => {
    hash.update(text);
    await handle.writeFile(text);
  };
  let versions = 0;
  try {
    await write(`${JSON.stringify({ format: "witness-mark backup", edition: 1 })}\n`);
    for await (const page of pagesOf(rows)) {
      await write(page.map((row) => `${JSON.stringify(row, [...names])}\n`).join(""));
      versions += page.length;
    }
    await handle.writeFile(`${JSON.stringify({ versions, digest: hash.digest("base64url") })}\n`);
    await handle.sync();
    return versions;
  } finally {
    await handle.close();
  }
}

/** The rows of a backup. Throws OutsideError at the first line that is none, and at the end when something is missing. */
export async function* readBackup(file: string): AsyncGenerator<PortableRow> {
  const hash = createHash("sha256");
  let number = 0;
  let last: z.output<typeof Last> | undefined;
  for await (const line of linesOf(file)) {
    number += 1;
    const value = jsonOf(line);
    if (number === 1 && !First.safeParse(value).success) {
      throw new OutsideError(`backup: ${file} is no backup of this program`);
    }
    if (last !== undefined) throw new OutsideError(`backup: ${file}:${number} stands after its end`);
    last = Last.safeParse(value).data;
    if (last !== undefined) continue;
    hash.update(`${line}\n`);
    if (number > 1) yield rowAt(`${file}:${number}`, value);
  }
  if (last === undefined) throw new OutsideError(`backup: ${file} was cut short; take another one`);
  // Before the last line stand the first one and the rows.
  if (last.versions !== number - 2 || last.digest !== hash.digest("base64url")) {
    throw new OutsideError(`backup: ${file} is not what was written; take another one`);
  }
}

function rowAt(place: string, value: unknown): PortableRow {
  const row = Row.safeParse(value);
  if (!row.success) throw new OutsideError(`backup: ${place} is damaged; take another one`);
  return row.data;
}

async function* linesOf(file: string): AsyncGenerator<string> {
  try {
    yield* createInterface({ input: createReadStream(file, "utf8"), crlfDelay: Number.POSITIVE_INFINITY });
  } catch (failure) {
    if (!isOfTheSystem(failure)) throw failure;
    throw new OutsideError(`backup: ${file} cannot be read (${failure.code})`, failure);
  }
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}

function isOfTheSystem(failure: unknown): failure is NodeJS.ErrnoException {
  return failure instanceof Error && "syscall" in failure && "code" in failure;
}
