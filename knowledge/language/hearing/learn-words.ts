/**
 * Learns the words that owners use of each state from annotated messages: one logistic model for a state over the words of
 * sentences, by stochastic gradient steps scaled as in Duchi, Hazan and Singer, "Adaptive subgradient methods", JMLR 12 (2011),
 * 2121-2159. No draws: the rows are taken in a fixed shuffled order, so the same messages give the same words.
 */
import type { Interval } from "../../calendar/interval.ts";
import type { Ear, LearntWords } from "../../handbook/schema.ts";
import { cleanText } from "../clean-text.ts";
import { gatherObservations } from "../gather-observations.ts";
import { layOut } from "../lay-out.ts";
import type { Lexicon } from "../lexicon.ts";
import type { MessageView } from "../message-view.ts";
import { foldedAt, tokenise } from "../tokens.ts";
import { compileEars, type Ears } from "./ears.ts";
import { countedWords, type Sentence, sentencesOf } from "./grams.ts";
import { hear, partsOf, soundedSentences } from "./hearing.ts";

export interface ToldState {
  readonly part: string;
  readonly feature: string;
  readonly state: string;
}

/** A message with the states that its writer told of the part in hand. */
export interface TaughtMessage {
  readonly text: string;
  readonly context?: { readonly part?: string; readonly askedFeature?: string };
  readonly told: readonly ToldState[];
}

interface Row {
  readonly words: Int32Array;
  readonly told: ReadonlySet<string>;
  /** The parts of these states. */
  readonly toldOf: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  readonly weight: number;
}

/** A sentence or a name of the handbook, with the states it tells. */
interface Taught {
  readonly grams: readonly string[];
  readonly told: ReadonlySet<string>;
  /** The parts of these states. */
  readonly toldOf: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  readonly weight: number;
}

export interface PlacedMessage {
  readonly view: MessageView;
  readonly sentences: readonly Sentence[];
  readonly told: readonly ToldState[];
  /** The sentence of each told state; undefined while it is not known. */
  readonly sentenceOf: readonly (number | undefined)[];
}

const rounds = 12;
const step = 0.15;
const decay = 0.0005;
/** Pulls a weight to nothing, so that a word that speaks for little is not kept: the composite steps of the same paper. */
const thrift = 0.005;
const tellingDecay = 0.002;
const startOfState = -4;
const startOfTelling = -0.5;
const startOfPart = -2;
const stepOfBias = 0.02;
/** A name of the handbook is one way of saying it among many. */
const weightOfName = 0.15;
/** A row whose slope is smaller teaches nothing more. */
const leastSlope = 1e-3;
/** A word must stand in so many sentences or names. */
const leastUses = 2;
/** Weights nearer to nothing are left out. */
const leastWeight = 0.2;

const keyOf = ({ part, feature, state }: ToldState): string => `${part} ${feature} ${state}`;

/** The words of all states of the handbook, learnt from the messages. */
export function learnWords(
  lexicon: Lexicon,
  messages: readonly TaughtMessage[],
  today: Interval,
): LearntWords {
  return learnFrom(lexicon, placeMessages(lexicon, messages, today));
}

/** Each message with the sentence of each state it tells; where that is not plain, by a first learning from the others. */
export function placeMessages(
  lexicon: Lexicon,
  messages: readonly TaughtMessage[],
  today: Interval,
): readonly PlacedMessage[] {
  const heard = messages.map((message) => placed(lexicon, message, today));
  const ears = compileEars(learnFrom(lexicon, heard));
  return heard.map((each) => placedByEar(ears, each));
}

