/**
 * Text in columns: cleaning, measuring, wrapping and padding for a terminal. Own code, because what a reply needs
 * is thirty lines and a package would bring cursor codes that do not belong into a pipe.
 */
import { stripVTControlCharacters } from "node:util";

/** Controls except the line end, and invisible marks such as those that turn the direction of text. */
const INVISIBLE = /[^\P{Cc}\n]|\p{Cf}/gu;
/** A space at which no line is broken; printed as an ordinary one. "71 %" keeps its sign. */
export const HARD_SPACE = "\u00a0";
const COMBINING = /\p{Mark}/gu;
const WIDE =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;

/** `text` without anything a terminal would obey, for a quoted message must not steer it; tabs become a space, line ends stay. */
export function clean(text: string): string {
  return stripVTControlCharacters(text).replaceAll("\t", " ").replace(INVISIBLE, "");
}

/** Columns that clean text takes up on one line. */
export function textWidth(text: string): number {
  let width = 0;
  for (const character of text.replace(COMBINING, "")) width += WIDE.test(character) ? 2 : 1;
  return width;
}

/** `text` followed by spaces up to `width` columns; longer text is left as it is. */
export function padded(text: string, width: number): string {
  return text + " ".repeat(Math.max(0, width - textWidth(text)));
}

/**
 * Lines of at most `width` columns: `first` stands before the first, as many spaces before the others. A word that is
 * longer than a line is cut. Line ends in the text stay; empty text gives the line `first` alone.
 */
export function wrapped(text: string, width: number, first = ""): readonly string[] {
  const hanging = " ".repeat(textWidth(first));
  const room = Math.max(8, width - textWidth(first));
  const lines = clean(text)
    .replaceAll(/(\d) %/gu, `$1${HARD_SPACE}%`)
    .split("\n")
    .flatMap((paragraph) => wrappedParagraph(paragraph, room));
  return lines.map((line, index) =>
    (index === 0 ? first + line : hanging + line).replaceAll(HARD_SPACE, " ").trimEnd(),
  );
}

function wrappedParagraph(paragraph: string, room: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of paragraph
    .split(" ")
    .filter((part) => part !== "")
    .flatMap((part) => pieces(part, room))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer) <= room) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  lines.push(line);
  return lines;
}

function pieces(word: string, room: number): readonly string[] {
  if (textWidth(word) <= room) return [word];
  const parts: string[] = [];
  let part = "";
  for (const character of word) {
    if (part !== "" && textWidth(part + character) > room) {
      parts.push(part);
      part = "";
    }
    part += character;
  }
  parts.push(part);
  return parts;
}
