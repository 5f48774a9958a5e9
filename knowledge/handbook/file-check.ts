/** The files as such, before a word of them is read: names, sizes, letters, and whether any is missing. */
import {
  fileProblem,
  fileRole,
  type HandbookFile,
  type HandbookLimits,
  pathProblem,
} from "./handbook-file.ts";
import type { InPieces } from "./in-pieces.ts";
import { placesIn } from "./place-in-text.ts";
import type { Problem } from "./problem.ts";

// A half of a surrogate pair alone, the sign for undecodable bytes, or a control character other than tab and line ends.
const NOT_TEXT = /(?![\t\n\r])[\p{Cc}\p{Cs}\ufffd]/u;

/** All problems of the files as files; empty when each can be read and none is missing. Gives way after each file. */
export function* checkingFiles(
  files: readonly HandbookFile[],
  limits: HandbookLimits,
): InPieces<readonly Problem[]> {
  if (files.length > limits.files) return [tooManyFiles(limits)];
  const total = files.reduce((sum, { text }) => sum + byteLength(text), 0);
  if (total > limits.totalBytes) return [folderTooLarge(limits)];
  const problems: Problem[] = [];
  for (const file of files) {
    problems.push(...fileProblems(file, limits));
    yield;
  }
  return [...problems, ...pathsTwice(files), ...missing(files)];
}

/** A folder with more files than a handbook may have. */
export function tooManyFiles(limits: HandbookLimits): Problem {
  const message = `the folder holds more than ${limits.files} files`;
  return fileProblem("too-many-files", ".", message, "keep the handbook in a folder of its own");
}

/** A folder that is larger than a handbook may be. */
export function folderTooLarge(limits: HandbookLimits): Problem {
  const message = `the files together are larger than ${inMegabytes(limits.totalBytes)}`;
  return fileProblem("folder-too-large", ".", message, "shorten them, or simplify the drawings");
}

/** A file that is larger than a handbook's may be. */
export function fileTooLarge(path: string, limits: HandbookLimits): Problem {
  const message = `the file is larger than ${inMegabytes(limits.fileBytes)}`;
  const mend =
    fileRole(path) === "learnt words"
      ? "delete it, and learn the words from fewer messages"
      : "shorten it, or simplify the drawing";
  return fileProblem("file-too-large", path, message, mend);
}

/** A file that is not UTF-8 text. */
export function fileNotText(path: string): Problem {
  return fileProblem(
    "file-not-text",
    path,
    "the file is not plain text (UTF-8)",
    "save it again as UTF-8 text",
  );
}

function fileProblems(file: HandbookFile, limits: HandbookLimits): readonly Problem[] {
  const path = pathProblem(file.path);
  if (path !== undefined) return [path];
  if (byteLength(file.text) > limits.fileBytes) return [fileTooLarge(file.path, limits)];
  const bad = NOT_TEXT.exec(file.text);
  if (bad !== null) return [{ ...fileNotText(file.path), ...placesIn(file.text)(bad.index) }];
  if (fileRole(file.path) !== "readme" && file.text.trim() === "") {
    return [fileProblem("file-empty", file.path, "the file is empty", "write it, or delete it")];
  }
  return [];
}

function pathsTwice(files: readonly HandbookFile[]): readonly Problem[] {
  const seen = new Set<string>();
  const twice: Problem[] = [];
  for (const { path } of files) {
    if (seen.has(path))
      twice.push(fileProblem("file-twice", path, "this file comes twice", "hand it in once"));
    seen.add(path);
  }
  return twice;
}

function missing(files: readonly HandbookFile[]): readonly Problem[] {
  const paths = new Set(files.map(({ path }) => path));
  const needed = ["handbook.yaml", "cars.yaml", "sources.yaml"].filter((path) => !paths.has(path));
  const problems = needed.map((path) =>
    fileProblem("file-missing", path, "this file is missing", "add it: every handbook has one"),
  );
  const hasPart = files.some(({ path }) => fileRole(path) === "part");
  if (hasPart) return problems;
  const message = "the handbook has no part kind";
  return [
    ...problems,
    fileProblem("file-missing", "parts", message, "add a file such as parts/rear-spoiler.yaml"),
  ];
}

/** The length in UTF-8 without making the bytes. */
function byteLength(text: string): number {
  let bytes = text.length;
  for (let index = 0; index < text.length; index++) {
    const unit = text.charCodeAt(index);
    if (unit < 0x80) continue;
    const isSurrogate = unit >= 0xd800 && unit <= 0xdfff;
    // A pair is four bytes in two units, other letters two or three in one.
    bytes += unit < 0x800 || isSurrogate ? 1 : 2;
  }
  return bytes;
}

function inMegabytes(bytes: number): string {
  return bytes >= 1_000_000 ? `${Math.round(bytes / 100_000) / 10} MB` : `${bytes} bytes`;
}
