// States told by a single word beside the name of their feature ("tips: round", "I count three" after somebody's
// two screws), or by a word that stands for nothing else in the part ("says CORVANE"). Such a word means nothing
// alone: its feature must stand close by, or the clause must speak of a mark.
import { isBesideQuestion } from "./beside-question.ts";
import { generalWords, glueWords, isGeneralWord } from "./common-words.ts";
import { cueWords } from "./cue-words.ts";
import { numberOf } from "./fold-word.ts";
import { headFeatureAt } from "./head-nouns.ts";
import { wordsOfFeature } from "./lexicon.ts";
import { type Meant, unnamed } from "./lone-words.ts";
import type { MessageView } from "./message-view.ts";
import type { Negation } from "./negation.ts";
import type { Observation } from "./observations.ts";
import type { FeatureWords } from "./part-words.ts";
import { isPreposition } from "./split-words.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt } from "./tokens.ts";

const reach = 4;
/** General words ("round", "black") must stand closer. */
const nearReach = 1;
const farthest = 12;
/** Most words tried in one message. */
const mostTried = 200;

/** States told by loose words; features that `told` holds for the clause are left out. */
export function observeLooseWords(
  view: MessageView,
  negations: readonly (readonly Negation[])[],
  told: readonly Observation[],
): readonly Observation[] {
  let tried = 0;
  return view.tokens.flatMap((_, at) => {
    const clause = view.clauseOf[at] ?? 0;
    const part = view.partOf[clause];
    if (part === undefined || !mayTell(view, part, at) || tried >= mostTried) return [];
    tried += 1;
    const meant =
      besideFeature(view, part, at, clause) ?? notBesideQuestion(view, unnamed(view, part, at, clause));
    if (meant === undefined || told.some((each) => each.feature === meant.feature && each.clause === clause))
      return [];
    const denial = (negations[clause] ?? []).find((negation) => negation.cue < at && at <= negation.to);
    if (denial === undefined) return [{ part, ...meant, isDenied: false, clause, from: at, to: at }];
    return mayBeDenied(view, at)
      ? [deniedWord(view, { part, ...meant }, { clause, from: denial.cue, to: at })]
      : [];
  });
}

function notBesideQuestion(view: MessageView, meant: Meant | undefined): Meant | undefined {
  return meant !== undefined && isBesideQuestion(view, meant.feature) ? undefined : meant;
}

function deniedWord(
  view: MessageView,
  meant: Meant & { readonly part: string },
  place: { readonly clause: number; readonly from: number; readonly to: number },
): Observation {
  const absent = absentBy(view, meant.part, meant.feature, place.to);
  return absent === undefined
    ? { ...meant, ...place, isDenied: true }
    : { ...meant, ...place, state: absent, isDenied: false };
}

function mayTell(view: MessageView, part: string, at: number): boolean {
  if (view.lexicon.parts.get(part)?.stateWords.has(view.words[at] ?? "") !== true) return false;
  const folded = foldedAt(view.tokens, at);
  if (isHeld(view, at) || view.taken.has(at)) return false;
  // "Cast in the back" says how a mark was made, not what the part is.
  if (
    /^(?:cast|molded|stamped|machined)$/.test(folded) &&
    /^(?:in|into|on|onto|under)$/.test(foldedAt(view.tokens, at + 1))
  )
    return false;
  const [token, next] = [view.tokens[at], view.tokens[at + 1]];
  if (token === undefined || isPreposition(token, next)) return false;
  if (folded.length === 1 && !token.isCapital) return false;
  return !glueWords.has(folded) && !cueWords.negations.has(folded);
}

/** "No lozenge" says that there is no mark at all, not that the mark is another one. */
function absentBy(view: MessageView, part: string, feature: string, at: number): string | undefined {
  const before = view.tokens.slice(Math.max(0, at - 2), at).map(({ folded }) => folded);
  if (!/^(?:no|any|without)(?: \w+)?$/.test(before.join(" ")) && before.at(-1) !== "no") return undefined;
  if (numberOf(foldedAt(view.tokens, at)) !== undefined) return undefined;
  const words = view.lexicon.parts.get(part);
  const isNoun = words?.cues.get(view.words[at] ?? "")?.has(feature) === true;
  return isNoun ? words?.features.get(feature)?.polarity.absent : undefined;
}

/** "Not metal" excludes more than the one state that the word is counted for. */
function mayBeDenied(view: MessageView, at: number): boolean {
  const folded = foldedAt(view.tokens, at);
  return !isGeneralWord(folded) || numberOf(folded) !== undefined;
}

/** A variant's nickname leaves its words free: "says CORVANE" tells of the stamp. */
function isHeld(view: MessageView, at: number): boolean {
  return (view.phrasesAt.get(at) ?? []).some(({ phrase }) =>
    phrase.meanings.some((each) => each.kind !== "variant"),
  );
}

