// A message as it may be read, shown and kept: one Unicode form, no control or direction characters, bounded
// length. Quotes, dashes and vulgar fractions become their plain forms so that one grammar reads them all.

/** Longest text read, in UTF-16 units; what a member pastes beyond it is neither read nor shown. */
export const longestRead = 8000;

export interface CleanText {
  readonly text: string;
  /** True when something was cut off. */
  readonly isCut: boolean;
}

const vulgarFraction = /[\u00bc-\u00be\u2150-\u215e\u2189]/g;
const direction = /\p{Cf}/gu;
const control = /[^\P{Cc}\n]/gu;
const strayHalf = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** The break of a line that was full, within a sentence: mail programs put it there, not the writer. */
const wrapped = /(?<=^(?!>)[^\n]{40,100}[\p{Ll}\d,])\n(?=\p{Ll})/gmu;

const bullets = /(?<=^|\n|\s)[\u2022\u2023\u25aa\u25cf\u25e6] ?(?=\p{L})/gu;
const bulletsOfLines = /(?<=^|\n) ?[\u2022\u2023\u25aa\u25cf\u25e6] ?(?=[\p{L}\d])/gu;

/** What opens an item of a list becomes a dash; a lone dot before a figure may be that of a mark. */
function withDashes(text: string): string {
  const isList = (text.match(bulletsOfLines) ?? []).length > 1;
  return (isList ? text.replace(bulletsOfLines, "- ") : text).replace(bullets, "- ");
}

/** The text in NFKC with plain quotes, dashes and fractions; never longer than `longestRead`; never throws. */
export function cleanText(raw: string): CleanText {
  const head = nodded(raw.slice(0, longestRead));
  const composed = head
    .replace(strayHalf, "")
    .replace(direction, "")
    .replace(vulgarFraction, (fraction, at: number) =>
      /\d/.test(head.charAt(at - 1)) ? ` ${fraction}` : fraction,
    )
    .normalize("NFKC");
  const plain = withDashes(composed.replace(/\r\n?/g, "\n"))
    .replace(/(?<=\p{L})`(?=\p{L})/gu, "'")
    .replace(control, " ")
    .replace(/\p{M}{3,}/gu, "")
    .replace(/[\u2018\u2019\u201b\u02bc\u00b4\u2032`]/g, (mark) => (mark === "`" ? "`" : "'"))
    .replace(/[\u201c-\u201f\u2033\u00ab\u00bb]/g, '"')
    .replace(/[\u2010-\u2012\u2212]/g, "-")
    .replace(/\s*[\u2013\u2014\u2015]\s*/g, (dash, at: number, whole: string) => plainDash(dash, at, whole))
    .replace(/\u2044/g, "/")
    .replace(/[^\S\n]+/g, " ")
    .replace(/ ?\n ?/g, "\n")
    .replace(wrapped, " ")
    .replace(/\n{3,}/g, "\n\n")
    .trim();
  return { text: plain.slice(0, longestRead), isCut: raw.length > longestRead || plain.length > longestRead };
}

/** A thumb by itself is an answer. */
function nodded(raw: string): string {
  if (/^\s*(?:\u{1f44d}|\u2705|\u2714)[\ufe0f\u{1f3fb}-\u{1f3ff}]*\s*$/u.test(raw)) return "yes";
  return /^\s*(?:\u{1f44e}|\u274c)[\ufe0f\u{1f3fb}-\u{1f3ff}]*\s*$/u.test(raw) ? "no" : raw;
}

/** Between figures a long dash is a range; elsewhere it parts clauses. */
function plainDash(dash: string, at: number, whole: string): string {
  const joinsFigures = /\d/.test(whole.charAt(at - 1)) && /\d/.test(whole.charAt(at + dash.length));
  return joinsFigures ? "-" : " - ";
}
