/**
 * Frequency words and counts of a handbook, and the table from word to number that stands here once.
 * Means and worths: rounded between Mosteller & Youtz (1990), "Quantifying probabilistic expressions",
 * Statistical Science 5:2-34 (medians), and Rohrmann, project VQS (2000); "always" is a historian's "all that I saw".
 */

/** `mean`: the share the word stands for; `worth`: how many parts looked at the word weighs as. */
export interface FrequencyWord {
  readonly mean: number;
  readonly worth: number;
}

export const frequencyWords: Readonly<Record<string, FrequencyWord>> = {
  always: { mean: 0.98, worth: 20 },
  "nearly always": { mean: 0.92, worth: 12 },
  usually: { mean: 0.77, worth: 10 },
  often: { mean: 0.65, worth: 10 },
  "about half": { mean: 0.5, worth: 10 },
  sometimes: { mean: 0.28, worth: 10 },
  rarely: { mean: 0.08, worth: 12 },
  never: { mean: 0.01, worth: 20 },
};

/** A parsed frequency: a word, a count of parts looked at, or both. */
export interface Frequency {
  readonly word?: FrequencyWord;
  readonly count?: { readonly seen: number; readonly of: number };
}

const countPattern = /^(\d{1,5}) of (\d{1,5})$/;

/** Reads `usually`, `17 of 20` or `usually, 17 of 20`; undefined when it is none of these or the count exceeds its total. */
export function parseFrequency(text: string): Frequency | undefined {
  const pieces = text.split(",").map((piece) => piece.trim().toLowerCase().replace(/\s+/g, " "));
  if (pieces.length > 2) return undefined;
  const [first = "", second] = pieces;
  if (second === undefined) {
    const word = wordOf(first);
    if (word) return { word };
    const count = countOf(first);
    return count && { count };
  }
  const word = wordOf(first);
  const count = countOf(second);
  return word && count ? { word, count } : undefined;
}

function wordOf(text: string): FrequencyWord | undefined {
  return Object.hasOwn(frequencyWords, text) ? frequencyWords[text] : undefined;
}

function countOf(text: string): { seen: number; of: number } | undefined {
  const match = countPattern.exec(text);
  if (!match) return undefined;
  const seen = Number(match[1]);
  const of = Number(match[2]);
  return of > 0 && seen <= of ? { seen, of } : undefined;
}
