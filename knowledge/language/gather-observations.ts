// All that a message may say of states, brought forward generously by the finders, each with how it was found.
// What of it is the speaker's word on the part in hand is decided afterwards.
import { observeCarriedNouns } from "./carried-nouns.ts";
import { observeLooseWords } from "./loose-words.ts";
import type { MessageView } from "./message-view.ts";
import { observeNamedFeatures } from "./named-features.ts";
import { negationsOf, type Observation, observeStates } from "./observations.ts";
import { observePresence } from "./presence.ts";
import type { ShortAnswer } from "./short-answers.ts";
import type { Spotted } from "./spot-terms.ts";

/** By a whole name, a loose word, a noun carried on, a named feature's other words, or a feature said to be there or not. */
export type Finder = "name" | "loose" | "carried" | "named" | "presence";

export interface Candidate extends Observation {
  /** How it was found; a short answer by what it answers with. */
  readonly finder: Finder | ShortAnswer["by"];
}

export interface Gathered {
  readonly candidates: readonly Candidate[];
  /** Phrases that fit several features. */
  readonly undecided: readonly Spotted[];
}

/** Every observation of the message in the order of the finders. */
export function gatherObservations(view: MessageView): Gathered {
  const negations = negationsOf(view);
  const { observations: named, undecided } = observeStates(view, negations);
  const loose = observeLooseWords(view, negations, named);
  const carried = observeCarriedNouns(view, negations, [...named, ...loose]);
  const soFar = [...named, ...loose, ...carried];
  const near = observeNamedFeatures(view, soFar);
  const present = observePresence(view, negations, [...soFar, ...near]);
  const by = (finder: Finder, found: readonly Observation[]): readonly Candidate[] =>
    found.map((each) => ({ ...each, finder }));
  const candidates = [
    ...by("name", named),
    ...by("loose", loose),
    ...by("carried", carried),
    ...by("named", near),
    ...by("presence", present),
  ];
  return { candidates, undecided };
}

/**
 * The short answer as a candidate: at its telling word, else of the whole message; undefined for sizes, dates and a place
 * among the answers ("c"), which are nothing but an answer.
 */
export function candidateOfAnswer(view: MessageView, { finding, by }: ShortAnswer): Candidate | undefined {
  const { value, feature, part } = finding;
  const words = part === null ? undefined : view.lexicon.parts.get(part)?.features.get(feature);
  const state = value.kind === "state" ? value.state : words?.polarity.absent;
  if (part === null || state === undefined || !/state/.test(value.kind) || by === "place") return undefined;
  const at = view.tokens.findIndex(({ stem }) => words?.tellingWords.get(stem) === state);
  const place =
    by === "word" && at >= 0
      ? { from: at, to: at }
      : { from: view.tokens.length, to: view.tokens.length - 1 };
  const clause = view.clauseOf[place.from] ?? 0;
  return { part, feature, state, isDenied: value.kind !== "state", clause, ...place, finder: by };
}
