/**
 * A sheet as whoever reads or writes the file holds it: rows of plain cells. What a cell means is decided in this room; how it is
 * kept in a file is the business of whoever knows the format.
 */

/** A date stands for itself: it is always a spreadsheet's own idea of what somebody typed, and never what was meant. */
export type Cell = string | number | boolean | null | { readonly date: string };

export interface Sheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
}

/** A cell that could not be read, or was left aside, and why. */
export interface CellRemark {
  readonly sheet: string;
  /** As spreadsheets name cells: "C7". */
  readonly cell: string;
  /** What stands in it. */
  readonly written: string;
  /** Lower case, no full stop. */
  readonly message: string;
  /** What to write instead, lower case, no full stop. */
  readonly mend: string;
}

/** `row` and `column` from 0: 6, 2 is "C7". */
export function cellName(row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}

/** What a cell says as text, without blanks around it; "" for an empty one. */
export function cellText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return "";
  return typeof cell === "object" ? cell.date : String(cell).trim();
}
