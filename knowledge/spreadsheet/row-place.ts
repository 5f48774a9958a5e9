/** One row of a sheet with what its columns mean, and where to complain of its cells. */
import type { Column } from "./columns.ts";
import type { Cell } from "./sheet.ts";

export type Refuse = (row: number, column: number, message: string, mend: string) => void;

/** One row of the sheet with what its columns mean. */
export interface RowPlace {
  readonly row: readonly Cell[];
  /** From 0, the head is row 0. */
  readonly number: number;
  readonly columns: readonly (Column | undefined)[];
  readonly refuse: Refuse;
}
