// Numbers as people type them beside a unit: 17.375, 17,375, 17 3/8, 17-3/8, 3/8, 17½. Only what the trade
// questions need; the reading of whole messages stands in the language room.

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** Regular-expression source that matches one number; capture it and give it to `parsePlainNumber`. */
export const NUMBER = String.raw`\d{1,7}(?:[ -]\d{1,2}\/\d{1,3}|\/\d{1,3}|[.,]\d{1,6})?|[.]\d{1,6}`;

/** Replaces fraction signs by figures, so that NUMBER can match them: "17½" gives "17 1/2". */
export function spellFractions(text: string): string {
  return text.replace(/(?:(\d)\s?)?([½¼¾⅛⅜⅝⅞])/g, (_whole, digit: string | undefined, sign: string) =>
    `${digit ?? ""} ${FRACTION_SIGNS[sign] ?? ""}`.trimStart(),
  );
}

/**
 * The value of a number matched by NUMBER; undefined when it is none or divides by zero. A comma is a decimal
 * sign unless exactly three figures follow it and the figures before do not begin with 0 ("1,200" is 1200).
 */
export function parsePlainNumber(text: string): number | undefined {
  const mixed = /^(?:(\d{1,7})[ -])?(\d{1,7})\/(\d{1,3})$/.exec(text);
  if (mixed !== null) {
    const divisor = Number(mixed[3]);
    return divisor === 0 ? undefined : Number(mixed[1] ?? 0) + Number(mixed[2]) / divisor;
  }
  if (!/^\d{0,7}(?:[.,]\d{1,6})?$/.test(text) || text === "") return undefined;
  return /^[1-9]\d{0,2},\d{3}$/.test(text) ? Number(text.replace(",", "")) : Number(text.replace(",", "."));
}

/** As `parsePlainNumber`, with a sign before the number allowed: "-12", "+30". */
export function parseSignedNumber(text: string): number | undefined {
  const value = parsePlainNumber(text.replace(/^[+-]/, ""));
  return value === undefined || !text.startsWith("-") ? value : -value;
}

/** A number without trailing zeros, at most `decimals` of them: 651.6, 70.5, 25.4. */
export function sayNumber(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
