// States told by a single word beside the name of their feature ("tips: round", "I count three" after somebody's
// two screws), or by a word that stands for nothing else in the part ("says CORVANE"). Such a word means nothing
// alone: its feature must stand close by, or the clause must speak of a mark.
import { commonWords, generalWords, glueWords } from "./common-words.ts";
import { cueWords } from "./cue-words.ts";
import { numberOf } from "./fold-word.ts";
import type { MessageView } from "./message-view.ts";
import type { Negation } from "./negation.ts";
import type { Observation } from "./observations.ts";
import type { FeatureWords } from "./part-words.ts";
import type { Spotted } from "./spot-terms.ts";

const reach = 4;
/** General words ("round", "black") must stand closer. */
const nearReach = 1;
const farthest = 12;
const marking =
  /\b(?:says?|reads?|reading|stamp\w*|mark\w*|cast|molded|raised|letters?|lettering|written|engraved|embossed|there is a|theres a|there are|has a|with a|shows?)\b/;

/** States told by loose words in the speaker's own clauses; features that `told` holds for the clause are left out. */
export function observeLooseWords(
  view: MessageView,
  negations: readonly (readonly Negation[])[],
  told: readonly Observation[],
): readonly Observation[] {
  return view.tokens.flatMap((token, at) => {
    const clause = view.clauseOf[at] ?? 0;
    const part = view.partOf[clause];
    if (part === undefined || view.phrasesAt.has(at) || view.taken.has(at)) return [];
    if (glueWords.has(token.folded) || cueWords.negations.has(token.folded)) return [];
    if (view.stances[clause]?.aside !== undefined) return [];
    const meant = besideFeature(view, part, at, clause) ?? standsAlone(view, part, at, clause);
    if (meant === undefined || told.some((each) => each.feature === meant.feature && each.clause === clause))
      return [];
    const denial = (negations[clause] ?? []).find((negation) => negation.cue < at && at <= negation.to);
    const isDenied = denial !== undefined;
    return [{ part, ...meant, isDenied, clause, from: denial?.cue ?? at, to: at }];
  });
}

interface Meant {
  readonly feature: string;
  readonly state: string;
}

/** A word that belongs to one state alone, in a clause that speaks of a mark or of its feature. */
function standsAlone(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  const words = view.lexicon.parts.get(part);
  const token = view.tokens[at];
  const meant = token === undefined ? undefined : words?.distinctive.get(token.stem);
  if (meant === undefined || token === undefined || commonWords.has(token.folded)) return undefined;
  const stretch = view.clauses[clause];
  const isCued = view.tokens
    .slice(stretch?.from ?? at, (stretch?.to ?? at) + 1)
    .some((each) => each !== token && words?.cues.get(each.stem)?.has(meant.feature));
  return isCued || marking.test(stretch?.text ?? "") ? meant : undefined;
}

/** The state the word tells of the one feature named close to it. */
function besideFeature(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  const token = view.tokens[at];
  if (token === undefined) return undefined;
  const isNumber = numberOf(token.folded) !== undefined;
  const isGeneral = generalWords.has(token.folded) && !isNumber;
  const found = new Map<string, string>();
  for (const feature of featuresAround(view, part, at, clause, isNumber, isGeneral ? nearReach : reach)) {
    const words = view.lexicon.parts.get(part)?.features.get(feature);
    const state = words?.tellingWords.get(token.stem);
    if (words === undefined || state === undefined || !isClear(view, part, words, token.stem)) continue;
    found.set(feature, state);
  }
  const [only] = found;
  return found.size === 1 && only !== undefined ? { feature: only[0], state: only[1] } : undefined;
}

/** Either all that a name of the state has to tell, or a word of no other feature. */
function isClear(view: MessageView, part: string, words: FeatureWords, stem: string): boolean {
  if (words.soleWords.has(stem)) return true;
  return view.lexicon.parts.get(part)?.distinctive.get(stem)?.feature === words.feature.id;
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
  const add = (from: number, to: number, features: readonly string[]): void => {
    const where = view.clauseOf[from] ?? 0;
    const isClose = where === clause && wordsApart(view, from, to, at) <= within;
    if (isClose || isJustBefore(view, where, clause)) for (const feature of features) near.add(feature);
  };
  const heads = view.lexicon.parts.get(part)?.heads;
  for (let token = Math.max(0, at - farthest); token <= at + farthest; token += 1) {
    for (const spotted of view.phrasesAt.get(token) ?? []) {
      add(spotted.from, spotted.to, featuresOf(spotted, part, isNumber));
    }
    const head = heads?.get(view.tokens[token]?.stem ?? "");
    if (head !== undefined && token !== at) add(token, token, [head]);
  }
  return near;
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
