// A readable text cut into words, with the break that stands before each: nothing, a comma, or a sentence's end.
// Figures and letters are parted ("mk2" is two words), as handbooks and members write them either way.
import { foldWord, stemWord } from "./fold-word.ts";

/** What stands between a word and the one before it, from weak to strong. */
export type Break = "none" | "comma" | "sentence";

export interface Token {
  readonly folded: string;
  readonly stem: string;
  readonly start: number;
  readonly end: number;
  readonly breakBefore: Break;
  /** True when a question mark ends the stretch that this word closes. */
  readonly isAsked: boolean;
  /** True when "??" or "(?)" stands there: doubt rather than a question. */
  readonly isDoubted: boolean;
  /** True when the word is written in capitals only. */
  readonly isCapital: boolean;
}

/** Most words read of one message; with longestRead it bounds every later step. */
const mostTokens = 1200;

const wordPattern =
  /\b[Hh]alf a dozen\b|\b[Aa] dozen\b|[Ww]\/[Oo]\b|[Ww]\/(?=\s|\w)|[Pp]\/[Nn]\b|\b[Nn]\/[Aa]\b|(?<!\p{L})(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[ -](?:one|two|three|four|five|six|seven|eight|nine)(?!\p{L})|\d+(?:st|nd|rd|th|ST|ND|RD|TH)\b|\d+|(?<![\p{L}\d])\p{Lu}(?:[ .]\p{Lu}){2,4}(?![\p{L}\d])|\p{L}[\p{L}\p{M}]*(?:'\p{L}+)*|[&+](?=\s)/gu;

/** The words of a text in order; never more than 1,200. */
export function tokenise(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let end = 0;
  for (const found of text.matchAll(wordPattern)) {
    if (tokens.length >= mostTokens) break;
    const gap = text.slice(end, found.index);
    const last = tokens.at(-1);
    if (last !== undefined && gap.includes("?")) tokens[tokens.length - 1] = asked(last, gap);
    if (last !== undefined && isOr(text, last, found[0], gap, found.index + found[0].length))
      tokens.push({ ...last, folded: "or", stem: "or", start: end, end: end + 1, breakBefore: "none" });
    const isSpelled = /^\p{Lu}[ .]\p{Lu}[ .]/u.test(found[0]);
    const folded = foldWord(isSpelled ? found[0].replace(/[ .]/g, "") : found[0]);
    const start = found.index;
    end = start + found[0].length;
    tokens.push({
      folded,
      stem: stemWord(folded),
      start,
      end,
      breakBefore: last === undefined ? "sentence" : breakIn(gap, text.slice(start - 2, start + 1)),
      isAsked: false,
      isDoubted: false,
      isCapital: found[0] === found[0].toUpperCase(),
    });
  }
  const last = tokens.at(-1);
  if (last !== undefined && text.slice(end).includes("?"))
    tokens[tokens.length - 1] = asked(last, text.slice(end));
  return tokens;
}

/** "2-3 screws": two figures that follow each other, before a word, say one or the other. */
function isOr(text: string, last: Token, figure: string, gap: string, end: number): boolean {
  const [first, second] = [Number(text.slice(last.start, last.end)), Number(figure)];
  if (gap !== "-" || second !== first + 1 || second > 12) return false;
  return /^ \p{L}/u.test(text.slice(end, end + 2)) && !/[\w/.-]$/.test(text.slice(0, last.start));
}

/** The folded word at a place; empty where there is none. */
export function foldedAt(tokens: readonly Token[], at: number): string {
  return tokens[at]?.folded ?? "";
}

/** The stem of the word at a place; empty where there is none. */
export function stemAt(tokens: readonly Token[], at: number): string {
  return tokens[at]?.stem ?? "";
}

function asked(token: Token, gap: string): Token {
  return { ...token, isAsked: true, isDoubted: /\?\s*\?|\(\s*\?+\s*\)/.test(gap) };
}

/** `around`: the figure before a lone sign, the sign, and what follows; "44,5" and "5.5" are one number. */
function breakIn(said: string, around: string): Break {
  if (/^\d[.,]\d$/.test(around)) return "none";
  const gap = said.replace(/\+ ?\/? ?-/, " ");
  if (/[!?;\n]|\.(?:\s|$)|\.{2,}/.test(gap)) return "sentence";
  if (/[,:()\u2026|*]|\s[-/]\s/.test(gap) || /\s-+|-+\s/.test(gap)) return "comma";
  return "none";
}
