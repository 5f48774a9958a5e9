/**
 * HTML as a value: a tagged template that escapes whatever is put into it, unless that is markup itself. The framework's own template
 * was not taken because it may answer with a promise, and a page must be complete before its length is known.
 */

/** Markup that is safe to be sent; only `html` makes it. */
export interface Markup {
  readonly markup: string;
}

export type Piece = Markup | string | number | undefined | false | readonly Piece[];

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

// Control characters other than tab and line ends, half characters, and the two that are none.
const FORBIDDEN = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** Any text made fit for HTML, inside an element or a quoted attribute. */
export function escapeHtml(text: string): string {
  return text
    .replace(FORBIDDEN, (sign) => ("\t\n\r".includes(sign) ? sign : ""))
    .replace(/[&<>"']/gu, (sign) => entities[sign] ?? sign);
}

/** Markup from a template; undefined and false leave nothing, lists are put one after another. */
export function html(strings: TemplateStringsArray, ...pieces: readonly Piece[]): Markup {
  let markup = strings[0] ?? "";
  pieces.forEach((piece, index) => {
    markup += written(piece) + (strings[index + 1] ?? "");
  });
  return { markup };
}

function written(piece: Piece): string {
  if (piece === undefined || piece === false) return "";
  if (typeof piece === "string") return escapeHtml(piece);
  if (typeof piece === "number") return String(piece);
  if (isList(piece)) return piece.map(written).join("");
  return piece.markup;
}

function isList(piece: Piece): piece is readonly Piece[] {
  return Array.isArray(piece);
}
