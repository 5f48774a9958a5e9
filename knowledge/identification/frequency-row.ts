/**
 * From the words and counts of a handbook to the distribution of one feature's states on one variant. Words become
 * pseudo-counts and not fixed shares, so that real parts looked at can overrule a historian's "usually".
 */
import { parseFrequency } from "../handbook/frequency.ts";

/** Never 0, never 1: this much of every distribution is spread evenly over the states. */
const EVEN_PART = 0.01;
/** A state that no word names keeps at least this share. */
const LEAST_SHARE = 0.01;
/** What a silent handbook is worth, in parts looked at, over all states. */
const SILENT_WORTH = 2;

/** Frequency texts by state; a claim also names its sources, and whatever is no state of the feature is passed over. */
export type Claimed = Readonly<Record<string, unknown>>;

/**
 * Pseudo-counts α of the states from the frequency texts of one claim (identification method, section 2):
 * words give α = worth · mean ÷ Σ mean, with the larger worth when two stand in one row; counts are added to that,
 * or to 1/K each where there is no word. What a count leaves over goes evenly to the states not counted.
 * `claimed`: state id to frequency text; names that are no state, and an undefined claim, are silence: 2/K each.
 */
export function pseudoCounts(states: readonly string[], claimed: Claimed | undefined): Float64Array {
  const size = states.length;
  const frequencies = states.map((state) => {
    const text = claimed && Object.hasOwn(claimed, state) ? claimed[state] : undefined;
    return typeof text === "string" ? parseFrequency(text) : undefined;
  });
  if (frequencies.every((frequency) => frequency === undefined)) {
    return new Float64Array(size).fill(SILENT_WORTH / size);
  }
  const words = frequencies.map((frequency) => frequency?.word);
  const counts = frequencies.map((frequency) => frequency?.count);
  const alphas = words.some((word) => word !== undefined)
    ? wordCounts(words)
    : new Float64Array(size).fill(1 / size);
  addCounts(alphas, counts);
  return alphas;
}

function wordCounts(words: readonly ({ mean: number; worth: number } | undefined)[]): Float64Array {
  const worth = Math.max(...words.map((word) => word?.worth ?? 0));
  const named = words.reduce((sum, word) => sum + (word?.mean ?? 0), 0);
  const silent = words.filter((word) => word === undefined).length;
  const rest = silent > 0 ? Math.max(LEAST_SHARE, Math.max(0, 1 - named) / silent) : 0;
  const shares = words.map((word) => word?.mean ?? rest);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return Float64Array.from(shares, (share) => (worth * share) / total);
}

function addCounts(
  alphas: Float64Array,
  counts: readonly ({ seen: number; of: number } | undefined)[],
): void {
  const seen = counts.reduce((sum, count) => sum + (count?.seen ?? 0), 0);
  const of = Math.max(0, ...counts.map((count) => count?.of ?? 0));
  const uncounted = counts.filter((count) => count === undefined).length;
  const left = uncounted > 0 ? Math.max(0, of - seen) / uncounted : 0;
  counts.forEach((count, state) => {
    alphas[state] = (alphas[state] as number) + (count?.seen ?? left);
  });
}

/** θ_s = .99 · α_s ÷ Σα + .01 ÷ K: the shares that pseudo-counts stand for, kept away from 0 and 1. */
export function sharesOf(alphas: Float64Array): Float64Array {
  const total = alphas.reduce((sum, alpha) => sum + alpha, 0);
  return alphas.map((alpha) => ((1 - EVEN_PART) * alpha) / total + EVEN_PART / alphas.length);
}
