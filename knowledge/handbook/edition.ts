/**
 * Which edition of a handbook an answer was given from: a hash of what the files say, so that two folders with the
 * same words are the same edition, wherever they stand and in whatever order they are read.
 */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { fileRole, type HandbookFile } from "./handbook-file.ts";
import { atOnce, type InPieces } from "./in-pieces.ts";
import { byCodeUnit } from "./problem.ts";

/**
 * SHA-256 (FIPS 180-4) in 64 hexadecimal figures over a listing of path, length and text of each file, by path.
 * Line ends and a byte order mark do not count; nor do files that a handbook does not read, such as README.md.
 */
export function editionOf(files: readonly HandbookFile[]): string {
  return atOnce(workingOutEdition(files));
}

/** The same, giving way after each file. */
export function* workingOutEdition(files: readonly HandbookFile[]): InPieces<string> {
  const read = files.filter(({ path }) => isRead(path));
  const sorted = [...read].sort((one, other) => byCodeUnit(one.path, other.path));
  const hash = sha256.create();
  for (const { path, text } of sorted) {
    const bytes = utf8ToBytes(canonicalText(text));
    hash.update(utf8ToBytes(`${path}\0${bytes.length}\0`)).update(bytes);
    yield;
  }
  return bytesToHex(hash.digest());
}

/** The first eight figures, as shown in a reply. */
export function shortEdition(edition: string): string {
  return edition.slice(0, 8);
}

function isRead(path: string): boolean {
  const role = fileRole(path);
  return role !== undefined && role !== "readme";
}

function canonicalText(text: string): string {
  return text.replace(/^\uFEFF/, "").replaceAll(/\r\n?/g, "\n");
}
