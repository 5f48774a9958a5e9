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

/** The text in NFKC with plain quotes, dashes and fractions; never longer than `longestRead`; never throws. */
export function cleanText(raw: string): CleanText {
  const head = raw.slice(0, longestRead);
  const composed = head
    .replace(strayHalf, "")
    .replace(direction, "")
    .replace(vulgarFraction, (fraction, at: number) =>
      /\d/.test(head.charAt(at - 1)) ? ` ${fraction}` : fraction,
    )
    .normalize("NFKC");
  const plain = composed
    .replace(/\r\n?/g, "\n")
    .replace(control, " ")
    .replace(/\p{M}{3,}/gu, "")
    .replace(/[\u2018\u2019\u201b\u02bc\u00b4\u2032`]/g, (mark) => (mark === "`" ? "`" : "'"))
    .replace(/[\u201c-\u201f\u2033\u00ab\u00bb]/g, '"')
    .replace(/[\u2010-\u2012\u2212]/g, "-")
    .replace(/\s*[\u2013\u2014\u2015]\s*/g, (dash, at: number, whole: string) => plainDash(dash, at, whole))
    .replace(/\u2044/g, "/")
    .replace(/[^\S\n]+/g, " ")
    .replace(/ ?\n ?/g, "\n")
    .replace(/\n{3,}/g, "\n\n")
    .trim();
  return { text: plain.slice(0, longestRead), isCut: raw.length > longestRead || plain.length > longestRead };
}

/** Between figures a long dash is a range; elsewhere it parts clauses. */
function plainDash(dash: string, at: number, whole: string): string {
  const joinsFigures = /\d/.test(whole.charAt(at - 1)) && /\d/.test(whole.charAt(at + dash.length));
  return joinsFigures ? "-" : " - ";
}
