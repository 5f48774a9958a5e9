/** A part kind's claims as a sheet: a row a variant, frequencies in the historian's own words. Nothing of a claim is left out. */
import type { PartKind, Variant } from "../handbook/schema.ts";
import { type Column, columnsOf, headOf, nameLine } from "./columns.ts";
import type { Cell, Sheet } from "./sheet.ts";

/** The sheet is named after the part kind; its second row says in names what the heads say in ids. */
export function tableOfPart(part: PartKind): Sheet {
  const columns = columnsOf(part);
  return {
    name: part.id,
    rows: [
      columns.map(headOf),
      columns.map((column) => nameLine(part, column)),
      ...part.variants.map((variant) => columns.map((column) => cellOf(variant, column))),
    ],
  };
}

function cellOf(variant: Variant, column: Column): Cell {
  if (column.kind === "variant") return variant.id;
  if (column.kind === "about") return column.key === "name" ? variant.name : variant.origin;
  const claim = variant.tells[column.feature.id];
  if (claim === undefined) return null;
  if (column.kind === "sources") return claim.sources.length === 0 ? null : claim.sources.join(", ");
  const row: Readonly<Record<string, unknown>> = claim;
  const said = row[column.kind === "state" ? column.state : column.kind];
  return typeof said === "string" || typeof said === "number" ? said : null;
}