/** The state the word tells of the one feature named close to it. */
function besideFeature(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  const token = view.tokens[at];
  if (token === undefined || token.folded.length === 1) return undefined;
  const isNumber = numberOf(token.folded) !== undefined;
  const isGeneral = generalWords.has(token.folded) && !isNumber;
  const stem = view.words[at] ?? "";
  const found = new Map<string, string>();
  for (const feature of featuresAround(view, part, at, clause, isNumber, isGeneral ? nearReach : reach)) {
    const words = wordsOfFeature(view.lexicon, part, feature);
    const state = words?.tellingWords.get(stem);
    if (words === undefined || state === undefined || !isClear(view, part, words, stem)) continue;
    found.set(feature, state);
  }
  const [only] = found;
  return found.size === 1 && only !== undefined ? { feature: only[0], state: only[1] } : undefined;
}

/** Either all that a name of the state has to tell, or a word of no other feature. */
function isClear(view: MessageView, part: string, words: FeatureWords, stem: string): boolean {
  if (words.soleWords.has(stem)) return true;
  return view.lexicon.parts.get(part)?.owners.get(stem) === words.feature.id && !isGeneralWord(stem);
}

/** Features named by a phrase or their main noun within reach, or in a clause just before that this one goes on from. */
function featuresAround(
  view: MessageView,
  part: string,
  at: number,
  clause: number,
  isNumber: boolean,
  within: number,
): ReadonlySet<string> {
  const near = new Set<string>();
  const add = (from: number, to: number, features: Iterable<string>): void => {
    const where = view.clauseOf[from] ?? 0;
    const isClose = where === clause && wordsApart(view, from, to, at) <= within;
    const goesOn =
      isJustBefore(view, where, clause) && (within > nearReach || isHeadingFor(view, to, at, clause));
    if (isClose || goesOn) for (const feature of features) near.add(feature);
  };
  for (let token = Math.max(0, at - farthest); token <= at + farthest; token += 1) {
    for (const spotted of view.phrasesAt.get(token) ?? []) {
      add(spotted.from, spotted.to, featuresOf(spotted, part, isNumber));
    }
    if (token !== at) add(token, token, headAt(view, part, token));
    if (token !== at && !isNumber && isBeside(view, token, at, clause)) {
      for (const feature of cuesAt(view, part, token)) near.add(feature);
    }
  }
  return near;
}

function headAt(view: MessageView, part: string, token: number): readonly string[] {
  const head = headFeatureAt(view, part, token);
  return head === undefined ? [] : [head];
}

/** Features a word points to, unless it is a word of the part's own name. */
function cuesAt(view: MessageView, part: string, token: number): Iterable<string> {
  const words = view.lexicon.parts.get(part);
  const word = view.tokens[token];
  if (words === undefined || word === undefined || words.nameWords.has(word.folded)) return [];
  return words.cues.get(word.stem) ?? [];
}

/** The clause before ends with the feature, or denies, and this one opens with the word: "tips: round", "not black, its white". */
function isHeadingFor(view: MessageView, to: number, at: number, clause: number): boolean {
  const opening = view.clauses[clause]?.from ?? at;
  const isDenied = /\b(?:not|isnt|arent|no)\b/.test(view.clauses[clause - 1]?.text ?? "");
  return (isDenied || to === opening - 1) && wordsApart(view, opening - 1, opening - 1, at) <= 1;
}

/** "The holes are even": the word is said of the one before it. */
function isBeside(view: MessageView, token: number, at: number, clause: number): boolean {
  if (view.clauseOf[token] !== clause || token >= at) return false;
  const between = view.tokens.slice(token + 1, at).map(({ folded }) => folded);
  return (
    between.length <= 4 && between.some((word) => /^(?:is|are|was|were|looks?|seems?|feels?)$/.test(word))
  );
}

/** Telling words between a phrase and a word. */
function wordsApart(view: MessageView, from: number, to: number, at: number): number {
  const [first, last] = to < at ? [to + 1, at] : [at + 1, from];
  return view.tokens.slice(first, last).filter((token) => !glueWords.has(token.folded)).length;
}

/** The clause just before in the same sentence, this one being short: "tips: round", "not black, its white". */
function isJustBefore(view: MessageView, where: number, clause: number): boolean {
  const [from, to] = [view.clauses[where], view.clauses[clause]];
  if (from === undefined || to === undefined || from.sentence !== to.sentence) return false;
  return where === clause - 1 && to.to - to.from <= 4;
}

/** Features named; a number may also refer to a state just said ("two screws … I count three"). */
function featuresOf(spotted: Spotted, part: string, isNumber: boolean): readonly string[] {
  return spotted.phrase.meanings.flatMap((meaning) => {
    const isFeature = meaning.kind === "feature" || (isNumber && meaning.kind === "state");
    return isFeature && meaning.part === part ? [meaning.feature] : [];
  });
}
