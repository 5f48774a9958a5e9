/**
 * A sheet back into the claims of a part kind. What cannot be read is named cell by cell and changes nothing; a column that is not
 * in the sheet, and a row that is not, leave the handbook as it is.
 */
import type { PartKind, Source, Variant } from "../handbook/schema.ts";
import { type ClaimOfRow, claimOfRow, type NewClaim } from "./claim-of-row.ts";
import { type Column, featureOf, folded, noteMark, readHead, type VariantKey } from "./columns.ts";
import { type NewVariant, newVariantOf } from "./new-variant.ts";
import type { Refuse, RowPlace } from "./row-place.ts";
import { type Cell, type CellRemark, cellName, cellText, type Sheet } from "./sheet.ts";

export interface ReadTable {
  /** Variant to feature to claim: only what differs from the handbook. */
  readonly claims: ReadonlyMap<string, ReadonlyMap<string, NewClaim>>;
  readonly added: readonly NewVariant[];
  /** Cells that were not read, in the order of the sheet. */
  readonly unread: readonly CellRemark[];
  /** How many cells there are under heads, in rows of variants. */
  readonly cells: number;
}

/** `heads`: what a head that says nothing by itself is to mean, by column from 0, as somebody has told. */
export interface TableQuestion {
  readonly part: PartKind;
  readonly sources: readonly Source[];
  readonly sheet: Sheet;
  readonly heads?: ReadonlyMap<number, string>;
}

export function readTable(question: TableQuestion): ReadTable {
  const { part, sheet } = question;
  const [heads = [], ...rows] = sheet.rows;
  const unread: CellRemark[] = [];
  const refuse: Refuse = (row, column, message, mend) => {
    const written = cellText(sheet.rows[row]?.[column]);
    unread.push({ sheet: sheet.name, cell: cellName(row, column), written, message, mend });
  };
  const columns = readHeads(question, heads, refuse);
  const key = columns.findIndex((column) => column?.kind === "variant");
  if (key < 0) {
    refuse(0, 0, "no column says which variant a row is about", 'head one of the columns "variant"');
    return { claims: new Map(), added: [], unread, cells: 0 };
  }
  const claims = new Map<string, ReadonlyMap<string, NewClaim>>();
  const added: NewVariant[] = [];
  const seen = new Set<string>();
  const headless = new Set<number>();
  let cells = 0;
  for (const [index, row] of rows.entries()) {
    const place: RowPlace = { row, number: index + 1, columns, refuse };
    const id = cellText(row[key]);
    if (id.startsWith(noteMark) || row.every((cell) => cellText(cell) === "")) continue;
    cells += row.filter((cell, column) => columns[column] !== undefined && cellText(cell) !== "").length;
    refuseHeadless(place, heads, headless);
    const variant = variantNamed(part, id);
    const known = variant?.id ?? id;
    if (seen.has(known)) {
      refuse(index + 1, key, `the variant "${known}" has two rows`, "keep one of them");
      continue;
    }
    seen.add(known);
    if (variant !== undefined) {
      refuseOther(variant, place);
      const changed = changedClaims(question, variant, place);
      if (changed.size > 0) claims.set(variant.id, changed);
      continue;
    }
    const fresh = newVariantOf(part, id, place, key);
    if (fresh === undefined) continue;
    added.push({ ...fresh, claims: changedClaims(question, undefined, place) });
  }
  return { claims, added, unread: unread.toSorted(bySheet(sheet)), cells };
}

function readHeads(
  { part, heads: told = new Map() }: TableQuestion,
  heads: readonly Cell[],
  refuse: Refuse,
): readonly (Column | undefined)[] {
  const known = new Set<string>();
  return heads.map((cell, index) => {
    const head = told.get(index) ?? cellText(cell);
    if (head === "") return undefined;
    const read = readHead(part, head);
    if (!("column" in read)) {
      refuse(0, index, `${read.message}: the column is left out`, read.mend);
      return undefined;
    }
    const key = JSON.stringify({ ...read.column, feature: featureOf(read.column)?.id });
    if (!known.has(key)) {
      known.add(key);
      return read.column;
    }
    refuse(0, index, "a second column for the same: it is left out", "keep one of them");
    return undefined;
  });
}

/** A column without a head is named once, a cell beyond the last head each time: it is what an unquoted comma of a CSV leaves. */
function refuseHeadless(
  { row, number, refuse }: RowPlace,
  heads: readonly Cell[],
  headless: Set<number>,
): void {
  for (const [index, cell] of row.entries()) {
    const isHeadless = cellText(heads[index]) === "" && cellText(cell) !== "";
    if (!isHeadless || headless.has(index)) continue;
    if (index < heads.length) {
      headless.add(index);
      refuse(number, index, "the column has no head: it is left out", "head it, or empty it");
    } else {
      refuse(
        number,
        index,
        "the row has more cells than there are heads",
        "put a cell that holds a comma into quotes",
      );
    }
  }
}

/** What a row says of a known variant beside its claims, and otherwise than the handbook. */
function refuseOther(variant: Variant, { row, number, columns, refuse }: RowPlace): void {
  const periods = [...variant.fitted, ...variant.sold];
  const known: Readonly<Record<VariantKey, readonly string[]>> = {
    name: [variant.name, ...variant.also],
    origin: [variant.origin],
    summary: [variant.summary],
    from: periods.map(({ from }) => from),
    to: periods.map(({ to }) => to),
  };
  for (const [index, column] of columns.entries()) {
    const written = cellText(row[index]);
    if (column?.kind !== "about" || written === "") continue;
    if (known[column.key].some((one) => folded(one) === folded(written))) continue;
    const message = `the handbook has another ${column.key} for ${variant.id}, which a table does not change`;
    refuse(
      number,
      index,
      message,
      `change it in the file of the part kind; here: ${known[column.key].join(", ") || "nothing"}`,
    );
  }
}

function variantNamed(part: PartKind, written: string): Variant | undefined {
  const word = written.toLowerCase();
  return (
    part.variants.find(({ id }) => id === word) ??
    part.variants.find(({ name }) => name.toLowerCase() === word)
  );
}

function changedClaims(
  { part, sources }: TableQuestion,
  variant: Variant | undefined,
  place: RowPlace,
): ReadonlyMap<string, NewClaim> {
  const changed = new Map<string, NewClaim>();
  for (const feature of part.features) {
    const before = variant?.tells[feature.id];
    const read: ClaimOfRow = claimOfRow(feature, before, sources, place);
    if (read.isChanged) changed.set(feature.id, read.claim);
  }
  return changed;
}

function bySheet(sheet: Sheet): (one: CellRemark, other: CellRemark) => number {
  const order = new Map<string, number>();
  for (const [row, cells] of sheet.rows.entries()) {
    for (const column of cells.keys()) order.set(cellName(row, column), order.size);
  }
  return (one, other) => (order.get(one.cell) ?? 0) - (order.get(other.cell) ?? 0);
}
