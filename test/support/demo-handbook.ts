// The handbook of the invented Shrike as every test of the conversation reads it: from its folder, once.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Handbook, type HandbookFile, loadHandbook } from "../../knowledge/index.ts";

const folder = join(import.meta.dirname, "../../knowledge/handbooks/wexcombe-shrike");

export function demoHandbook(): Handbook {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry): HandbookFile => {
      const path = join(entry.parentPath, entry.name);
      return { path: path.slice(folder.length + 1), text: readFileSync(path, "utf8") };
    });
  const loaded = loadHandbook(files);
  if (!loaded.ok) throw new Error(loaded.problems.map((problem) => JSON.stringify(problem)).join("\n"));
  return loaded.handbook;
}
