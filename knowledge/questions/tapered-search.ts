// Looks ahead over the answers to come: wide at the root, narrow one question later, then a greedy run to the
// end with the best moment to stop. A full search is hopeless beyond a dozen questions, and an estimate of
// entropy in place of the run overspends: it asks for information that no longer changes the verdict.

import { concentrationAfter, concentrationBefore } from "./search-score.ts";
import type { SearchQuestion, SearchTable } from "./search-table.ts";
import { unresolvedBelief } from "./search-table.ts";

export interface SearchSettings {
  /** How many of the best-scored questions are followed at depth 0, 1, …; the last number holds below. */
  readonly beams: readonly number[];
  /** Branches whose chance × price of stopping is below this many looks are not followed. */
  readonly reachFloor: number;
  /** Products of a belief and a likelihood after which the search gives up: a count, never a clock. */
  readonly budget: number;
}

export interface SearchOutcome {
  /** False when the budget ran out: the values then mean nothing. */
  readonly isComplete: boolean;
  readonly products: number;
  /** Expected price of stopping now. */
  readonly stopValue: number;
  /** By question: expected price of asking it first; absent where it was not followed to the end. */
  readonly values: readonly (number | undefined)[];
}

/** A state of knowledge on the way. */
interface Place {
  /** Belief times the chance of getting here. */
  readonly weights: Float64Array;
  readonly mass: number;
  /** Bit q is set while question q may be asked. */
  readonly open: number;
  /** Number that names what was told: one digit a question. */
  readonly vector: number;
  readonly depth: number;
  /** Price of stopping here, and the least any course from here can cost; both times mass. */
  readonly stop: number;
  readonly least: number;
}

interface Remembered {
  readonly value: number;
  readonly mass: number;
}

interface Search {
  readonly table: SearchTable;
  readonly settings: SearchSettings;
  /** What one step of a question's digit adds to a vector. */
  readonly digits: readonly number[];
  /** One memory per beam level: a value found with a wider beam is a different number. */
  readonly memories: readonly Map<number, Remembered>[];
  /** Beliefs at each depth, reused from branch to branch. */
  readonly beliefs: Float64Array[][];
  products: number;
}

/** Less gain than this is rounding. */
const USELESS_GAIN = 1e-12;
/** A remembered value serves again where the branch is reached at most this much more often. */
const REACH_TO_REUSE = 0.3;

/**
 * Whether questions with these numbers of answers fit one search: at most 30, and every vector of answers,
 * with "open" and "cannot tell" as two more, has a number of its own below 2^53.
 */
export function isSearchable(answerCounts: readonly number[]): boolean {
  return (
    answerCounts.length <= 30 && answerCounts.reduce((product, count) => product * (count + 2), 1) <= 2 ** 53
  );
}

function digitValues(answerCounts: readonly number[]): readonly number[] {
  let next = 1;
  return answerCounts.map((count) => {
    const own = next;
    next *= count + 2;
    return own;
  });
}

function lowestBit(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}

/**
 * The `width` best questions by gain on `ends` ÷ effective cost, best first, of those cheaper than stopping. No answer can
 * concentrate more than certainty does: once even that gain would be too dear, the questions left, dearer still, are not scored.
 */
function bestScored(search: Search, place: Place, ends: Int32Array, width: number, worth: number): number[] {
  const { table } = search;
  const best: number[] = [];
  const scores: number[] = [];
  const before = concentrationBefore(table, place.weights, ends);
  const mostGain = place.mass - before;
  for (let rest = place.open; rest !== 0; rest &= rest - 1) {
    const index = lowestBit(rest);
    const question = table.questions[index] as SearchQuestion;
    if (question.effectiveCost >= worth) break;
    if (best.length === width && mostGain / question.effectiveCost <= (scores[width - 1] as number)) break;
    search.products += question.answerCount * place.weights.length;
    const gain = concentrationAfter(question, place.weights, ends) - before;
    if (gain < USELESS_GAIN * place.mass) continue;
    const score = gain / question.effectiveCost;
    let rank = best.length;
    while (rank > 0 && score > (scores[rank - 1] as number)) rank -= 1;
    if (rank >= width) continue;
    best.splice(rank, 0, index);
    scores.splice(rank, 0, score);
    best.length = Math.min(best.length, width);
    scores.length = best.length;
  }
  return best;
}

/**
 * The questions to follow here. Where no single answer moves the classes, two together still may (exclusive-or):
 * then those that tell hypotheses apart are followed.
 */
function candidates(search: Search, place: Place, stop: number): readonly number[] {
  const { beams } = search.settings;
  const width = beams[Math.min(place.depth, beams.length - 1)] as number;
  const { classEnds, singleEnds } = search.table;
  const worth = stop / place.mass;
  const byClass = bestScored(search, place, classEnds, width, worth);
  if (byClass.length > 0 || classEnds.length === singleEnds.length) return byClass;
  return bestScored(search, place, singleEnds, width, worth);
}

