/**
 * What a sentence offers to be heard by: its words, denied ones marked, its neighbouring words, whether it asks, where it
 * stands, and what was asked before it. Marking denied words: Das and Chen, "Yahoo! for Amazon" (2001).
 */
import { glueWords } from "../common-words.ts";
import { isCorrectingNo } from "../correcting-no.ts";
import { cueWords } from "../cue-words.ts";
import type { MessageView } from "../message-view.ts";
import { foldedAt, type Token } from "../tokens.ts";

/** A message cut up, before anything is known of what it speaks of. */
export type Spoken = Pick<MessageView, "tokens" | "clauses" | "context" | "taken">;

export interface Sentence {
  /** Its clauses, first and last. */
  readonly first: number;
  readonly last: number;
  /** Each gram once, with the token it starts at; -1 for what no word says. */
  readonly grams: ReadonlyMap<string, number>;
}

/** Words that a denial reaches. */
const denialReach = 3;

/** The sentences of a message in order. */
export function sentencesOf(view: Spoken): readonly Sentence[] {
  const spans: { first: number; last: number }[] = [];
  view.clauses.forEach((clause, at) => {
    const span = spans.at(-1);
    if (span !== undefined && view.clauses[at - 1]?.sentence === clause.sentence) span.last = at;
    else spans.push({ first: at, last: at });
  });
  return spans.map((span, at) => sentence(view, span, at, spans.length));
}

function sentence(
  view: Spoken,
  { first, last }: { readonly first: number; readonly last: number },
  at: number,
  count: number,
): Sentence {
  const grams = new Map<string, number>();
  const add = (gram: string, place: number): void => {
    if (!grams.has(gram)) grams.set(gram, place);
  };
  for (let each = first; each <= last; each += 1) {
    const clause = view.clauses[each];
    if (clause === undefined) continue;
    addWords(view, clause.from, clause.to, add);
    if (clause.isAsked) add("?", -1);
  }
  const { part, askedFeature } = view.context;
  add(askedFeature === undefined ? "asked nothing" : `asked ${askedFeature}`, -1);
  add(part === undefined ? "no case" : `case ${part}`, -1);
  add(count === 1 ? "alone" : at === 0 ? "first" : "later", -1);
  return { first, last, grams };
}

/** Figures that are sizes, dates or serials say nothing of states: "12/80" is no twelve spokes. */
function addWords(
  { tokens, taken }: Spoken,
  from: number,
  to: number,
  add: (gram: string, place: number) => void,
): void {
  let before: { word: string; at: number } | undefined;
  const saidAt = (at: number): string => (taken.has(at) ? "#" : foldedAt(tokens, at));
  countedWords(tokens.slice(from, to + 1)).forEach((word, step) => {
    const at = from + step;
    if (step > 0) add(`${saidAt(at - 1)}_${saidAt(at)}`, at - 1);
    if (word === undefined || taken.has(at)) return;
    add(word, at);
    if (before !== undefined) add(`${before.word}+${word}`, before.at);
    before = { word, at };
  });
}

/** The word of each token as it is counted: its stem, "not …" within reach of a denial; undefined for small words. */
export function countedWords(tokens: readonly Token[]): readonly (string | undefined)[] {
  let denied = 0;
  return tokens.map(({ folded, stem, breakBefore }, at) => {
    if (breakBefore !== "none") denied = 0;
    if (cueWords.negations.has(folded) && !isCorrectingNo(tokens, at)) {
      denied = denialReach;
      return "not";
    }
    if (glueWords.has(folded)) return undefined;
    denied -= 1;
    return denied >= 0 ? `not ${stem}` : stem;
  });
}
