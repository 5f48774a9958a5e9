// Cuts a message into clauses, the stretch a small word governs: at punctuation, at words of contrast and at "and".
// Crude beside a parser, and measured good enough: owners write short main clauses.
import { cueWords } from "./cue-words.ts";
import type { Token } from "./tokens.ts";

/** How a clause begins: after a full stop, after a comma, against the last one, or added by "and". */
export type Join = "sentence" | "comma" | "contrast" | "and";

export interface Clause {
  /** First and last token, inclusive. */
  readonly from: number;
  readonly to: number;
  readonly join: Join;
  readonly sentence: number;
  /** True when a question mark ends it. */
  readonly isAsked: boolean;
  /** True when the mark is doubled or bracketed: doubt, not a question. */
  readonly isDoubted: boolean;
  /** Its folded words joined by single spaces. */
  readonly text: string;
}

/** Clauses in order; every token belongs to exactly one. */
export function clausesOf(tokens: readonly Token[]): readonly Clause[] {
  const clauses: Clause[] = [];
  let from = 0;
  let join: Join = "sentence";
  let sentence = 0;
  tokens.forEach((token, at) => {
    const next = at === 0 ? undefined : joinAt(token, tokens[at + 1], tokens[at - 1]);
    if (next === undefined) return;
    clauses.push(clause(tokens, from, at - 1, join, sentence));
    if (next === "sentence") sentence += 1;
    from = at;
    join = next;
  });
  if (tokens.length > 0) clauses.push(clause(tokens, from, tokens.length - 1, join, sentence));
  return clauses;
}

function joinAt(token: Token, next: Token | undefined, before: Token | undefined): Join | undefined {
  if (token.breakBefore === "sentence") return "sentence";
  return isOneTurn(before?.folded ?? "", token) ? undefined : joinWithin(token, next);
}

/** The join within a sentence. */
function joinWithin(token: Token, next: Token | undefined): Join | undefined {
  const word = token.folded;
  if (cueWords.contrast.has(word) && next !== undefined)
    return word === "still" || word === "only" ? undefined : "contrast";
  if (token.breakBefore === "comma")
    return cueWords.contrast.has((word === "and" ? next?.folded : word) ?? "") ? "contrast" : "comma";
  return word === "and" || (word === "n" && !token.isCapital) ? "and" : undefined;
}

/** "A hundred and eight", "anything but smooth". */
function isOneTurn(before: string, { folded: word, breakBefore }: Token): boolean {
  if (breakBefore !== "none") return false;
  return word === "and" ? /^(?:hundred|thousand)$/.test(before) : word === "but" && before === "anything";
}

function clause(tokens: readonly Token[], from: number, to: number, join: Join, sentence: number): Clause {
  const own = tokens.slice(from, to + 1);
  return {
    from,
    to,
    join,
    sentence,
    isAsked: own.at(-1)?.isAsked ?? false,
    isDoubted: own.at(-1)?.isDoubted ?? false,
    text: own.map((token) => token.folded).join(" "),
  };
}
