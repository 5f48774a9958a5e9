// The files of a handbook folder as text. Sizes and links are looked at before a byte is read, because a bot's keeper
// may point it at any folder; nothing outside the folder is ever opened.
import { open, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import {
  fileNotText,
  fileProblem,
  fileRole,
  fileTooLarge,
  folderTooLarge,
  type HandbookFile,
  type HandbookLimits,
  handbookLimits,
  type Problem,
  pathProblem,
  sortedProblems,
} from "../../knowledge/index.ts";
import { listHandbookFolder } from "./list-handbook-folder.ts";

export type FolderReading =
  | { readonly ok: true; readonly files: readonly HandbookFile[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The files a handbook consists of, by path. Refused: a folder that is missing or cannot be read, files with no place
 * in a handbook, links that leave the folder, files over the limits, text that is not UTF-8. README.md and LICENSE
 * are passed over.
 */
export async function readHandbookFolder(
  folder: string,
  limits: HandbookLimits = handbookLimits,
): Promise<FolderReading> {
  try {
    const root = await realpath(folder);
    if (!(await stat(root)).isDirectory()) return refusal(folderProblem(folder, "is no folder"));
    return await readFiles(root, limits);
  } catch (error) {
    return refusal(folderProblem(folder, reason(error)));
  }
}

async function readFiles(root: string, limits: HandbookLimits): Promise<FolderReading> {
  const { paths, problems } = await listHandbookFolder(root, limits);
  const found: Problem[] = [...problems];
  const files: HandbookFile[] = [];
  let totalBytes = 0;
  for (const path of paths.toSorted()) {
    const strange = pathProblem(path);
    if (strange !== undefined) found.push(strange);
    if (strange !== undefined || fileRole(path) === "readme") continue;
    const reading = await readOne(root, path, limits, limits.totalBytes - totalBytes);
    if ("code" in reading) found.push(reading);
    else {
      totalBytes += reading.bytes;
      files.push({ path, text: reading.text });
    }
    if ("code" in reading && reading.code === "folder-too-large") break;
  }
  return found.length === 0 ? { ok: true, files } : { ok: false, problems: sortedProblems(found) };
}

async function readOne(
  root: string,
  path: string,
  limits: HandbookLimits,
  bytesLeft: number,
): Promise<Problem | { readonly text: string; readonly bytes: number }> {
  try {
    const real = await realpath(join(root, path));
    if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) return linkLeaves(path);
    const stats = await stat(real);
    if (!stats.isFile()) return fileProblem("file-unknown", path, "this is no ordinary file", "remove it");
    if (stats.size > limits.fileBytes) return fileTooLarge(path, limits);
    if (stats.size > bytesLeft) return folderTooLarge(limits);
    const bytes = await readAtMost(real, stats.size);
    const text = decoded(bytes);
    return text === undefined ? fileNotText(path) : { text, bytes: bytes.length };
  } catch (error) {
    return fileProblem("folder-unreadable", path, `the file ${reason(error)}`, "check who may read it");
  }
}

/** No more than the size that was looked at, even if the file grows meanwhile; one reading may bring less than was asked for. */
async function readAtMost(path: string, size: number): Promise<Uint8Array> {
  const handle = await open(path, "r");
  try {
    const bytes = new Uint8Array(size);
    let end = 0;
    while (end < size) {
      const { bytesRead } = await handle.read(bytes, end, size - end, end);
      if (bytesRead === 0) break;
      end += bytesRead;
    }
    return bytes.subarray(0, end);
  } finally {
    await handle.close();
  }
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}

function linkLeaves(path: string): Problem {
  const message = "this link leads out of the handbook folder";
  return fileProblem("file-path", path, message, "copy the file into the folder in its place");
}

function refusal(problem: Problem): FolderReading {
  return { ok: false, problems: [problem] };
}

function folderProblem(folder: string, what: string): Problem {
  const isMissing = what === "does not exist";
  const code = isMissing ? "folder-missing" : "folder-unreadable";
  const mend = isMissing
    ? "check the path: it must be the folder that holds handbook.yaml"
    : "give the folder that holds handbook.yaml, and see that the bot may read it";
  return fileProblem(code, ".", `the handbook folder ${folder} ${what}`, mend);
}

/** Why the file system refused, in words; only what it says itself is passed on. */
function reason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT") return "does not exist";
  if (code === "EACCES" || code === "EPERM") return "may not be read";
  if (code === "ENOTDIR") return "is no folder";
  if (code === "ELOOP") return "is a link that goes round in a circle";
  if (error instanceof Error) return `cannot be read (${code || error.message})`;
  throw error;
}
