/** Sizes as an annotator writes them, read apart from the reader under test. */

/** Units as an annotator may write them. */
const unitNames: readonly (readonly [RegExp, string])[] = [
  [/^(?:mm|mil|millimet)/, "mm"],
  [/^(?:cm|centimet)/, "cm"],
  [/^(?:in|"|''|inch)/, "in"],
  [/^(?:kg|kilo)/, "kg"],
  [/^(?:g|gram)/, "g"],
  [/^(?:lb|pound)/, "lb"],
  [/^(?:oz|ounce)/, "oz"],
];

/** Millimetres in a length unit, grams in a mass unit. */
export const millimetresOrGrams: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: 25.4,
  g: 1,
  kg: 1000,
  lb: 453.59237,
  oz: 28.349523125,
};

const range = /(\d+(?:[.,]\d+)?) ?(?:-|\u2013|to|and) ?(\d+(?:[.,]\d+)?) ?([a-z"']+)/i;
const piece = /(\d+(?:[.,]\d+)?)(?:(?: and| &)?[ -](\d+)\/(\d+))?(?:\/(\d+))? ?([a-z"']*)/gi;

export interface AnnotatedSize {
  /** In millimetres or grams; the bare number when no unit was written. */
  readonly size: number;
  readonly unit: string | undefined;
}

/** "46 3/8\"", "15,2 cm", "10 lb 2 oz", "57 to 58 mm", "1180": a range gives its middle, pieces are added up. */
export function sizeOf(written: string): AnnotatedSize {
  const ends = written.includes("/") ? null : range.exec(written);
  if (ends !== null) return sizeOf(`${(decimal(ends[1]) + decimal(ends[2])) / 2} ${ends[3] ?? ""}`);
  let size = 0;
  let unit: string | undefined;
  const figures = plainFractions(inFigures(written.toLowerCase()));
  for (const [, whole, above = "0", below = "1", under = "1", name = ""] of figures.matchAll(piece)) {
    const value = decimal(whole) / Number(under) + Number(above) / Number(below);
    const [found, times] = unitOf(name.toLowerCase());
    // After feet, bare inches may follow.
    const factor = millimetresOrGrams[found ?? (unit === "in" ? "in" : "")] ?? 1;
    unit ??= found;
    size += value * factor * times;
  }
  return { size, unit };
}

function unitOf(name: string): readonly [string | undefined, number] {
  if (/^(?:ft|feet|foot|'$)/.test(name)) return ["in", 12];
  if (/^(?:m|met(?:er|re)s?)$/.test(name)) return ["cm", 100];
  return [unitNames.find(([form]) => form.test(name))?.[1], 1];
}

function decimal(written = "0"): number {
  return Number(/^\d{1,3},\d{3}$/.test(written) ? written.replace(",", "") : written.replace(",", "."));
}

const tens: Readonly<Record<string, number>> = { twenty: 20, thirty: 30, forty: 40, fifty: 50 };
const ones =
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );

/** "Twenty eight mil", "three foot ten and a half", "48 and a quarter inches": the numbers in figures. */
function inFigures(written: string): string {
  return written
    .replace(
      /\b(twenty|thirty|forty|fifty)(?:[ -](one|two|three|four|five|six|seven|eight|nine)\b)?/g,
      (_, ten, one) => String((tens[ten] ?? 0) + ones.indexOf(one ?? "") + 1),
    )
    .replace(/\b[a-z]+\b/g, (word) => (ones.includes(word) ? String(ones.indexOf(word) + 1) : word))
    .replace(/(\d) and (?:a |an )?half\b/g, "$1 1/2")
    .replace(/(\d) and (?:a )?quarter\b/g, "$1 1/4")
    .replace(/(\d) and 3 quarters\b/g, "$1 3/4")
    .replace(/(\d) and (?:an )?eighth\b/g, "$1 1/8")
    .replace(/(\d) and (3|5|7) eighths\b/g, "$1 $2/8");
}

function plainFractions(written: string): string {
  return written
    .replace(/(\d)(?=[\u00bc-\u00be\u2150-\u215e])/g, "$1 ")
    .normalize("NFKC")
    .replace(/\u2044/g, "/");
}
