// A feature named with "no", "has" or "can't find": the state that says it is not there, or those that say it is.
// Only features with such a state are read so; a feature merely named says nothing.

import { notThere } from "../evidence/report.ts";
import { isGeneralWord } from "./common-words.ts";
import { headFeatureAt } from "./head-nouns.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { MessageView } from "./message-view.ts";
import type { Negation } from "./negation.ts";
import type { Observation } from "./observations.ts";
import type { FeatureWords } from "./part-words.ts";
import { foldedAt } from "./tokens.ts";

/** A feature named in a clause, by one of its names or by its main noun. */
interface Mention {
  readonly part: string;
  readonly words: FeatureWords;
  /** The state that says that it is not there; a feature without one is not asked for. */
  readonly absent: string;
  readonly from: number;
  readonly to: number;
  readonly clause: number;
}

const before =
  /\b(?:has|have|having|had|got|with|w|there is|there are|theres|there was|see|seen|found|find|spotted|shows?|showing|bears?|carries|wears|comes with|complete with|includes|i see|feel|there does seem to be|yes)\b/;
const after =
  /^(?:(?:is|are|was|were|its|theyre|all|still|just|only|very|barely|faintly|clearly|both) )*(?:there|visible|present|showing|clear|intact|legible|readable|seen|in place|yes)\b/;
const backwards =
  /^(?:(?:is|are|was|were|that|i|can|to|at|it|be|has|have|the|a|which|there|my|on|mine|one)\b ?)*$/;
const nothingElse =
  /^(?:there|visible|present|anywhere|at|all|to|be|seen|found|that|i|can|see|find|any|any more|anymore|on|it|mine|this|one|evident|obvious|legible|showing|fitted|in|place|have|has|had|been|ever|either|as|far|or|never) ?(?:(?:there|visible|present|anywhere|at|all|to|be|seen|found|that|i|can|see|find|on|it|mine|this|one|evident|fitted|in|place|been|ever|either|as|far)\b ?)*$|^$/;
const goneAfter =
  /^(?:(?:is|are|was|were|its|theyre|all|just|seems?|looks?|to|be|appears?|completely|totally|entirely|clearly) )*(?:missing|absent|gone|lacking|none|nil|nowhere|removed|not there|not present|not visible)\b/;

/** Features said to be there or not, in clauses that name no state of them. */
export function observePresence(
  view: MessageView,
  negations: readonly (readonly Negation[])[],
  states: readonly Observation[],
): readonly Observation[] {
  return mentionsOf(view).flatMap((mention) => {
    const isTold = states.some((state) => state.feature === mention.words.feature.id);
    if (isTold) return [];
    const cue = denialOf(view, negations[mention.clause] ?? [], mention);
    if (cue === undefined && !isAffirmed(view, mention)) return [];
    return observationsOf(view, mention, cue);
  });
}

function observationsOf(
  view: MessageView,
  mention: Mention,
  cue: number | undefined,
): readonly Observation[] {
  const { absent, words } = mention;
  const { present } = words.polarity;
  const found = {
    part: mention.part,
    feature: words.feature.id,
    // "Drain notches? none" is told where it is answered.
    clause: Math.max(mention.clause, view.clauseOf[cue ?? mention.from] ?? 0),
    from: Math.min(mention.from, cue ?? mention.from),
    to: Math.max(mention.to, cue ?? mention.to),
  };
  if (cue !== undefined) return [{ ...found, state: absent, isDenied: false }];
  const [only] = present;
  if (present.length === 1 && only !== undefined) return [{ ...found, state: only, isDenied: false }];
  return present.length > 1 ? [{ ...found, state: absent, isDenied: true }] : [];
}

/** The feature's mentions; the last of several wins later, so order is kept. */
function mentionsOf(view: MessageView): readonly Mention[] {
  const named = view.spotted.flatMap((spotted) => {
    const clause = view.clauseOf[spotted.from] ?? 0;
    const part = view.partOf[clause];
    const meanings = spotted.phrase.meanings.filter((each) => each.kind === "feature" && each.part === part);
    const [meaning] = meanings;
    if (meaning?.kind !== "feature" || meanings.length !== 1) return [];
    return mention(view, meaning.part, meaning.feature, { from: spotted.from, to: spotted.to, clause });
  });
  return [...named, ...headMentions(view)].sort((one, other) => one.from - other.from);
}

