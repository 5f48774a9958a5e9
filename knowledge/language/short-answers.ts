// Answers to the question just asked, which would mean nothing by themselves: "yes", "2", "the second one", "b",
// "rough", "44". Read only when the message is short and nothing else in it was understood about that feature.

import { notThere, type ReportValue } from "../evidence/report.ts";
import type { Feature, MeasurementFeature, StateFeature } from "../handbook/schema.ts";
import { convertUnits } from "../trade/units.ts";
import { generalWords, glueWords } from "./common-words.ts";
import { isCorrectingNo } from "./correcting-no.ts";
import { cueWords, wishCues } from "./cue-words.ts";
import { numberOf } from "./fold-word.ts";
import { cannotTell } from "./intents.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { FeatureFinding, Intent } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import { nearestState } from "./nearest-state.ts";
import type { FeatureWords } from "./part-words.ts";
import type { Quantity } from "./quantities.ts";
import { statesLeft } from "./states-left.ts";
import { foldedAt, type Token, tokenise } from "./tokens.ts";
import { isOfKind, isUnreal } from "./unreal-cues.ts";
import { corrections } from "./weigh-observations.ts";

const fillers: ReadonlySet<string> = new Set(
  "its it is are they theyre the a an i think id say well er um oh ok okay just definitely probably maybe looks look like seems seem to be me on mine this that one ones sort kind of type option answer number letter sure pretty very quite mostly more or less bit little must would appears as far can see tell and so there sir mate thanks please yes yeah no".split(
    " ",
  ),
);
const undecided: ReadonlySet<string> = new Set("both either mix mixture between half".split(" "));
const mixed = /\b(?:bit of (?:both|each)|mix(?:ture)? of|half and half|in between)\b/;
/** "Is rounded good or bad?" asks what the answer would mean. */
const judged =
  /^(?:(?:so|and|but|ok) )?(?:is|are|was|were|does|do|would) (?:\w+ ){1,4}(?:good|bad|better|worse|early|earlier|later?|right|wrong|normal|odd|genuine|original|rare|common|matter|mean)\b/;
const asking = /^(?:(?:but|so|and|ok) )?(?:why|how|where|when|who)\b/;
const ordinals = "first second third fourth fifth sixth".split(" ");

export interface ShortAnswer {
  readonly finding: FeatureFinding;
  /** Told by a word of the state, by a nod, by its place among the answers or its figure, or by coming nearest. */
  readonly by: "word" | "nod" | "place" | "figure" | "nearness";
}

/**
 * The finding a short answer makes; undefined when it answers nothing. `intents`: those read from the message;
 * `quantities`: its figures that are no dates.
 */
export function readShortAnswer(
  view: MessageView,
  intents: readonly Intent[],
  quantities: readonly Quantity[],
): ShortAnswer | undefined {
  const { part, askedFeature } = view.context;
  const words =
    part === undefined || askedFeature === undefined
      ? undefined
      : wordsOfFeature(view.lexicon, part, askedFeature);
  if (words === undefined || part === undefined || view.tokens.length > 14) return undefined;
  const answer = answerIn(view, words, intents, quantities);
  if (answer === undefined) return undefined;
  const isDoubted = view.clauses.some((clause) => clause.isAsked);
  const certainty = Math.min(isDoubted ? 0.5 : 1, ...view.stances.map((stance) => stance.certainty));
  const finding = {
    part,
    feature: words.feature.id,
    value: answer.value,
    certainty,
    words: wordsBetween(view, 0, view.tokens.length - 1),
  };
  return { finding, by: answer.by };
}

