// Hears the states that the sentences of a message tell, by the words that were learnt of them: for each sentence and state
// the logarithm of the odds that it is told there. A logistic model for each state; nothing is decided here.
import type { MessageView } from "../message-view.ts";
import { type Ears, type KnownState, oddsOf, weightOf } from "./ears.ts";
import { type Sentence, type Spoken, sentencesOf } from "./grams.ts";

/** A sentence with the odds of all that words speak for, before it is known of which part it speaks. */
export interface SoundedSentence extends Sentence {
  /** Nats, by place in the row of `Ears`. */
  readonly odds: Float64Array;
}

export interface HeardState extends KnownState {
  /** Its place in `Ears.states`. */
  readonly index: number;
  /** Nats; 0 is even odds. */
  readonly odds: number;
}

export interface HeardSentence extends Sentence {
  /** Nats for its telling any state. */
  readonly telling: number;
  /** The states of the parts it speaks of, likeliest first. */
  readonly states: readonly HeardState[];
}

/** The sentences of a message in order; linear in their words times what they speak for. */
export function soundedSentences(spoken: Spoken, ears: Ears): readonly SoundedSentence[] {
  return sentencesOf(spoken).map((sentence) => ({
    ...sentence,
    odds: oddsOf(sentence.grams.keys(), ears),
  }));
}

/** What is heard in each sentence once the part of each clause is known. */
export function hear(
  sentences: readonly SoundedSentence[],
  partOf: MessageView["partOf"],
  ears: Ears,
): readonly HeardSentence[] {
  return sentences.map(({ odds, ...sentence }) => ({
    ...sentence,
    telling: odds[ears.states.length] as number,
    states: [...partsOf({ partOf }, sentence)]
      .flatMap((part) => statesOf(part, odds, ears))
      .sort((one, other) => other.odds - one.odds || one.index - other.index),
  }));
}

/** The parts that the clauses of a sentence speak of. */
export function partsOf(
  { partOf }: Pick<MessageView, "partOf">,
  { first, last }: Sentence,
): ReadonlySet<string> {
  return new Set(partOf.slice(first, last + 1).filter((part) => part !== undefined));
}

function statesOf(part: string, odds: Float64Array, ears: Ears): readonly HeardState[] {
  const [from, to] = ears.statesOf.get(part) ?? [0, 0];
  return ears.states
    .slice(from, to)
    .map((state, step) => ({ ...state, index: from + step, odds: odds[from + step] as number }));
}

/** Nats for each part's being spoken of in a sentence, if it tells of any. */
export function partOdds({ odds }: SoundedSentence, { parts, states }: Ears): ReadonlyMap<string, number> {
  return new Map(parts.map((part, at) => [part, odds[states.length + 1 + at] as number]));
}

export interface Speaking {
  readonly place: number;
  /** Nats. */
  readonly weight: number;
}

/** Places of the words that speak for a state in a sentence, with what each adds. */
export function speakingFor(ears: Ears, { grams }: Sentence, index: number): readonly Speaking[] {
  return [...grams].flatMap(([gram, place]) => {
    const weight = place < 0 ? 0 : weightOf(gram, index, ears);
    return weight > 0 ? [{ place, weight }] : [];
  });
}
