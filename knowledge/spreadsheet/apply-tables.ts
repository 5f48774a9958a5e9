/** Tables into the files of a handbook, and the handbook that comes of it, or why none does. */
import type { HandbookFile } from "../handbook/handbook-file.ts";
import { type LoadedHandbook, loadHandbook, readHandbook } from "../handbook/load-handbook.ts";
import { type TableChanges, withTable } from "./with-table.ts";

export interface AppliedTables {
  /** Only the files that are different now. */
  readonly changed: readonly HandbookFile[];
  readonly loaded: LoadedHandbook;
}

/** `tables`: by the part kind's id. The other files stay as they are. */
export function applyTables(
  files: readonly HandbookFile[],
  tables: ReadonlyMap<string, TableChanges>,
): AppliedTables {
  const parts = new Map(
    readHandbook(files).draft.parts.map(({ reading, value }) => [reading.file, value.id]),
  );
  const after = files.map((file) => {
    const changes = tables.get(parts.get(file.path) ?? "");
    return changes === undefined ? file : { ...file, text: withTable(file.text, changes) };
  });
  const changed = after.filter(({ text }, index) => text !== files[index]?.text);
  return { changed, loaded: loadHandbook(after) };
}