function answerIn(
  view: MessageView,
  words: FeatureWords,
  intents: readonly Intent[],
  quantities: readonly Quantity[],
): { readonly value: ReportValue; readonly by: ShortAnswer["by"] } | undefined {
  const { feature } = words;
  if (
    view.clauses.some(
      ({ text }) => wishCues.test(text) || mixed.test(text) || isUnreal(text) || isOfKind(text),
    )
  )
    return undefined;
  // "Why rough" asks without its mark.
  if (view.tokens.length <= 3 && view.clauses.some(({ text }) => asking.test(text))) return undefined;
  if (view.clauses.some(({ isAsked, text }) => isAsked && (judged.test(text) || asking.test(text))))
    return undefined;
  if (view.stances.some((stance) => stance.aside === "hearsay" || stance.aside === "another-car"))
    return undefined;
  if (feature.kind === "measurement") return as("figure", measured(view, quantities, feature));
  const isUnseen = intents.some((intent) => intent.kind === "cannot-tell" || intent.kind === "how-to-check");
  const polar = isUnseen ? undefined : yesOrNo(view, words, intents);
  if (feature.kind === "date") return as("nod", polar);
  const told = toldByWord(view, words);
  if (told !== undefined || isUnseen) return as("word", told);
  return (
    as("nod", polar) ?? as("place", chosenByPlace(view, feature)) ?? as("nearness", nearest(view, feature))
  );
}

function as<By>(by: By, value: ReportValue | undefined): { value: ReportValue; by: By } | undefined {
  return value === undefined ? undefined : { value, by };
}

/** The state that the answer's words come nearest to, when it denies and asks nothing. */
function nearest(view: MessageView, feature: StateFeature): ReportValue | undefined {
  const isPlain = view.clauses.every(
    (clause, at) => view.stances[at]?.aside === undefined && !clause.isAsked && !cannotTell.test(clause.text),
  );
  const isMixed = ({ folded }: Token): boolean => cueWords.negations.has(folded) || undecided.has(folded);
  if (!isPlain || view.tokens.some(isMixed)) return undefined;
  const said = view.words.filter((_, at) => !fillers.has(foldedAt(view.tokens, at)));
  const state = nearestState(feature, said);
  return state === undefined ? undefined : { kind: "state", state };
}

function measured(
  view: MessageView,
  quantities: readonly Quantity[],
  { unit, instrument }: MeasurementFeature,
): ReportValue | undefined {
  const [only] = quantities;
  if (quantities.length !== 1 || only === undefined || only.isDenied || view.tokens.length > 8)
    return undefined;
  // "420 kg" is no thickness.
  if (only.unit !== null && convertUnits(1, only.unit, unit) === undefined) return undefined;
  return {
    kind: "measurement",
    value: only.value,
    halfWidth: only.halfWidth,
    unit: only.unit,
    instrument: only.instrument ?? instrument,
  };
}

/** The state that a word of the answer tells apart ("three" among screws, "hairy" among finishes), or excludes. */
function toldByWord(view: MessageView, words: FeatureWords): ReportValue | undefined {
  const told = new Set<string>();
  const denied = new Set<string>();
  let isLastDenied = false;
  const isShort = view.tokens.filter((token) => !fillers.has(token.folded)).length <= 3;
  view.tokens.forEach((token, at) => {
    if ([glueWords, fillers, undecided].some((list) => list.has(token.folded))) return;
    if (cannotTell.test(view.clauses[view.clauseOf[at] ?? 0]?.text ?? "")) return;
    const state = words.tellingWords.get(token.stem);
    if (
      state === undefined ||
      (!isShort && generalWords.has(token.stem) && numberOf(token.folded) === undefined)
    )
      return;
    isLastDenied = isDenied(view.tokens, at) || (isLastDenied && isAfterOr(view.tokens, at));
    (isLastDenied ? denied : told).add(state);
  });
  const [only] = told.size > 1 && isPutRight(view) ? [...told].slice(-1) : told;
  if ((told.size === 1 || isPutRight(view)) && only !== undefined) return { kind: "state", state: only };
  if (told.size > 0 || denied.size === 0 || words.feature.kind !== "states") return undefined;
  const left = statesLeft(words.feature, denied, sureWords(view));
  const [last] = left;
  if (left.length === 1 && last !== undefined) return { kind: "state", state: last };
  return { kind: "weighed-states", weights: evenly(left) };
}

function evenly(states: readonly string[]): Readonly<Record<string, number>> {
  return Object.fromEntries(states.map((state) => [state, 1]));
}

