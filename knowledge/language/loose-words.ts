// States told by a single word beside the name of their feature ("the finish is satin", "I count three" after
// somebody's two screws). Such a word means nothing alone, so it counts only where its feature stands close by.
import { generalWords, glueWords } from "./common-words.ts";
import { cueWords } from "./cue-words.ts";
import { numberOf } from "./fold-word.ts";
import type { MessageView } from "./message-view.ts";
import type { Negation } from "./negation.ts";
import type { Observation } from "./observations.ts";
import type { Spotted } from "./spot-terms.ts";

const reach = 4;
/** General words ("round", "black") must stand closer. */
const nearReach = 1;
const farthest = 12;

/** States told by loose words in the speaker's own clauses; features that `told` holds for the clause are left out. */
export function observeLooseWords(
  view: MessageView,
  negations: readonly (readonly Negation[])[],
  told: readonly Observation[],
): readonly Observation[] {
  return view.tokens.flatMap((token, at) => {
    const clause = view.clauseOf[at] ?? 0;
    const part = view.partOf[clause];
    if (part === undefined || view.phrasesAt.has(at) || view.taken.has(at) || glueWords.has(token.folded))
      return [];
    if (view.stances[clause]?.aside !== undefined || cueWords.negations.has(token.folded)) return [];
    const feature = featureNear(view, part, at, clause, numberOf(token.folded) !== undefined);
    if (feature === undefined || told.some((each) => each.feature === feature && each.clause === clause))
      return [];
    const state = view.lexicon.parts.get(part)?.features.get(feature)?.tellingWords.get(token.stem);
    if (state === undefined) return [];
    const denial = (negations[clause] ?? []).find((negation) => negation.cue < at && at <= negation.to);
    const isDenied = denial !== undefined;
    return [{ part, feature, state, isDenied, clause, from: denial?.cue ?? at, to: at }];
  });
}

/** The one feature named close to the word, or in a clause just before that this one goes on from. */
function featureNear(
  view: MessageView,
  part: string,
  at: number,
  clause: number,
  isNumber: boolean,
): string | undefined {
  const isGeneral = generalWords.has(view.tokens[at]?.folded ?? "") && !isNumber;
  const near = new Set<string>();
  for (const spotted of phrasesAround(view, at)) {
    const where = view.clauseOf[spotted.from] ?? 0;
    const isClose = where === clause && wordsApart(view, spotted, at) <= (isGeneral ? nearReach : reach);
    if (!isClose && !isJustBefore(view, where, clause)) continue;
    for (const feature of featuresOf(spotted, part, isNumber)) near.add(feature);
  }
  const [only] = near;
  return near.size === 1 ? only : undefined;
}

/** Phrases within a dozen words: farther ones are never close enough. */
function phrasesAround(view: MessageView, at: number): ReadonlySet<Spotted> {
  const around = new Set<Spotted>();
  for (let token = Math.max(0, at - farthest); token <= at + farthest; token += 1) {
    for (const spotted of view.phrasesAt.get(token) ?? []) around.add(spotted);
  }
  return around;
}

/** Telling words between a phrase and a word. */
function wordsApart(view: MessageView, spotted: Spotted, at: number): number {
  const [from, to] = spotted.to < at ? [spotted.to + 1, at] : [at + 1, spotted.from];
  return view.tokens.slice(from, to).filter((token) => !glueWords.has(token.folded)).length;
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
