// Short ways to write down sightings in tests.
import type { ChangeoverSighting } from "../../knowledge/dating/report-groups.ts";

/** A sighting known to the quarter of a month `cell` (counted from 0), neither swapped nor misread unless said. */
export function inCell(
  cell: number,
  isNew: boolean,
  changes: Partial<ChangeoverSighting> = {},
): ChangeoverSighting {
  const built = { from: cell / 4, to: (cell + 1) / 4 };
  const id = `${isNew ? "new" : "old"}-${String(cell).padStart(3, "0")}`;
  return { id, isNew, built, swap: 0, misread: 0, isSought: true, ...changes };
}