function placed(lexicon: Lexicon, { text, context, told }: TaughtMessage, today: Interval): PlacedMessage {
  const plain = { ...lexicon, ears: undefined };
  const { view } = layOut(text, plain, { today, ...context });
  const sentences = sentencesOf(view);
  const { candidates } = gatherObservations(view);
  const sentenceOf = told.map((state) => {
    const found = candidates.find(
      (each) =>
        !each.isDenied &&
        each.feature === state.feature &&
        each.state === state.state &&
        (each.part === null || each.part === state.part),
    );
    if (found === undefined) return sentences.length === 1 ? 0 : undefined;
    return sentences.findIndex(({ first, last }) => first <= found.clause && found.clause <= last);
  });
  return { view, sentences, told, sentenceOf };
}

/** Each state that is not placed yet goes where it is heard best, if it is heard at all. */
function placedByEar(ears: Ears, heard: PlacedMessage): PlacedMessage {
  if (heard.sentenceOf.every((each) => each !== undefined)) return heard;
  const sentences = hear(soundedSentences(heard.view, ears), heard.view.partOf, ears);
  const sentenceOf = heard.told.map((state, at) => {
    const known = heard.sentenceOf[at];
    if (known !== undefined) return known;
    const odds = sentences.map(
      ({ states }) => states.find((each) => keyOf(each) === keyOf(state))?.odds ?? Number.NEGATIVE_INFINITY,
    );
    const best = Math.max(...odds);
    return best === Number.NEGATIVE_INFINITY ? undefined : odds.indexOf(best);
  });
  return { ...heard, sentenceOf };
}

/** The words of all states, from messages whose sentences are known. Linear in their words times the states of a part. */
export function learnFrom(lexicon: Lexicon, heard: readonly PlacedMessage[]): LearntWords {
  const sentences = heard.flatMap(({ view, sentences: all, told, sentenceOf }) =>
    all.map((sentence, at) => {
      const here = told.filter((_, each) => sentenceOf[each] === at);
      return {
        grams: [...sentence.grams.keys()],
        parts: new Set([...partsOf(view, sentence), ...here.map(({ part }) => part)]),
        told: new Set(here.map(keyOf)),
        toldOf: new Set(here.map(({ part }) => part)),
        weight: 1,
      };
    }),
  );
  const names = namesOf(lexicon);
  const words = wordsOften([...sentences, ...names].map(({ grams }) => grams));
  const placeOfWord = new Map(words.map((word, at) => [word, at]));
  const rowOf = ({ grams, ...rest }: Taught): Row => ({
    ...rest,
    words: Int32Array.from(grams.flatMap((gram) => placeOfWord.get(gram) ?? [])),
  });
  const said = sentences.map(rowOf);
  const rows = [...said, ...names.map(rowOf)];
  const telling = learnEar(
    said.map((row) => ({ ...row, isTold: row.told.size > 0 })),
    words.length,
    startOfTelling,
    tellingDecay,
  );
  const telltale = rows.filter(({ toldOf }) => toldOf.size > 0);
  const whole = heard.map(({ sentences: all, told }) => ({
    ...rowOf({
      grams: [...new Set(all.flatMap(({ grams }) => [...grams.keys()]))],
      told: new Set(),
      toldOf: new Set(),
      parts: new Set(),
      weight: 1,
    }),
    isTold: told.length > 0,
  }));
  const tellingAtAll = learnEar(whole, words.length, startOfTelling, tellingDecay);
  const spokenOf = Object.fromEntries(
    lexicon.handbook.parts.map(({ id }) => {
      const told = telltale.map((row) => ({ ...row, isTold: row.toldOf.has(id) }));
      return [id, learnEar(told, words.length, startOfPart, decay)];
    }),
  );
  const parts: Record<string, Record<string, Record<string, Ear>>> = {};
  for (const part of lexicon.handbook.parts) {
    const own = rows.filter((row) => row.parts.has(part.id));
    const features: Record<string, Record<string, Ear>> = {};
    for (const feature of part.features) {
      if (feature.kind !== "states") continue;
      features[feature.id] = Object.fromEntries(
        feature.states.map((state) => {
          const key = keyOf({ part: part.id, feature: feature.id, state: state.id });
          const told = own.map((row) => ({ ...row, isTold: row.told.has(key) }));
          return [state.id, learnEar(told, words.length, startOfState, decay)];
        }),
      );
    }
    parts[part.id] = features;
  }
  return { messages: heard.length, words, telling, tellingAtAll, spokenOf, parts };
}

