/** The list of sightings as a file: read whole or refused whole, every fault on a line of its own with row and column. */
import { open } from "node:fs/promises";
import { parseSightings, type Sighting } from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { oneLine } from "./one-line.ts";
import { fileRefusals, moreFaults, placeOfFault } from "./phrases.ts";

/** Far more than 20,000 rows of a club's list come to. */
const MOST_BYTES = 16_000_000;
const MOST_FAULTS_SHOWN = 20;

/** At least one sighting. Throws OutsideError: for a list with faults one line each, the first twenty. */
export async function readSightingsFile(file: string): Promise<readonly Sighting[]> {
  const read = parseSightings(decoded(file, await bytesOf(file)));
  if (read.ok) {
    if (read.value.length > 0) return read.value;
    throw new OutsideError(`${file}: ${fileRefusals.empty}`);
  }
  const shown = read.problem.slice(0, MOST_FAULTS_SHOWN);
  const lines = shown.map(
    ({ row, column, message }) => `${file}: ${placeOfFault(row, column)}: ${oneLine(message)}`,
  );
  const left = read.problem.length - shown.length;
  throw new OutsideError([...lines, ...(left > 0 ? [`${file}: ${moreFaults(left)}`] : [])].join("\n"));
}

async function bytesOf(file: string): Promise<Uint8Array> {
  try {
    const handle = await open(file, "r");
    try {
      const stats = await handle.stat();
      if (!stats.isFile()) throw new OutsideError(`${file}: ${fileRefusals.noFile}`);
      if (stats.size > MOST_BYTES) throw new OutsideError(`${file}: ${fileRefusals.large}`);
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    const why = error.code === "ENOENT" ? fileRefusals.missing : fileRefusals.unread(String(error.code));
    throw new OutsideError(`${file}: ${why}`, error);
  }
}

function decoded(file: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new OutsideError(`${file}: ${fileRefusals.notText}`, error);
  }
}
