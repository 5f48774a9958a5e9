// What the speaker says about states: each phrase that names a state, decided to one part and one feature by the
// words around it, with whether it was denied. Several readings are left aside, never guessed.
import { isBesideQuestion } from "./beside-question.ts";
import { cueWords } from "./cue-words.ts";
import { headFeatureAt } from "./head-nouns.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { MessageView } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import { type Negation, negationsIn } from "./negation.ts";
import { lendingNames } from "./part-words.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt } from "./tokens.ts";

/** Words that a cue for a feature may stand away. */
const farthestCue = 15;

/** A state said or denied, or a feature said to be there or not; before several of them are weighed together. */
export interface Observation {
  readonly part: string | null;
  readonly feature: string;
  readonly state: string;
  readonly isDenied: boolean;
  readonly clause: number;
  readonly from: number;
  readonly to: number;
  /** How likely it is the speaker's word on the part, once that was weighed. */
  readonly probability?: number;
}

export interface Candidates {
  readonly part: string | null;
  readonly feature: string;
  readonly state: string;
}

export interface Observed {
  readonly observations: readonly Observation[];
  /** Phrases that fit several features. */
  readonly undecided: readonly Spotted[];
}

/** Negations of each clause, in order. */
export function negationsOf(view: MessageView): readonly (readonly Negation[])[] {
  return view.clauses.map((clause) => negationsIn(clause, view.tokens, view.phrasesAt));
}

/** States said in the message's own statements. */
export function observeStates(view: MessageView, negations: readonly (readonly Negation[])[]): Observed {
  const observations: Observation[] = [];
  const undecided: Spotted[] = [];
  for (const spotted of view.spotted) {
    const clause = view.clauseOf[spotted.from] ?? 0;
    if (!spotted.phrase.meanings.some((meaning) => meaning.kind === "state")) continue;
    const decided = decideState(view, spotted, clause);
    if (decided === "several") undecided.push(spotted);
    if (decided === undefined || decided === "several") continue;
    const denial = (negations[clause] ?? []).find(
      (negation) => negation.cue < spotted.from && spotted.from <= negation.to,
    );
    observations.push({
      ...decided,
      isDenied: denial !== undefined && !isEmphatic(view, spotted, denial),
      clause,
      from: denial?.cue ?? spotted.from,
      to: spotted.to,
    });
  }
  return { observations, undecided };
}

/** "No logo no letter no nothing": a phrase that denies by itself is not undone by a denial right before it. */
function isEmphatic(view: MessageView, spotted: Spotted, denial: Negation): boolean {
  const denies = (at: number): boolean => cueWords.negations.has(foldedAt(view.tokens, at));
  return (
    spotted.used.some(denies) &&
    /^(?:no|nor|never|dont|doesnt|didnt|cant|aint|hasnt|havent)$/.test(foldedAt(view.tokens, denial.cue))
  );
}

/** The one reading of a state phrase at its place; undefined when it is too general to mean anything here. */
function decideState(
  view: MessageView,
  spotted: Spotted,
  clause: number,
): Candidates | "several" | undefined {
  const candidates = [...candidatesFor(view, spotted, clause), ...namedInstead(view, spotted, clause)];
  const ranked = candidates
    .map((candidate) => ({ candidate, support: supportFor(view, candidate, spotted, clause) }))
    .sort((one, other) => other.support - one.support);
  const [best, second] = ranked;
  if (best === undefined) return undefined;
  const isThin =
    spotted.phrase.isGeneral || (best.candidate.part === null && spotted.phrase.stems.length === 1);
  if (isThin && best.support === 0) return undefined;
  if (isSaidOfAnother(view, spotted, best.candidate)) return undefined;
  const isLoneWord = best.support === 0 && spotted.phrase.stems.length === 1;
  if (isLoneWord && isBesideQuestion(view, best.candidate.feature)) return undefined;
  if (best.support === 0 && isWordOfAsked(view, spotted, best.candidate)) return "several";
  if (second !== undefined && second.support === best.support)
    return spotted.phrase.isGeneral ? undefined : "several";
  return best.candidate;
}

