/**
 * How wide words will be, so that they can be broken into lines before anybody draws them. The widths are those of DejaVu Sans 2.37, which
 * draws our PNGs (its table hmtx); it is wider than the faces browsers take for sans-serif, so what fits here fits there.
 */

/** 2048ths of the size, from the space to the tilde. */
// biome-ignore format: a table
const ASCII = [
  651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303,
  1303, 690, 690, 1716, 1716, 1716, 1087, 2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604, 604, 1343, 1141, 1767, 1532, 1612, 1235,
  1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690, 799, 1716, 1024, 1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298,
  569, 569, 1186, 569, 1995, 1298, 1253, 1300, 1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716,
];
/** A letter outside ASCII counts as the widest of the common ones, an ideograph as a square. */
const OTHER_LETTER = 1612;
const SQUARE = 2048;
const SIZE = 12;
/** DejaVu Sans Bold against the regular face, for the words where it is widest: those of narrow letters. */
const BOLD = 1.2;

export function textWidth(text: string, isBold = false): number {
  const units = [...text].reduce((sum, letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return sum + (ASCII[code - 32] ?? (code < 0x1100 ? OTHER_LETTER : SQUARE));
  }, 0);
  return (units / 2048) * SIZE * (isBold ? BOLD : 1);
}

/** Lines of 12 units' letters none wider than `width`, at most `mostLines`; a word that is too wide is broken, and what is left out ends in "…". */
export function textLines(
  text: string,
  width: number,
  { mostLines, isBold = false }: { readonly mostLines: number; readonly isBold?: boolean },
): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, isBold) <= width;
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/u).flatMap((whole) => pieces(whole, fits))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  if (line !== "") lines.push(line);
  if (lines.length <= mostLines) return lines;
  const last = [...(lines[mostLines - 1] ?? "")];
  while (last.length > 0 && !fits(`${last.join("").trimEnd()}…`)) last.pop();
  return [...lines.slice(0, mostLines - 1), `${last.join("").trimEnd()}…`];
}

/** A word whole, or cut where a line ends. */
function pieces(word: string, fits: (line: string) => boolean): readonly string[] {
  if (fits(word)) return [word];
  const done: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && !fits(piece + letter)) {
      done.push(piece);
      piece = "";
    }
    piece += letter;
  }
  return [...done, piece];
}
