// The handbook of the invented Shrike as every test of the conversation reads it, and its neighbours: from its folder, once.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Handbook, type HandbookFile, loadHandbook } from "../../knowledge/index.ts";

export function demoHandbook(): Handbook {
  return shippedHandbook("wexcombe-shrike");
}

/** `name`: of its folder. */
export function shippedHandbook(name: "wexcombe-shrike" | "marlpit-wren" | "ollerton-finch"): Handbook {
  const folder = join(import.meta.dirname, "../../knowledge/handbooks", name);
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
