/**
 * The one look of our charts: ink on paper, its quiet dark counterpart, black on white in print, one line weight; a second ink, always
 * hatched too, for doubt. Every rule is held inside its drawing, so that it leaves a page that it is put into alone.
 */

interface Sheet {
  readonly paper: string;
  readonly ink: string;
  readonly doubt: string;
}

const light: Sheet = { paper: "#fdfcf8", ink: "#1c1b19", doubt: "#8a3f10" };
const dark: Sheet = { paper: "#1d1c1a", ink: "#e9e6de", doubt: "#eba86c" };
const print: Sheet = { paper: "#fff", ink: "#000", doubt: "#000" };

/** The style sheet of a drawing whose root has the class `name`. */
export function inkStyle(name: string, { hasDoubt }: { readonly hasDoubt: boolean }): string {
  const inside = (...selectors: readonly string[]): string =>
    selectors.map((selector) => `.${name} ${selector}`).join(",");
  const colours = ({ paper, ink, doubt }: Sheet): string =>
    [
      `${inside(".paper", ".open", ".ink.open")}{fill:${paper}}`,
      `${inside(".ink")}{stroke:${ink}}`,
      `${inside(".solid", ".ink.solid", "text")}{fill:${ink}}`,
      hasDoubt ? `${inside(".ink.doubt")}{stroke:${doubt}}` : "",
    ].join("");
  return [
    `${inside(".ink")}{fill:none;stroke-width:1.2;stroke-linecap:round;stroke-linejoin:round}`,
    `${inside("text")}{font:12px sans-serif}`,
    hasDoubt ? `${inside(".name")}{font-weight:bold}` : "",
    colours(light),
    `@media (prefers-color-scheme:dark){${colours(dark)}}`,
    `@media print{${colours(print)}}`,
  ].join("");
}
