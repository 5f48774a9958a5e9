/** The judge's weights as they follow from the development messages, rounded to two places as they are kept. */
import { groundNames } from "../../knowledge/language/grounds.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import { gradedCandidates } from "./graded-candidates.ts";
import { fitLogistic } from "./logistic-regression.ts";

/** Chosen among 1, 2, 3, 5, 8 by leaving one writer out. */
const ridge = 6;
/** Messages of these writers were set down before the reader had been tried on them; they count twice. */
const unseen: ReadonlySet<string> = new Set(["fir", "gorse"]);

export interface FittedTable {
  readonly bias: number;
  readonly weights: ReadonlyMap<string, number>;
}

/** `leftOut`: a writer whose messages are not used. */
export function fittedTable(lexicon: Lexicon, leftOut?: string): FittedTable {
  const rows = gradedCandidates(lexicon)
    .filter(({ writer }) => writer !== leftOut)
    .map(({ writer, grounds, isRight }) => ({
      values: grounds,
      isRight,
      weight: unseen.has(writer) ? 2 : 1,
    }));
  const [bias = 0, ...weights] = fitLogistic(rows, ridge).map((value) => Math.round(value * 100) / 100 + 0);
  return { bias, weights: new Map(groundNames.map((name, at) => [name, weights[at] ?? 0])) };
}
