// The learnt words of a handbook made ready for hearing: of each word what it speaks for, in flat arrays, because the words of
// a whole handbook stand between the first message and its answer.
import type { Ear, LearntWords } from "../../handbook/schema.ts";
import { eachWeight } from "./weights-of-ear.ts";

export interface KnownState {
  readonly part: string;
  readonly feature: string;
  readonly state: string;
}

/** What words may speak for stands in one row: the states in the handbook's order, telling anything at all, the parts. */
export interface Ears {
  readonly states: readonly KnownState[];
  /** Where the states of a part stand: from, and up to but not with. */
  readonly statesOf: ReadonlyMap<string, readonly [number, number]>;
  /** The parts whose sentences were learnt; those that are none stand for no part. */
  readonly parts: readonly string[];
  /** Nats before any word is said, by place in the row. */
  readonly biases: Float64Array;
  readonly wordAt: ReadonlyMap<string, number>;
  /** Word w speaks for the places `speaksFor[starts[w]] … speaksFor[starts[w + 1] − 1]`, with the weights beside them, nats. */
  readonly starts: Int32Array;
  readonly speaksFor: Int32Array;
  readonly weights: Float64Array;
}

/** Linear in the weights; one whose word is not listed is passed over. */
export function compileEars({ words, telling, spokenOf, parts }: LearntWords): Ears {
  const states: KnownState[] = [];
  const statesOf = new Map<string, readonly [number, number]>();
  const row: Ear[] = [];
  for (const [part, features] of Object.entries(parts)) {
    const from = states.length;
    for (const [feature, ears] of Object.entries(features)) {
      for (const [state, ear] of Object.entries(ears)) {
        states.push({ part, feature, state });
        row.push(ear);
      }
    }
    statesOf.set(part, [from, states.length]);
  }
  row.push(telling, ...Object.values(spokenOf));
  return {
    states,
    statesOf,
    parts: Object.keys(spokenOf),
    biases: Float64Array.from(row, ({ bias }) => bias),
    wordAt: new Map(words.map((word, at) => [word, at])),
    ...byWord(row, words.length),
  };
}

function byWord(row: readonly Ear[], size: number): Pick<Ears, "starts" | "speaksFor" | "weights"> {
  const starts = new Int32Array(size + 1);
  for (const { weights } of row) {
    eachWeight(weights, (word) => {
      if (word < size) starts[word + 1] = (starts[word + 1] as number) + 1;
    });
  }
  for (let word = 0; word < size; word += 1) {
    starts[word + 1] = (starts[word + 1] as number) + (starts[word] as number);
  }
  const free = starts.slice();
  const speaksFor = new Int32Array(starts[size] as number);
  const weights = new Float64Array(speaksFor.length);
  row.forEach((ear, place) => {
    eachWeight(ear.weights, (word, weight) => {
      if (word >= size) return;
      const at = free[word] as number;
      free[word] = at + 1;
      speaksFor[at] = place;
      weights[at] = weight;
    });
  });
  return { starts, speaksFor, weights };
}

/** Nats for each place of the row when these grams are said: its bias and the weights of the grams, added in their order. */
export function oddsOf(
  grams: Iterable<string>,
  { biases, wordAt, starts, speaksFor, weights }: Ears,
): Float64Array {
  const sums = new Float64Array(biases.length);
  for (const gram of grams) {
    const word = wordAt.get(gram);
    if (word === undefined) continue;
    for (let at = starts[word] as number; at < (starts[word + 1] as number); at += 1) {
      const place = speaksFor[at] as number;
      sums[place] = (sums[place] as number) + (weights[at] as number);
    }
  }
  return sums.map((sum, place) => (biases[place] as number) + sum);
}

/** With how many nats a gram speaks for a place of the row; 0 where it does not. */
export function weightOf(gram: string, wanted: number, { wordAt, starts, speaksFor, weights }: Ears): number {
  const word = wordAt.get(gram);
  if (word === undefined) return 0;
  for (let at = starts[word] as number; at < (starts[word + 1] as number); at += 1) {
    if (speaksFor[at] === wanted) return weights[at] as number;
  }
  return 0;
}
