// Known words written as two or run together ("wind screen", "doormirror"), and a shape word that is a preposition.
import { commonWords } from "./common-words.ts";
import { stemWord } from "./fold-word.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Token } from "./tokens.ts";
import { longestWord, type WordMatch } from "./vocabulary.ts";

/** "wind screen": a known word written as two. */
export function joinSplit(token: Token, next: Token | undefined, lexicon: Lexicon): WordMatch | undefined {
  if (next === undefined || next.breakBefore !== "none") return undefined;
  const stem = stemWord(token.folded + next.folded);
  return stem.length > 5 && lexicon.vocabulary.stems.has(stem) ? { stem, edits: 0 } : undefined;
}

/** "doormirror": two known words run together. */
export function splitJoined(folded: string, lexicon: Lexicon): readonly WordMatch[] | undefined {
  if (folded.length < 7 || folded.length > longestWord || commonWords.has(folded)) return undefined;
  for (let at = 3; at <= folded.length - 3; at += 1) {
    const left = folded.slice(0, at);
    const right = stemWord(folded.slice(at));
    if (lexicon.vocabulary.stems.has(left) && lexicon.vocabulary.stems.has(right)) {
      return [left, right].map((stem) => ({ stem, edits: 0 }));
    }
  }
  return undefined;
}

/** "Round the edge": no shape. */
export function isPreposition(token: Token, next: Token | undefined): boolean {
  return (
    token.folded === "round" &&
    next?.breakBefore === "none" &&
    /^(?:the|my|his|her|its|it|them|a)$/.test(next.folded)
  );
}
