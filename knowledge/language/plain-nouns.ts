// Clauses with the handbook's own nouns made plain: every part kind becomes "part", every car of the family "car".
// So the cues for "his mirror", "all spoilers" and "early wheels" are written once and hold for any handbook.
import type { Clause } from "./clauses.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Token } from "./tokens.ts";

/** The clauses with plain nouns in their text; positions are those of the originals. */
export function withPlainNouns(
  clauses: readonly Clause[],
  tokens: readonly Token[],
  lexicon: Lexicon,
): readonly Clause[] {
  return clauses.map((clause) => {
    const words = tokens.slice(clause.from, clause.to + 1).map(({ folded }) => plainNoun(folded, lexicon));
    const text = words.filter((word, at) => !isPart(word) || !isPart(words[at + 1])).join(" ");
    return text === clause.text ? clause : { ...clause, text };
  });
}

function plainNoun(folded: string, { plainNouns }: Lexicon): string {
  return plainNouns.get(folded) ?? folded;
}

function isPart(word: string | undefined): boolean {
  return word === "part" || word === "parts";
}
