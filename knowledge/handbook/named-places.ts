/** Every place in a file that names sources, cautions or a drawing, found by its key, so that no new place can be forgotten. */
import type { Path } from "./yaml-reading.ts";

export type NamedPlace =
  | { readonly key: "sources" | "cautions"; readonly ids: readonly string[]; readonly path: Path }
  | { readonly key: "drawing"; readonly name: string; readonly path: Path };

/** Calls `visit` for each value under a key `sources` or `cautions` (lists) or `drawing` (a text), at any depth. Cost: the size of the value. */
export function visitNamed(value: unknown, visit: (place: NamedPlace) => void, path: Path = []): void {
  if (typeof value !== "object" || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) visitNamed(item, visit, [...path, index]);
    return;
  }
  for (const [key, item] of Object.entries(value)) {
    const isList = (key === "sources" || key === "cautions") && Array.isArray(item);
    const isDrawing = key === "drawing" && typeof item === "string";
    if (isList) visit({ key, ids: item, path: [...path, key] });
    else if (isDrawing) visit({ key: "drawing", name: item, path: [...path, key] });
    else visitNamed(item, visit, [...path, key]);
  }
}