/** "The rough edge", "machined week stamp": one word right before the name of another feature describes that one. */
function isSaidOfAnother(view: MessageView, spotted: Spotted, candidate: Candidates): boolean {
  const next = spotted.to + 1;
  if (spotted.phrase.stems.length !== 1 || view.tokens[next]?.breakBefore !== "none") return false;
  const head = candidate.part === null ? undefined : headFeatureAt(view, candidate.part, next);
  if (head !== undefined && head !== candidate.feature && !view.phrasesAt.has(next)) return true;
  return (view.phrasesAt.get(next) ?? []).some(
    (other) =>
      other.from === next &&
      other.phrase.meanings.every((each) => each.kind === "feature" && each.feature !== candidate.feature),
  );
}

/** "The joint is plastic": a word that is a state of another feature still tells of the one just named. */
function namedInstead(view: MessageView, spotted: Spotted, clause: number): readonly Candidates[] {
  const part = view.partOf[clause];
  const [stem] = spotted.phrase.stems;
  if (part === undefined || stem === undefined || spotted.phrase.stems.length !== 1) return [];
  const own = new Set(spotted.phrase.meanings.flatMap((each) => ("feature" in each ? [each.feature] : [])));
  const before = view.spotted
    .filter((each) => view.clauseOf[each.from] === clause && each.to < spotted.from)
    .at(-1);
  const named = before?.phrase.meanings.find((each) => each.kind === "feature" && each.part === part);
  if (named?.kind !== "feature" || own.has(named.feature)) return [];
  const words = wordsOfFeature(view.lexicon, part, named.feature);
  const state = words?.soleWords.has(stem) ? words.tellingWords.get(stem) : undefined;
  return state === undefined ? [] : [{ part, feature: named.feature, state }];
}

/** "ABS" in answer to a question about the material mark is not about the housing. */
function isWordOfAsked(view: MessageView, spotted: Spotted, candidate: Candidates): boolean {
  const { askedFeature } = view.context;
  if (askedFeature === undefined || candidate.part === null || candidate.feature === askedFeature)
    return false;
  const feature = wordsOfFeature(view.lexicon, candidate.part, askedFeature)?.feature;
  if (feature?.kind !== "states") return false;
  const words = new Set(feature.states.flatMap(lendingNames).flatMap(stemsOf));
  return spotted.phrase.stems.every((stem) => words.has(stem));
}

/** Readings within the part the clause speaks of; without one, only a reading that all parts share. */
function candidatesFor(view: MessageView, spotted: Spotted, clause: number): readonly Candidates[] {
  const part = view.partOf[clause];
  const states = spotted.phrase.meanings.filter((meaning) => meaning.kind === "state");
  if (part !== undefined) return states.filter((meaning) => meaning.part === part);
  const [first] = states;
  if (first === undefined || spotted.phrase.isGeneral) return [];
  const isShared = states.every((each) => each.feature === first.feature && each.state === first.state);
  return isShared && states.length > 1 ? [{ part: null, feature: first.feature, state: first.state }] : [];
}

/** How strongly the surroundings point to the candidate's feature; 0 when nothing does. */
function supportFor(view: MessageView, candidate: Candidates, spotted: Spotted, clause: number): number {
  const asked = view.context.askedFeature === candidate.feature ? 2 : 0;
  const mentions = view.featuresNamed.get(candidate.feature) ?? [];
  const named = mentions.reduce((best, other) => {
    if (other === spotted) return best;
    const where = view.clauseOf[other.from] ?? 0;
    return Math.max(best, where === clause ? 4 - distance(other, spotted) : nearness(view, where, clause));
  }, 0);
  return asked + named + cueSupport(view, candidate, spotted, clause);
}

function distance(one: Spotted, other: Spotted): number {
  return Math.min(1, Math.abs(one.from - other.from) / 20);
}

function nearness(view: MessageView, where: number, clause: number): number {
  if (view.clauses[where]?.sentence !== view.clauses[clause]?.sentence) return 0;
  return where === clause - 1 ? 1.5 : 0.5;
}

function cueSupport(view: MessageView, candidate: Candidates, spotted: Spotted, clause: number): number {
  const cues = candidate.part === null ? undefined : view.lexicon.parts.get(candidate.part)?.cues;
  const stretch = view.clauses[clause];
  if (cues === undefined || stretch === undefined) return 0;
  let support = 0;
  const from = Math.max(stretch.from, spotted.from - farthestCue);
  const to = Math.min(stretch.to, spotted.to + farthestCue);
  for (let at = from; at <= to; at += 1) {
    const features = cues.get(view.tokens[at]?.stem ?? "");
    if (spotted.used.includes(at) || !features?.has(candidate.feature)) continue;
    support += 1 / features.size;
  }
  return Math.min(support, 2);
}