/** The place reached by an answer, or by "cannot tell" (`answer` −1); its beliefs hold until the next call at that depth. */
function reach(search: Search, place: Place, index: number, answer: number): Place {
  const question = search.table.questions[index] as SearchQuestion;
  const depth = place.depth + 1;
  const buffers = search.beliefs[depth] ?? [];
  search.beliefs[depth] = buffers;
  const weights = buffers[answer + 1] ?? new Float64Array(place.weights.length);
  buffers[answer + 1] = weights;
  const chances = answer < 0 ? search.table.certain : question.likelihood;
  const row = Math.max(0, answer) * weights.length;
  const told = answer < 0 ? question.cannotTell : 1 - question.cannotTell;
  let mass = 0;
  for (let hypothesis = 0; hypothesis < weights.length; hypothesis += 1) {
    const joint = told * (place.weights[hypothesis] as number) * (chances[row + hypothesis] as number);
    weights[hypothesis] = joint;
    mass += joint;
  }
  const vector = place.vector + (answer + 2) * (search.digits[index] as number);
  const open = place.open & ~(1 << index);
  const stop = search.table.lambda * unresolvedBelief(weights, search.table.classEnds);
  const cheapest =
    open === 0 || stop < search.settings.reachFloor ? undefined : search.table.questions[lowestBit(open)];
  const least = cheapest === undefined ? stop : Math.min(stop, cheapest.effectiveCost * mass);
  return { weights, mass, open, vector, depth, stop, least };
}

/**
 * Price of asking one question here and going on as well as the search can; at least `bound` if it gives up.
 * Every branch first counts with the least it can cost, then, one by one, with what the search finds.
 */
function askingPrice(search: Search, place: Place, index: number, bound: number): number {
  const question = search.table.questions[index] as SearchQuestion;
  const branches: Place[] = [];
  let price = question.cost * place.mass;
  for (let answer = -1; answer < question.answerCount; answer += 1) {
    const branch = reach(search, place, index, answer);
    if (branch.mass <= 0) continue;
    price += branch.least;
    if (branch.least < branch.stop) branches.push(branch);
  }
  for (const branch of branches) {
    if (price >= bound) return price;
    const others = price - branch.least;
    const own = priceFrom(search, branch, bound - others);
    if (own >= bound - others) return bound;
    price = others + own;
  }
  return price;
}

/** Expected price from here on, times the chance of getting here; at least `bound` if it gives up. */
function priceFrom(search: Search, place: Place, bound: number): number {
  const { settings, memories } = search;
  if (search.products > settings.budget) return place.stop;
  const memory = memories[Math.min(place.depth, memories.length - 1)] as Map<number, Remembered>;
  const known = memory.get(place.vector);
  if (known !== undefined && known.mass >= REACH_TO_REUSE * place.mass) return known.value * place.mass;
  let best = Math.min(place.stop, bound);
  for (const index of candidates(search, place, best)) {
    best = Math.min(best, askingPrice(search, place, index, best));
  }
  if (best < bound || place.stop <= bound)
    memory.set(place.vector, { value: best / place.mass, mass: place.mass });
  return best;
}

/**
 * Expected prices of stopping now and of asking the best-scored questions first, in looks from outside:
 * V = min(S, min_q c_q + P(cannot tell)·V_without_q + Σ_a P(a)·V_a), S = λ·(1 − max_c P(c)); a question is left
 * once its partial sum reaches the best so far. Questions dearer than S can never be worth asking: waiting for
 * an answer costs c ÷ (1 − cannot tell) or an error. Questions must satisfy `isSearchable`.
 */
export function taperedSearch(table: SearchTable, settings: SearchSettings): SearchOutcome {
  const search: Search = {
    table,
    settings,
    digits: digitValues(table.questions.map((question) => question.answerCount)),
    memories: settings.beams.map(() => new Map()),
    beliefs: [],
    products: 0,
  };
  const { weights } = table;
  const mass = weights.reduce((sum, weight) => sum + weight, 0);
  const stop = table.lambda * unresolvedBelief(weights, table.classEnds);
  const open = 2 ** table.questions.length - 1;
  const root: Place = { weights, mass, open, vector: 0, depth: 0, stop, least: 0 };
  const values: (number | undefined)[] = table.questions.map(() => undefined);
  let best = Number.POSITIVE_INFINITY;
  for (const index of candidates(search, root, stop)) {
    const price = askingPrice(search, root, index, best);
    if (price < best) values[index] = price / mass;
    best = Math.min(best, price);
  }
  return {
    isComplete: search.products <= settings.budget,
    products: search.products,
    stopValue: mass > 0 ? stop / mass : 0,
    values,
  };
}
