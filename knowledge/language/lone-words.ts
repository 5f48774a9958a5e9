// States told by a word without its feature being named: one that stands for nothing else in the part ("says CORVANE"),
// or two words of one name together. The clause must speak of a mark or of the feature besides.
import { commonWords, isGeneralWord } from "./common-words.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { MessageView } from "./message-view.ts";
import { foldedAt } from "./tokens.ts";

const reach = 4;
const farthest = 12;
const marking =
  /\b(?:says?|reads?|reading|stamp\w*|mark\w*|cast|molded|raised|letters?|lettering|written|engraved|embossed|punched|struck|etched|scribed|incised|imprinted|spells?|shows?)\b/;
const having = /\b(?:there is a|theres a|there are|has a|has the|with a|with the)\b/;
const markNouns =
  /\b(?:mark|marks|stamp|stamps|letters?|lettering|numbers?|dates?|badge|button|push|logo|legends?|scale|size|dial)\b/i;

/** The state of a feature that a word tells. */
export interface Meant {
  readonly feature: string;
  readonly state: string;
}

/** What a word tells without its feature being named. */
export function unnamed(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  return standsAlone(view, part, at, clause) ?? twoTogether(view, part, at, clause);
}

/** A word that belongs to one state alone, in a clause that speaks of a mark or of its feature. */
function standsAlone(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  const token = view.tokens[at];
  const meant = view.lexicon.parts.get(part)?.distinctive.get(view.words[at] ?? "");
  if (meant === undefined || token === undefined || commonWords.has(token.folded)) return undefined;
  const next = view.clauses[clause + 1];
  const said = `${view.clauses[clause]?.text ?? ""} ${next?.join === "and" ? next.text : ""}`;
  if (isAnothersWord(view, at, meant.feature)) return undefined;
  if (having.test(said) || (marking.test(said) && isOfMark(view, part, meant.feature)))
    return token.folded.length > 1 || token.isCapital ? meant : undefined;
  return token.folded.length > 1 && isCued(view, part, at, clause, meant.feature) ? meant : undefined;
}

/** Two words of one state, one of them used for no other feature: "short chopped strands" of "short chopped fibre". */
function twoTogether(view: MessageView, part: string, at: number, clause: number): Meant | undefined {
  const words = view.lexicon.parts.get(part);
  const word = view.words[at] ?? "";
  const feature = words?.owners.get(word);
  const telling = feature === undefined ? undefined : words?.features.get(feature)?.tellingWords;
  const state = telling?.get(word);
  if (feature === undefined || telling === undefined || state === undefined) return undefined;
  if (isGeneralWord(foldedAt(view.tokens, at))) return undefined;
  for (let near = Math.max(0, at - reach); near <= at + reach; near += 1) {
    const other = view.words[near] ?? "";
    const isHere = near !== at && view.clauseOf[near] === clause && other !== word;
    if (isHere && telling.get(other) === state) return { feature, state };
  }
  return undefined;
}

/** Whether the feature is something written, stamped or cast. */
function isOfMark(view: MessageView, part: string, id: string): boolean {
  const feature = wordsOfFeature(view.lexicon, part, id)?.feature;
  return feature !== undefined && [feature.name, ...feature.also].some((name) => markNouns.test(name));
}

/** "Machined week stamp": the word describes the feature named right behind it. */
function isAnothersWord(view: MessageView, at: number, feature: string): boolean {
  if (view.tokens[at + 1]?.breakBefore !== "none") return false;
  return (view.phrasesAt.get(at + 1) ?? []).some(
    ({ from, phrase }) =>
      from === at + 1 && phrase.meanings.every((each) => each.kind === "feature" && each.feature !== feature),
  );
}

/** Whether another word near by in the sentence, not of the part's own name, points to the feature. */
function isCued(view: MessageView, part: string, at: number, clause: number, feature: string): boolean {
  const words = view.lexicon.parts.get(part);
  const sentence = view.clauses[clause]?.sentence;
  if (words === undefined) return false;
  for (let near = Math.max(0, at - farthest); near <= at + farthest; near += 1) {
    const token = view.tokens[near];
    const isHere = view.clauses[view.clauseOf[near] ?? -1]?.sentence === sentence;
    if (near === at || token === undefined || !isHere || words.nameWords.has(token.folded)) continue;
    if (words.cues.get(token.stem)?.has(feature) === true) return true;
  }
  return false;
}
