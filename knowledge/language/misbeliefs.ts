// Misbeliefs of the handbook that a message states, by their main words within one sentence. A belief is matched
// whoever holds it: what the seller says is exactly what wants correcting.

import type { PartKind } from "../handbook/schema.ts";
import { glueWords } from "./common-words.ts";
import { cueWords } from "./cue-words.ts";
import type { MisbeliefFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";

const weak: ReadonlySet<string> = new Set(
  "one ones part parts that which they them their it as by from not no mean means meaning always all every any only never must can will would should there then than if or when what car cars shrike do does did come came in on up out into".split(
    " ",
  ),
);
const generalising: ReadonlySet<string> = new Set(
  "all every always only never mean must so proof prove therefore any none no everyone because cannot".split(
    " ",
  ),
);
const carrying = new Set([...cueWords.negations, "no", "not", "never"]);

/** Misbeliefs of the part in hand, or of every part when none is; at most one finding each. */
export function findMisbeliefs(view: MessageView): readonly MisbeliefFinding[] {
  const found: MisbeliefFinding[] = [];
  const active = new Set(view.partOf.filter((part) => part !== undefined));
  const sentences = sentencesOf(view);
  for (const part of view.lexicon.handbook.parts) {
    if (active.size > 0 && !active.has(part.id)) continue;
    found.push(...misbeliefsOf(view, part, sentences));
  }
  return found;
}

function misbeliefsOf(
  view: MessageView,
  part: PartKind,
  sentences: readonly Sentence[],
): readonly MisbeliefFinding[] {
  return part.misbeliefs.flatMap((misbelief) => {
    const claims = claimsOf(misbelief);
    const said = sentences.find(({ stems }) => claims.some((claim) => isStated(claim, stems)));
    if (said === undefined) return [];
    return [{ part: part.id, misbelief: misbelief.id, words: wordsBetween(view, said.from, said.to) }];
  });
}

type Misbelief = PartKind["misbeliefs"][number];

interface Sentence {
  readonly from: number;
  readonly to: number;
  readonly stems: ReadonlySet<string>;
}

function sentencesOf(view: MessageView): readonly Sentence[] {
  const spans = new Map<number, { from: number; to: number }>();
  for (const clause of view.clauses) {
    const known = spans.get(clause.sentence);
    spans.set(clause.sentence, { from: known?.from ?? clause.from, to: clause.to });
  }
  return Array.from(spans.values(), ({ from, to }) => ({
    from,
    to,
    stems: new Set(view.tokens.slice(from, to + 1).map((token) => negationless(token.stem))),
  }));
}

interface Claim {
  readonly words: ReadonlySet<string>;
  /** Whether it says "only", "always" or "all". */
  readonly isSweeping: boolean;
}

/** Worked out once for each misbelief of an edition, because every message is held against all of them. */
const claimsKnown = new WeakMap<Misbelief, readonly Claim[]>();

function claimsOf(misbelief: Misbelief): readonly Claim[] {
  const known = claimsKnown.get(misbelief);
  if (known !== undefined) return known;
  const claims = [misbelief.claim, ...misbelief.also].map(claimOf).filter(({ words }) => words.size >= 2);
  claimsKnown.set(misbelief, claims);
  return claims;
}

function claimOf(claim: string): Claim {
  const stems = stemsOf(claim).map(negationless);
  const words = stems.filter((stem) => stem === "no" || (!glueWords.has(stem) && !weak.has(stem)));
  return { words: new Set(words), isSweeping: /\b(?:only|always|never|all|every)\b/i.test(claim) };
}

/** All negations count as one word, so that "isn't" and "not" match. */
function negationless(stem: string): string {
  return carrying.has(stem) ? "no" : stem;
}

/** Every main word of a short claim, all but one of a longer one. */
function isStated({ words: claim, isSweeping }: Claim, sentence: ReadonlySet<string>): boolean {
  // A claim that something never is so is not stated without its "never".
  if (claim.has("no") && !sentence.has("no")) return false;
  const missed = [...claim].filter((stem) => !sentence.has(stem)).length;
  if (missed > (claim.size >= 5 ? 1 : 0)) return false;
  // "Symbol lamps are Mark II only" is not stated by what leaves out its "only".
  if (isSweeping && !isGeneral(sentence)) return false;
  // A plain description may hold the same words: a belief generalises, or is all that the sentence says.
  return isGeneral(sentence) || claim.size >= sentence.size / 2;
}

function isGeneral(stems: ReadonlySet<string>): boolean {
  return [...stems].some((stem) => generalising.has(stem));
}
