/** A row about a variant that the handbook does not have yet: enough of it to begin with, or what is missing. */
import { parseDateText } from "../calendar/date-text.ts";
import { didYouMean } from "../handbook/nearest-name.ts";
import type { PartKind } from "../handbook/schema.ts";
import { Origin } from "../handbook/variant-schema.ts";
import { Id } from "../handbook/written-forms.ts";
import type { NewClaim } from "./claim-of-row.ts";
import type { VariantKey } from "./columns.ts";
import type { RowPlace } from "./row-place.ts";
import { cellText } from "./sheet.ts";

export interface NewVariant {
  readonly id: string;
  readonly name: string;
  readonly origin: Origin;
  readonly summary: string;
  readonly from: string;
  readonly to: string;
  readonly claims: ReadonlyMap<string, NewClaim>;
}

/** Undefined when the row is none, or not enough of one; each missing or wrong cell is named. `key`: the column of the id. */
export function newVariantOf(
  part: PartKind,
  id: string,
  { row, number, columns, refuse }: RowPlace,
  key: number,
): Omit<NewVariant, "claims"> | undefined {
  const at = (name: VariantKey): number =>
    columns.findIndex((column) => column?.kind === "about" && column.key === name);
  const said = (name: VariantKey): string => (at(name) < 0 ? "" : cellText(row[at(name)]));
  const [name, origin, from, to] = [said("name"), said("origin"), said("from"), said("to")];
  if (origin === "" || from === "" || to === "") {
    const { message, mend } = unknownVariant(part, id);
    refuse(number, key, message, mend);
    return undefined;
  }
  if (!Id.safeParse(id).success) {
    refuse(number, key, `"${id}" cannot be an id`, "write lower-case letters and figures joined by hyphens");
    return undefined;
  }
  const kind = Origin.safeParse(origin);
  if (!kind.success) refuse(number, at("origin"), "no origin", didYouMean(origin, Origin.options));
  const wrong = (
    [
      ["from", from],
      ["to", to],
    ] as const
  ).filter(([, date]) => parseDateText(date) === undefined);
  for (const [column] of wrong) {
    refuse(
      number,
      at(column),
      "no date",
      "write 1980, 1980-05 or 1980-05-17, with the column formatted as text",
    );
  }
  if (!kind.success || wrong.length > 0) return undefined;
  return { id, name: name || id, origin: kind.data, summary: said("summary") || name || id, from, to };
}

/** What is wrong with the id of a row that no variant has. */
function unknownVariant(part: PartKind, id: string): { readonly message: string; readonly mend: string } {
  const near = didYouMean(
    id,
    part.variants.map((variant) => variant.id),
  );
  const fill = "for a new variant fill the columns name, origin, from and to";
  return { message: `no variant "${id}"`, mend: near.startsWith("did") ? `${near} Or ${fill}` : fill };
}