/** "Two, no three": the last stands. */
function isPutRight({ tokens, clauses }: MessageView): boolean {
  return (
    tokens.some((_, at) => isCorrectingNo(tokens, at)) || clauses.some(({ text }) => corrections.test(text))
  );
}

/** The words of the answer that stand under no negation. */
function sureWords(view: MessageView): readonly string[] {
  return view.words.filter((_, at) => !isDenied(view.tokens, at));
}

const articles: ReadonlySet<string> = new Set(["a", "an", "the"]);

/** A negation or "than" within the two words before, articles not counted, no comma in between. */
function isDenied(tokens: readonly Token[], at: number): boolean {
  let left = 2;
  for (let before = at - 1; left > 0; before -= 1) {
    if (tokens[before + 1]?.breakBefore !== "none") return false;
    const word = foldedAt(tokens, before);
    if (word === "than" || (cueWords.negations.has(word) && !isCorrectingNo(tokens, before))) return true;
    if (!articles.has(word)) left -= 1;
  }
  return false;
}

/** "Not a ring or a lozenge" denies both. */
function isAfterOr(tokens: readonly Token[], at: number): boolean {
  const before = articles.has(foldedAt(tokens, at - 1)) ? at - 2 : at - 1;
  return foldedAt(tokens, before) === "or";
}

function yesOrNo(
  view: MessageView,
  words: FeatureWords,
  intents: readonly Intent[],
): ReportValue | undefined {
  const { absent, present } = words.polarity;
  if (absent === undefined) return undefined;
  const isBareNo = isOnlyNo(view);
  // "Nope" to "are the letters raised or sunk?" does not say that there are none.
  if (absent === notThere && isBareNo) return undefined;
  const isNone =
    view.tokens.length <= 4 && view.tokens.some(({ folded }) => folded === "none" || folded === "nothing");
  if (isNone || intents.some((intent) => intent.kind === "no")) return { kind: "state", state: absent };
  if (!intents.some((intent) => intent.kind === "yes") || present.length === 0) return undefined;
  const [only] = present;
  if (present.length === 1 && only !== undefined) return { kind: "state", state: only };
  return { kind: "weighed-states", weights: evenly(present) };
}

function isOnlyNo(view: MessageView): boolean {
  return view.tokens.every(({ folded }) =>
    /^(?:no|nope|nah|n|nein|non|sorry|sir|mate|thanks|negative)$/.test(folded),
  );
}

/** "b", "2", "the second one": the answers stand in the handbook's order. */
function chosenByPlace({ tokens, shown }: MessageView, feature: StateFeature): ReportValue | undefined {
  // "One" fills a sentence, "1" does not.
  const isFigure = ({ start, end }: Token): boolean => /^\d+$/.test(shown.slice(start, end));
  const telling = tokens.filter(
    (token) => !fillers.has(token.folded) || token.folded === "a" || isFigure(token),
  );
  const [only] = telling.filter((token) => telling.length === 1 || token.folded !== "a");
  if (telling.length === 0 || telling.length > 2 || only === undefined) return undefined;
  const state = feature.states[placeOf(only, feature)];
  return state === undefined ? undefined : { kind: "state", state: state.id };
}

function placeOf(token: Token, feature: Feature): number {
  if (token.folded === "last" && feature.kind === "states") return feature.states.length - 1;
  if (/^[a-l]$/.test(token.folded)) return token.folded.charCodeAt(0) - "a".charCodeAt(0);
  const ordinal = ordinals.indexOf(token.folded);
  if (ordinal >= 0) return ordinal;
  // "3" among states that are numbers ("three screws") is one of them or none, never the third of the list.
  return hasNumbers(feature) ? -1 : (numberOf(token.folded) ?? 0) - 1;
}

function hasNumbers(feature: Feature): boolean {
  if (feature.kind !== "states") return false;
  return feature.states.some((state) =>
    tokenise(state.name).some((token) => numberOf(token.folded) !== undefined),
  );
}
