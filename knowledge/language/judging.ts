// What the judge goes by: a bias and a weight for each ground, one table for states whose words were learnt and one for the
// others. It travels with the lexicon, so that tests can read with weights learnt from others than the writer they read.
import { groundNames } from "./grounds.ts";
import { heardWeights, type JudgeWeights, plainWeights } from "./judge-weights.ts";

export interface JudgeTable {
  readonly bias: number;
  /** One for each ground, in the order of the grounds. */
  readonly weights: readonly number[];
}

export interface Judging {
  readonly plain: JudgeTable;
  readonly heard: JudgeTable;
}

/** What was learnt from all development messages. */
export const learntJudging: Judging = { plain: tableOf(plainWeights), heard: tableOf(heardWeights) };

function tableOf({ bias, weights }: JudgeWeights): JudgeTable {
  return { bias, weights: groundNames.map((name) => weights[name] ?? 0) };
}
