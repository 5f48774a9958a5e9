/** Every place in a file that names sources or a drawing, found by its key, so that no new place can be forgotten. */
import type { Path } from "./yaml-reading.ts";

export type NamedPlace =
  | { readonly key: "sources"; readonly ids: readonly string[]; readonly path: Path }
  | { readonly key: "drawing"; readonly name: string; readonly path: Path };

/** Calls `visit` for each value under a key `sources` (a list) or `drawing` (a text), at any depth. Cost: the size of the value. */
export function visitNamed(value: unknown, visit: (place: NamedPlace) => void, path: Path = []): void {
  if (typeof value !== "object" || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) visitNamed(item, visit, [...path, index]);
    return;
  }
  for (const [key, item] of Object.entries(value)) {
    const isSources = key === "sources" && Array.isArray(item);
    const isDrawing = key === "drawing" && typeof item === "string";
    if (isSources) visit({ key: "sources", ids: item, path: [...path, key] });
    else if (isDrawing) visit({ key: "drawing", name: item, path: [...path, key] });
    else visitNamed(item, visit, [...path, key]);
  }
}
