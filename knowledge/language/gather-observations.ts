// All that a message may say of states, brought forward generously by the finders, each with how it was found.
// What of it is the speaker's word on the part in hand is decided afterwards.
import { observeCarriedNouns } from "./carried-nouns.ts";
import { cueWords } from "./cue-words.ts";
import { groundWords } from "./ground-words.ts";
import { observeHeard } from "./hearing/heard-states.ts";
import { wordsOfFeature } from "./lexicon.ts";
import { observeLooseWords } from "./loose-words.ts";
import type { MessageView } from "./message-view.ts";
import { observeNamedFeatures } from "./named-features.ts";
import { negationsOf, type Observation, observeStates } from "./observations.ts";
import { observePresence } from "./presence.ts";
import type { ShortAnswer } from "./short-answers.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt } from "./tokens.ts";

/** By a whole name, a loose word, a noun carried on, a named feature's other words, a feature said to be there or not, or learnt words. */
export type Finder = "name" | "loose" | "carried" | "named" | "presence" | "heard";

export interface Candidate extends Observation {
  /** How it was found; a short answer by what it answers with. */
  readonly finder: Finder | ShortAnswer["by"];
}

export interface Gathered {
  readonly candidates: readonly Candidate[];
  /** Phrases that fit several features. */
  readonly undecided: readonly Spotted[];
}

/**
 * Every observation of the message in the order of the finders. `answer`: what the message answers in short, where it does; of
 * that feature nothing is heard beside it.
 */
export function gatherObservations(view: MessageView, answer?: ShortAnswer): Gathered {
  const negations = negationsOf(view);
  const { observations: named, undecided } = observeStates(view, negations);
  const loose = observeLooseWords(view, negations, named);
  const carried = observeCarriedNouns(view, negations, [...named, ...loose]);
  const soFar = [...named, ...loose, ...carried];
  const near = observeNamedFeatures(view, soFar);
  const present = observePresence(view, negations, [...soFar, ...near]);
  const heard = isNothingBut(view, answer)
    ? []
    : observeHeard(view, [...soFar, ...near, ...present]).filter(
        ({ feature }) => feature !== answer?.finding.feature,
      );
  const by = (finder: Finder, found: readonly Observation[]): readonly Candidate[] =>
    found.map((each) => ({ ...each, finder }));
  const candidates = [
    ...by("name", named),
    ...by("loose", loose),
    ...by("carried", carried),
    ...by("named", near),
    ...by("presence", present),
    ...by("heard", heard),
  ];
  return { candidates: candidates.filter((each) => !asksOn(view, each)), undecided };
}

/** "B", "n": a place among the answers or a bare nod is nothing else besides. */
function isNothingBut({ tokens }: MessageView, answer: ShortAnswer | undefined): boolean {
  return answer?.by === "place" || (answer?.by === "nod" && tokens.length <= 2);
}

/** "Is it bare ABS, no brackets?": what follows a question in its sentence, without a verb of its own, goes on asking. */
function asksOn({ clauses, stances, tokens }: MessageView, { clause: at }: Candidate): boolean {
  // "Why rough" asks without its mark.
  if (tokens.length <= 3 && /^(?:why|how|where)$/.test(foldedAt(tokens, 0))) return true;
  const clause = clauses[at];
  const opener = clauses.findIndex((each) => each.sentence === clause?.sentence);
  if (clause === undefined || stances[opener]?.aside !== "question") return false;
  const isWhole = clauses.every(({ sentence }) => sentence === clause.sentence);
  const isAsked = clauses.some(({ isAsked }) => isAsked);
  const later = tokens.slice((clauses[opener]?.to ?? 0) + 1);
  return (
    isWhole &&
    isAsked &&
    cueWords.polar.has(foldedAt(tokens, 0)) &&
    !later.some(({ folded }) => groundWords.verbs.has(folded) || groundWords.firstPerson.has(folded))
  );
}

/**
 * The short answer as a candidate: at its telling word, else of the whole message; undefined for sizes, dates and a place
 * among the answers ("c"), which are nothing but an answer.
 */
export function candidateOfAnswer(view: MessageView, { finding, by }: ShortAnswer): Candidate | undefined {
  const { value, feature, part } = finding;
  if (part === null || by === "place") return undefined;
  const words = wordsOfFeature(view.lexicon, part, feature);
  const state = value.kind === "state" ? value.state : words?.polarity.absent;
  if (state === undefined || !/state/.test(value.kind)) return undefined;
  const at = view.tokens.findIndex(({ stem }) => words?.tellingWords.get(stem) === state);
  const place =
    by === "word" && at >= 0
      ? { from: at, to: at }
      : { from: view.tokens.length, to: view.tokens.length - 1 };
  const clause = view.clauseOf[place.from] ?? 0;
  return { part, feature, state, isDenied: value.kind !== "state", clause, ...place, finder: by };
}