/** The names of all states as sentences. */
function namesOf({ handbook }: Lexicon): readonly Taught[] {
  return handbook.parts.flatMap((part) =>
    part.features.flatMap((feature) =>
      feature.kind !== "states"
        ? []
        : feature.states.flatMap((state) =>
            [state.name, ...state.also].map((name) => ({
              grams: gramsOfName(name),
              parts: new Set([part.id]),
              toldOf: new Set([part.id]),
              told: new Set([keyOf({ part: part.id, feature: feature.id, state: state.id })]),
              weight: weightOfName,
            })),
          ),
    ),
  );
}

function gramsOfName(name: string): readonly string[] {
  const tokens = tokenise(cleanText(name).text);
  const counted = countedWords(tokens).filter((word) => word !== undefined);
  const pairs = counted.slice(1).map((word, at) => `${counted[at] ?? ""}+${word}`);
  const neighbours = tokens.slice(1).map(({ folded }, at) => `${foldedAt(tokens, at)}_${folded}`);
  return [...new Set([...counted, ...pairs, ...neighbours])];
}

function wordsOften(grams: readonly (readonly string[])[]): string[] {
  const uses = new Map<string, number>();
  for (const gram of grams.flat()) uses.set(gram, (uses.get(gram) ?? 0) + 1);
  return [...uses].filter(([, times]) => times >= leastUses).map(([gram]) => gram);
}

/** A prime that no number of rows is likely to share a divisor with: the rows are taken that far apart. */
const stride = 7919;

function learnEar(
  rows: readonly (Row & { readonly isTold: boolean })[],
  size: number,
  start: number,
  pull: number,
): Ear {
  const ear = { weights: new Float64Array(size), squares: new Float64Array(size).fill(0.1), bias: start };
  for (let round = 0; round < rounds; round += 1) {
    for (let turn = 0; turn < rows.length; turn += 1) {
      const row = rows[(turn * stride + round * 31) % rows.length];
      if (row !== undefined) ear.bias -= stepOfBias * stepBy(row, ear, pull);
    }
  }
  return { bias: Math.round(ear.bias * 100) / 100, weights: writtenDown(ear.weights) };
}

interface Draft {
  readonly weights: Float64Array;
  /** Sums of the squared slopes: a word that has moved much moves less. */
  readonly squares: Float64Array;
  readonly bias: number;
}

/** Moves the weights of the words of one row; returns the slope, 0 when the row is as good as learnt. */
function stepBy(
  row: Row & { readonly isTold: boolean },
  { weights, squares, bias }: Draft,
  pull: number,
): number {
  let odds = bias;
  for (const word of row.words) odds += weights[word] ?? 0;
  const slope = row.weight * (1 / (1 + Math.exp(-odds)) - (row.isTold ? 1 : 0));
  if (Math.abs(slope) < leastSlope) return 0;
  for (const word of row.words) {
    const square = (squares[word] ?? 0) + slope * slope;
    squares[word] = square;
    const weight = weights[word] ?? 0;
    const moved = weight - (step * (slope + pull * weight)) / Math.sqrt(square);
    const far = Math.abs(moved) - (step * thrift) / Math.sqrt(square);
    weights[word] = far > 0 ? Math.sign(moved) * far : 0;
  }
  return slope;
}

function writtenDown(weights: Float64Array): string {
  const kept: number[] = [];
  let last = 0;
  weights.forEach((weight, word) => {
    if (Math.abs(weight) < leastWeight) return;
    kept.push(word - last, Math.round(weight * 100));
    last = word;
  });
  return kept.join(" ");
}
