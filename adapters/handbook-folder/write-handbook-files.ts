// Files of a handbook onto the disk: each beside its old self first, then in its place, so that a reader meets no half of one.
import { mkdir, rename, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type HandbookFile, pathProblem } from "../../knowledge/index.ts";
import { OutsideError } from "../errors.ts";

/** Writes files into a handbook's folder, which is made if need be. Throws OutsideError for a path that leaves it. */
export async function writeHandbookFiles(folder: string, files: readonly HandbookFile[]): Promise<void> {
  for (const { path, text } of files) {
    const problem = pathProblem(path);
    if (problem !== undefined) throw new OutsideError(`${path}: ${problem.message}`);
    const target = join(folder, path);
    const beside = join(dirname(target), `.${path.replaceAll("/", "-")}.new`);
    try {
      await mkdir(dirname(target), { recursive: true });
      await writeFile(beside, text);
      await rename(beside, target);
    } catch (failure) {
      throw new OutsideError(`${target}: cannot be written`, failure);
    }
  }
}
