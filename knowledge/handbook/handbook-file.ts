/**
 * The files a handbook folder may hold, and how large they may be. The lists are closed: a misspelt file name must
 * be noticed, because its content would be missing without a word.
 */
import { nearestName } from "./nearest-name.ts";
import { fileStart, type Problem, type ProblemCode } from "./problem.ts";

/** One file as read; `path` is relative to the handbook folder, with forward slashes. */
export interface HandbookFile {
  readonly path: string;
  readonly text: string;
}

export interface HandbookLimits {
  readonly fileBytes: number;
  readonly totalBytes: number;
  readonly files: number;
}

/** 2 MB a file, 20 MB and 500 files a folder: ten times what a large club has written. */
export const handbookLimits: HandbookLimits = { fileBytes: 2_000_000, totalBytes: 20_000_000, files: 500 };

export type FileRole = "cover" | "cars" | "sources" | "part" | "drawing" | "learnt words" | "readme";

export const learntWordsPath = "learnt-words.json";

const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,99}$/;
const TOP_FILES: ReadonlyMap<string, FileRole> = new Map([
  ["handbook.yaml", "cover"],
  ["cars.yaml", "cars"],
  ["sources.yaml", "sources"],
  [learntWordsPath, "learnt words"],
  ["README.md", "readme"],
  ["LICENSE", "readme"],
]);

/** What a path is for, or undefined when a handbook holds no such file. README.md and LICENSE are allowed and unread. */
export function fileRole(path: string): FileRole | undefined {
  const top = TOP_FILES.get(path);
  if (top !== undefined) return top;
  const [folder, name, ...deeper] = path.split("/");
  if (name === undefined || deeper.length > 0 || !NAME.test(name)) return undefined;
  if (folder === "parts" && name.endsWith(".yaml")) return "part";
  if (folder === "drawings" && name.endsWith(".svg")) return "drawing";
  return undefined;
}

/** The problem of a path that leaves the folder or has no place in a handbook; undefined for a good one. */
export function pathProblem(path: string): Problem | undefined {
  if (leavesFolder(path)) {
    return fileProblem(
      "file-path",
      printable(path),
      "this path leads out of the handbook folder",
      "keep every file inside the folder",
    );
  }
  if (fileRole(path) !== undefined) return undefined;
  return fileProblem("file-unknown", printable(path), "a handbook has no such file", mendPath(path));
}

/** A problem of a whole file. */
export function fileProblem(code: ProblemCode, file: string, message: string, mend: string): Problem {
  return { code, file, ...fileStart, message, mend };
}

function leavesFolder(path: string): boolean {
  const isAbsolute = path.startsWith("/") || /^[A-Za-z]:/.test(path);
  return isAbsolute || /[\\\0]/.test(path) || path.split("/").some((step) => step === ".." || step === ".");
}

function mendPath(path: string): string {
  if (path.endsWith(".yml")) return `rename it to end in .yaml`;
  const near = nearestName(path, TOP_FILES.keys());
  if (near !== undefined) return `did you mean ${near}?`;
  return "a handbook holds handbook.yaml, cars.yaml, sources.yaml, learnt-words.json, parts/NAME.yaml and drawings/NAME.svg: rename or move it";
}

/** A path or name without control characters and of bounded length, fit to be printed; "." for an empty one. */
export function printable(written: string): string {
  const plain = written.replaceAll(/[^\x20-\x7e]/g, "?");
  return plain.length > 120 ? `${plain.slice(0, 117)}...` : plain || ".";
}
