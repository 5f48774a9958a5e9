// What breaks readers: figures, signs, words of formats, names that objects have from birth. Texts are made of them, or broken with them.
import { pick } from "../support/draws.ts";
import type { Chance } from "../support/random-tables.ts";

export const hostilePieces = [
  "",
  " ",
  "\t",
  "\n",
  "\r\n",
  "\u0000",
  "\u2028",
  "\u202e",
  "\ufeff",
  "\ud800",
  "\u{1f697}",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "NaN",
  "-0",
  "1e999",
  "99999999999999999999",
  "0x7f",
  "1_000",
  "null",
  "~",
  "true",
  "yes",
  "2024-13-45",
  "!!js/function 'x'",
  "!!binary aaaa",
  "!<tag:x> y",
  "&a",
  "*a",
  "<<: *a",
  "? :",
  "|-",
  ">+",
  "%YAML 9.9",
  "---",
  "...",
  "[",
  "]",
  "{",
  "}",
  ": ",
  "- ",
  "#",
  '"',
  "'",
  ",",
  ";",
  "=1+1",
  "@SUM(A1)",
  "<script>alert(1)</script>",
  "</svg>",
  "../../etc/passwd",
  "%00",
  "%2e%2e%2f",
  "$\u007b7*7}",
  "' or 1=1 --",
  "a".repeat(5000),
  "[".repeat(3000),
  "((a+)+)+$",
] as const;

/** Between `least` and `most` pieces, or what `own` draws, one after another. */
export function madeText(chance: Chance, most: number, own: readonly string[] = []): string {
  const count = Math.floor(chance() * (most + 1));
  return Array.from({ length: count }, () =>
    own.length > 0 && chance() < 0.6 ? pick(chance, own) : pick(chance, hostilePieces),
  ).join(pick(chance, ["", "", " ", "\n"]));
}

/** The text with one to four of its lines or spans broken: gone, doubled, moved, turned in, or with something hostile in their place. */
export function brokenText(chance: Chance, text: string, donor: string): string {
  let broken = text;
  const wounds = 1 + Math.floor(4 * chance());
  for (let wound = 0; wound < wounds; wound += 1) broken = pick(chance, wounding)(chance, broken, donor);
  return broken;
}

const wounding: readonly ((chance: Chance, text: string, donor: string) => string)[] = [
  (chance, text) => changedLine(chance, text, () => []),
  (chance, text) => changedLine(chance, text, (line) => [line, line]),
  (chance, text) =>
    changedLine(chance, text, (line) => [`${" ".repeat(Math.floor(6 * chance()))}${line.trim()}`]),
  (chance, text) =>
    changedLine(chance, text, (line) => [line.replace(/:.*$/u, `: ${pick(chance, hostilePieces)}`)]),
  (chance, text) =>
    changedLine(chance, text, (line) => [line.replace(/[\w-]+/u, pick(chance, hostilePieces))]),
  (chance, text, donor) => changedLine(chance, text, (line) => [line, pick(chance, donor.split("\n"))]),
  (chance, text) => {
    const at = Math.floor(chance() * text.length);
    return text.slice(0, at) + pick(chance, hostilePieces) + text.slice(at + Math.floor(4 * chance()));
  },
  (chance, text) => text.slice(0, Math.floor(chance() * text.length)),
];

function changedLine(chance: Chance, text: string, change: (line: string) => readonly string[]): string {
  const lines = text.split("\n");
  const at = Math.floor(chance() * lines.length);
  return lines.flatMap((line, index) => (index === at ? change(line) : [line])).join("\n");
}

/** Without halves of characters, which no door's wire can carry. */
export function wellFormed(text: string): string {
  return Buffer.from(text).toString();
}

/** Some bytes turned, some doubled or gone, or the end gone: of a packed file, mostly its wrapping is hurt. */
export function brokenBytes(chance: Chance, bytes: Buffer): Buffer {
  let broken = Buffer.from(bytes);
  for (let wound = 0; wound < 1 + 5 * chance(); wound += 1) {
    const at = Math.floor(chance() * broken.length);
    const luck = chance();
    if (luck < 0.8) broken[at] = Math.floor(256 * chance());
    else {
      const length = Math.floor(40 * chance());
      const from = luck < 0.9 ? at + length : Math.max(0, at - length);
      broken = Buffer.concat([broken.subarray(0, at), broken.subarray(from)]);
    }
  }
  return chance() < 0.2 ? broken.subarray(0, Math.floor(chance() * broken.length)) : broken;
}
