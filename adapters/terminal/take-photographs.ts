/** Photographs from the disk of whoever sits here, into the keeper of photographs; what cannot be taken is said, and the rest goes along. */
import { open } from "node:fs/promises";
import { homedir } from "node:os";
import { join, resolve } from "node:path";
import type { PhotographKeeper } from "../photographs/index.ts";
import * as phrases from "./phrases.ts";

/** As many as one message may bring. */
const MOST_PHOTOGRAPHS = 20;
/** One more than the keeper takes: whatever is longer is refused by it, without being read to its end. */
const MOST_READ = 20_000_001;

export interface PhotographsTaken {
  readonly ids: readonly string[];
  /** A sentence for each that was not taken. */
  readonly refusals: readonly string[];
}

/** `folder`: where paths begin that name no other place. */
export async function takePhotographs(
  paths: readonly string[],
  folder: string,
  take: PhotographKeeper["take"],
  by: string,
): Promise<PhotographsTaken> {
  const ids: string[] = [];
  const refusals: string[] = [];
  for (const path of paths.slice(0, MOST_PHOTOGRAPHS)) {
    const bytes = await bytesAt(
      path.startsWith("~/") ? join(homedir(), path.slice(2)) : resolve(folder, path),
      path,
    );
    if (typeof bytes === "string") {
      refusals.push(bytes);
      continue;
    }
    const taken = await take(bytes, by);
    if (taken.ok) ids.push(taken.id);
    else refusals.push(phrases.notTakenIn(path, taken.problem.message));
  }
  if (paths.length > MOST_PHOTOGRAPHS) refusals.push(phrases.tooManyPhotographs(MOST_PHOTOGRAPHS));
  return { ids: [...new Set(ids)], refusals };
}

/** The file's bytes, or why there are none. Only plain files are opened to their end: a pipe would never end. */
async function bytesAt(place: string, path: string): Promise<Uint8Array | string> {
  try {
    await using file = await open(place, "r");
    const { size, isFile } = await file
      .stat()
      .then((found) => ({ size: found.size, isFile: found.isFile() }));
    if (!isFile) return phrases.notAFile(path);
    const bytes = Buffer.alloc(Math.min(size, MOST_READ));
    const { bytesRead } = await file.read(bytes, 0, bytes.length, 0);
    return bytes.subarray(0, bytesRead);
  } catch (failure) {
    if (!(failure instanceof Error && "code" in failure)) throw failure;
    return failure.code === "ENOENT" ? phrases.noSuchFile(path) : phrases.notReadable(path);
  }
}
