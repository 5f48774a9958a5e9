// Hears the states that the sentences of a message tell, by the words that were learnt of them: for each sentence and state
// the logarithm of the odds that it is told there. A logistic model for each state; nothing is decided here.
import type { Ear, LearntWords } from "../../handbook/schema.ts";
import type { MessageView } from "../message-view.ts";
import { type Sentence, type Spoken, sentencesOf } from "./grams.ts";
import { eachWeight } from "./weights-of-ear.ts";

interface KnownState {
  readonly part: string;
  readonly feature: string;
  readonly state: string;
  readonly bias: number;
}

type SpokenFor = number | "telling" | `part ${string}`;

/** The learnt words of a handbook, by word. */
export interface Ears {
  readonly states: readonly KnownState[];
  readonly tellingBias: number;
  /** By part. */
  readonly partBias: ReadonlyMap<string, number>;
  /** What each word speaks for, with its weight: a place in `states`, any state at all, a part. */
  readonly byWord: ReadonlyMap<string, readonly (readonly [SpokenFor, number])[]>;
}

export interface HeardState {
  readonly part: string;
  readonly feature: string;
  readonly state: string;
  /** Its place in `Ears.states`. */
  readonly index: number;
  /** Nats; 0 is even odds. */
  readonly odds: number;
}

export interface HeardSentence extends Sentence {
  /** The parts its clauses speak of. */
  readonly parts: ReadonlySet<string>;
  /** Nats for its telling any state. */
  readonly telling: number;
  /** The states of the parts it speaks of, likeliest first. */
  readonly states: readonly HeardState[];
}

/** Linear in the weights. */
export function compileEars(learnt: LearntWords): Ears {
  const states: KnownState[] = [];
  const byPlace: (readonly [SpokenFor, number])[][] = learnt.words.map(() => []);
  const add = (speaksFor: SpokenFor, { weights }: Ear): void =>
    eachWeight(weights, (word, weight) => byPlace[word]?.push([speaksFor, weight]));
  add("telling", learnt.telling);
  for (const [part, ear] of Object.entries(learnt.spokenOf)) add(`part ${part}`, ear);
  for (const [part, features] of Object.entries(learnt.parts)) {
    for (const [feature, ears] of Object.entries(features)) {
      for (const [state, ear] of Object.entries(ears)) {
        add(states.length, ear);
        states.push({ part, feature, state, bias: ear.bias });
      }
    }
  }
  return {
    states,
    tellingBias: learnt.telling.bias,
    partBias: new Map(Object.entries(learnt.spokenOf).map(([part, { bias }]) => [part, bias])),
    byWord: new Map(learnt.words.map((word, at) => [word, byPlace[at] ?? []])),
  };
}

/** Kept by the tokens of a message, which every view of it shares. */
const known = new WeakMap<MessageView["tokens"], readonly HeardSentence[]>();

/** What is heard in each sentence; none where the handbook has no learnt words. Linear in the words times the states they speak for. */
export function hear(view: MessageView): readonly HeardSentence[] {
  const { ears } = view.lexicon;
  if (ears === undefined) return [];
  const before = known.get(view.tokens);
  if (before !== undefined) return before;
  const heard = sentencesOf(view).map((sentence) => heardIn(sentence, partsOf(view, sentence), ears));
  known.set(view.tokens, heard);
  return heard;
}

/** The parts that the clauses of a sentence speak of. */
export function partsOf(
  { partOf }: Pick<MessageView, "partOf">,
  { first, last }: Sentence,
): ReadonlySet<string> {
  return new Set(partOf.slice(first, last + 1).filter((part) => part !== undefined));
}

function heardIn(sentence: Sentence, parts: ReadonlySet<string>, ears: Ears): HeardSentence {
  const sums = sumsOf(sentence.grams.keys(), ears);
  const states = ears.states
    .flatMap(({ bias, ...state }, index) =>
      parts.has(state.part) ? [{ ...state, index, odds: bias + (sums.get(index) ?? 0) }] : [],
    )
    .sort((one, other) => other.odds - one.odds || one.index - other.index);
  return { ...sentence, parts, telling: ears.tellingBias + (sums.get("telling") ?? 0), states };
}

function sumsOf(grams: Iterable<string>, ears: Ears): ReadonlyMap<SpokenFor, number> {
  const sums = new Map<SpokenFor, number>();
  for (const gram of grams) {
    for (const [at, weight] of ears.byWord.get(gram) ?? []) sums.set(at, (sums.get(at) ?? 0) + weight);
  }
  return sums;
}

/** Nats for each part's being spoken of in each sentence, if the sentence tells of any. */
export function hearParts(
  spoken: Spoken,
  ears: Ears,
): readonly { readonly sentence: Sentence; readonly odds: ReadonlyMap<string, number> }[] {
  return sentencesOf(spoken).map((sentence) => {
    const sums = sumsOf(sentence.grams.keys(), ears);
    const odds = new Map(
      [...ears.partBias].map(([part, bias]) => [part, bias + (sums.get(`part ${part}`) ?? 0)]),
    );
    return { sentence, odds };
  });
}

export interface Speaking {
  readonly place: number;
  /** Nats. */
  readonly weight: number;
}

/** Places of the words that speak for a state in a sentence, with what each adds. */
export function speakingFor(ears: Ears, sentence: Sentence, index: number): readonly Speaking[] {
  return [...sentence.grams].flatMap(([gram, place]) => {
    const weight = ears.byWord.get(gram)?.find(([at]) => at === index)?.[1] ?? 0;
    return place >= 0 && weight > 0 ? [{ place, weight }] : [];
  });
}
