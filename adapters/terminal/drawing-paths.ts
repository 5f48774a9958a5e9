/** Where the drawings of the handbooks lie, as somebody at a terminal would open them: from the folder they stand in. */
import { join, relative } from "node:path";
import type { Handbook } from "../../knowledge/index.ts";

/** A way from a drawing's path in its handbook to its path from `standing`; a path no handbook has stays as it is. */
export function locateIn(
  handbooks: readonly { readonly folder: string; readonly handbook: Handbook }[],
  standing: string,
): (path: string) => string {
  return (path) => {
    const holder = handbooks.find(({ handbook }) => handbook.drawings.has(path));
    return holder === undefined ? path : relative(standing, join(holder.folder, path));
  };
}