/** "can't find a mark": the main noun of one feature, where no phrase holds it. */
function headMentions(view: MessageView): readonly Mention[] {
  const held = new Set(view.spotted.flatMap((spotted) => spotted.used));
  return view.tokens.flatMap((token, at) => {
    const clause = view.clauseOf[at] ?? 0;
    const part = view.partOf[clause];
    const words = part === undefined ? undefined : view.lexicon.parts.get(part);
    const feature =
      part === undefined
        ? undefined
        : (headFeatureAt(view, part, at) ?? deniedWord(view, at, words?.cues.get(token.stem)));
    if (held.has(at) || part === undefined || feature === undefined) return [];
    return mention(view, part, feature, { from: at, to: at, clause });
  });
}

/** "No diamond": a word of one feature's names alone, right behind its denial. */
function deniedWord(
  view: MessageView,
  at: number,
  features: ReadonlySet<string> | undefined,
): string | undefined {
  const [only] = features ?? [];
  if (features?.size !== 1 || isGeneralWord(foldedAt(view.tokens, at))) return undefined;
  return /^(?:no|without|any)$/.test(foldedAt(view.tokens, at - 1)) ? only : undefined;
}

function mention(
  view: MessageView,
  part: string,
  feature: string,
  place: { readonly from: number; readonly to: number; readonly clause: number },
): readonly Mention[] {
  const words = wordsOfFeature(view.lexicon, part, feature);
  const absent = words?.polarity.absent;
  return words === undefined || absent === undefined ? [] : [{ part, words, absent, ...place }];
}

/** The token that denies the mention: a cue before it, or one after it with nothing else to deny. */
function denialOf(view: MessageView, negations: readonly Negation[], mention: Mention): number | undefined {
  const clause = view.clauses[mention.clause];
  if (clause === undefined) return undefined;
  const leading = negations.find((negation) => negation.cue < mention.from && mention.from <= negation.to);
  if (leading !== undefined) return leading.cue;
  const rest = text(view, mention.to + 1, clause.to);
  if (goneAfter.test(rest)) return clause.to;
  const trailing = negations.find((negation) => negation.cue > mention.to);
  if (trailing === undefined) return isAnsweredNo(view, mention) ? mention.to + 1 : undefined;
  const isFree = nothingElse.test(text(view, trailing.cue + 1, clause.to));
  return isFree && backwards.test(text(view, mention.to + 1, trailing.cue - 1)) ? trailing.cue : undefined;
}

/** "casting mark: none", "mark - no", "drain notches? none". */
function isAnsweredNo(view: MessageView, mention: Mention): boolean {
  return isAnswered(
    view,
    mention,
    /^(?:(?:no|none|nothing|nope|absent|missing|nil|not (?:there|present|visible|found))(?: (?:found|there|seen|visible|at all|that i can see))?$|cant (?:see|find) (?:one|any|it)\b|none\b)/,
  );
}

function isAnswered(view: MessageView, mention: Mention, answer: RegExp): boolean {
  const clause = view.clauses[mention.clause];
  const next = view.clauses[mention.clause + 1];
  if (clause?.to !== mention.to || next === undefined) return false;
  return (next.join === "comma" || clause.isAsked) && answer.test(next.text);
}

function isAffirmed(view: MessageView, mention: Mention): boolean {
  const clause = view.clauses[mention.clause];
  if (clause === undefined || mention.absent === notThere) return false;
  // "Cast in the back" says where something is, not that there is a back.
  if (
    /\b(?:in|on|at|under|to|from|of|behind|near|by|around|along)(?: the| its| my| this)?$/.test(
      text(view, mention.from - 2, mention.from - 1),
    )
  )
    return false;
  const ahead = text(view, mention.to + 1, clause.to);
  if (after.test(ahead)) return true;
  const isYes = isAnswered(view, mention, /^(?:yes|yep|yeah|present|visible)\b/);
  return isYes || before.test(text(view, Math.max(clause.from, mention.from - 6), mention.from - 1));
}

function text(view: MessageView, from: number, to: number): string {
  return view.tokens
    .slice(Math.max(0, from), to + 1)
    .map((token) => token.folded)
    .join(" ");
}
