/**
 * Keeps the sources compiled between runs, which halves the time to the first prompt. Beside the packages and not in the system's
 * temporary folder, where another user of the machine could leave something for us to run.
 */
import { accessSync, constants } from "node:fs";
import { enableCompileCache } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const packages = fileURLToPath(new URL("../node_modules", import.meta.url));

/**
 * To be called before the modules that are to be kept are imported. Where the folder cannot be written (an image that runs as
 * another user) nothing is kept; Node is not even asked, because it can try for ever where a folder cannot be made.
 */
export function keepCompiled(): void {
  if (isWritable(packages)) enableCompileCache(join(packages, ".cache", "compiled"));
}

function isWritable(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch (problem) {
    // Missing or forbidden: either way nothing can be kept there.
    return !(problem instanceof Error);
  }
}
