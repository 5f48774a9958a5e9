// States told in words that no name holds ("you could shave in the back of it"), found by what was learnt of how owners
// speak of them. Generous, like every finder; the judge weighs them.
import { cueWords } from "../cue-words.ts";
import { wordsOfFeature } from "../lexicon.ts";
import type { MessageView } from "../message-view.ts";
import type { Observation } from "../observations.ts";
import { foldedAt } from "../tokens.ts";
import { classesOf, type WordClass } from "../word-classes.ts";
import { type HeardSentence, type HeardState, type Speaking, speakingFor } from "./hearing.ts";

/** Nats from which on a state is brought forward. */
const leastOdds = -3;
/** Share of what speaks for a state that must be said of nothing else. */
const leastFree = 0.35;
/** States of one sentence. */
const mostStates = 6;
/** Nats that a word which goes with anything ("magnet") must speak with to tell a state by itself. */
const leastOfTalk = 1.3;

/** The likeliest state of each feature in each sentence, unless `told` has it. */
export function observeHeard(view: MessageView, told: readonly Observation[]): readonly Observation[] {
  const found: Observation[] = [];
  const classes = classesOf(view);
  for (const sentence of view.heard) {
    for (const heard of likeliest(sentence)) {
      const isKnown = [...told, ...found].some(
        (each) =>
          each.feature === heard.feature &&
          (each.state === heard.state ||
            ((each.isDenied || isThereOrNot(view, heard)) && isWithin(sentence, each.clause))),
      );
      const place = isKnown ? undefined : placeOf(view, sentence, heard, told, classes);
      if (place === undefined) continue;
      const { part, feature, state } = heard;
      found.push({ part, feature, state, isDenied: false, ...place });
    }
  }
  return found;
}

/** Not said of anything ("yes", "both", "cannot find any"), of a feature by its name, or in a figure that is no count. */
function isTelling(view: MessageView, classes: readonly WordClass[], { place, weight }: Speaking): boolean {
  const isSmall =
    classes[place] === "talk" &&
    (weight < leastOfTalk || cueWords.negations.has(foldedAt(view.tokens, place)));
  return !isSmall && !view.taken.has(place) && !isOfName(view, place) && !isOfFigure(view, place);
}

/** "The drain notches, hmm", "can't find a casting mark": the name of a feature tells no state of it nor of another. */
function isOfName({ phrasesAt }: MessageView, at: number): boolean {
  const holding = phrasesAt.get(at) ?? [];
  return (
    holding.length > 0 &&
    holding.every(({ phrase }) => phrase.meanings.every(({ kind }) => kind === "feature" || kind === "part"))
  );
}

/** "2.7" tells no two. */
function isOfFigure({ shown, tokens }: MessageView, at: number): boolean {
  const { start, end } = tokens[at] ?? { start: 0, end: 0 };
  return /\d[.,]$/.test(shown.slice(0, start).slice(-2)) || /^\d+[.,]\d/.test(shown.slice(start, end + 2));
}

/** A feature that may be there or not: "no notches" tells it as well as a name does. */
function isThereOrNot({ lexicon }: MessageView, { part, feature }: HeardState): boolean {
  return wordsOfFeature(lexicon, part, feature)?.polarity.absent !== undefined;
}

function isWithin({ first, last }: HeardSentence, clause: number): boolean {
  return first <= clause && clause <= last;
}

function likeliest({ states }: HeardSentence): readonly HeardState[] {
  return states
    .filter(
      ({ feature, odds }, at) =>
        odds >= leastOdds && states.findIndex((each) => each.feature === feature) === at,
    )
    .slice(0, mostStates);
}

/** The clause whose words speak most for it, from the first of them to the last; undefined when none that tells anything does. */
function placeOf(
  view: MessageView,
  sentence: HeardSentence,
  { index, feature }: HeardState,
  told: readonly Observation[],
  classes: readonly WordClass[],
): Pick<Observation, "clause" | "from" | "to"> | undefined {
  const { ears } = view.lexicon;
  const speaking = ears === undefined ? [] : speakingFor(ears, sentence, index);
  if (!speaking.some((each) => isTelling(view, classes, each))) return undefined;
  const all = speaking.reduce((sum, { weight }) => sum + weight, 0);
  const isExplained = (place: number): boolean =>
    told.some((each) => each.feature !== feature && each.from <= place && place <= each.to);
  const free = speaking.reduce((sum, { place, weight }) => sum + (isExplained(place) ? 0 : weight), 0);
  // "A foam rim" tells of the rim; that foam is also what spokes are padded with is no news.
  if (free < leastFree * all) return undefined;
  const byClause = new Map<number, number>();
  for (const { place, weight } of speaking) {
    const clause = view.clauseOf[place] ?? sentence.first;
    byClause.set(clause, (byClause.get(clause) ?? 0) + weight);
  }
  const [best] = [...byClause].sort(([one, a], [other, b]) => b - a || one - other);
  if (best === undefined) return undefined;
  const places = speaking.filter(({ place }) => view.clauseOf[place] === best[0]).map(({ place }) => place);
  return { clause: best[0], from: Math.min(...places), to: Math.max(...places) };
}
