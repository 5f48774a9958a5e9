// A clause that names one feature and none of its states whole ("the edge looks chewed by a saw"): its other words may
// still come near to one state. Asked only where nothing else was told and nothing is denied.
import type { StateFeature } from "../handbook/schema.ts";
import { cueWords } from "./cue-words.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { MessageView } from "./message-view.ts";
import { nearestState } from "./nearest-state.ts";
import type { Observation } from "./observations.ts";
import { foldedAt } from "./tokens.ts";

/** Words of a clause that are tried; a longer one says too much else. */
const mostWords = 14;

/** States that such clauses come near to, by the words that no phrase holds. */
export function observeNamedFeatures(
  view: MessageView,
  told: readonly Observation[],
): readonly Observation[] {
  return view.clauses.flatMap((clause, at) => {
    const part = view.partOf[at];
    const isShort = clause.to - clause.from < mostWords;
    if (part === undefined || !isShort || told.some((each) => each.clause === at)) return [];
    const places = Array.from({ length: clause.to - clause.from + 1 }, (_, step) => clause.from + step);
    const isDenied = places.some((place) => cueWords.negations.has(foldedAt(view.tokens, place)));
    const feature = isDenied ? undefined : featureOf(view, part, places);
    if (feature === undefined || told.some((each) => each.feature === feature.id)) return [];
    const free = places.filter((place) => !view.phrasesAt.has(place) && !view.taken.has(place));
    const state = nearestState(
      feature,
      free.map((place) => view.words[place] ?? ""),
    );
    if (state === undefined) return [];
    return [
      { part, feature: feature.id, state, isDenied: false, clause: at, from: clause.from, to: clause.to },
    ];
  });
}

/** The one feature that the phrases at these places name, unless it only says where or what from. */
function featureOf(view: MessageView, part: string, places: readonly number[]): StateFeature | undefined {
  const spotted = new Set(places.flatMap((place) => view.phrasesAt.get(place) ?? []));
  const meanings = [...spotted].flatMap((each) => each.phrase.meanings.map((meaning) => ({ each, meaning })));
  const named = meanings.flatMap(({ each, meaning }) =>
    "feature" in meaning && meaning.part === part ? [{ each, id: meaning.feature }] : [],
  );
  const [first] = named;
  if (first === undefined || named.some(({ id }) => id !== first.id)) return undefined;
  const before = view.tokens
    .slice(Math.max(0, first.each.from - 2), first.each.from)
    .map(({ folded }) => folded);
  if (/\b(?:from|for|about|to|into|with)(?: the| my| its)?$/.test(before.join(" "))) return undefined;
  const feature = wordsOfFeature(view.lexicon, part, first.id)?.feature;
  return feature?.kind === "states" ? feature : undefined;
}
