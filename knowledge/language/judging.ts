// What the judge goes by: a bias and a weight for each ground, for candidates and for whole messages; one table each for states
// whose words were learnt and one for the others. It travels with the lexicon, so that tests can read with weights learnt from
// others than the writer they read.
import { groundNames } from "./grounds.ts";
import { heardWeights, type JudgeWeights, plainWeights } from "./judge-weights.ts";
import { messageGroundNames } from "./message-grounds.ts";
import { heardMessageWeights, plainMessageWeights } from "./message-weights.ts";

export interface JudgeTable {
  readonly bias: number;
  /** One for each ground, in the order of the grounds. */
  readonly weights: readonly number[];
}

export interface Judging {
  readonly plain: JudgeTable;
  readonly heard: JudgeTable;
  readonly plainMessages: JudgeTable;
  readonly heardMessages: JudgeTable;
}

/** What was learnt from all development messages. */
export const learntJudging: Judging = {
  plain: tableOf(groundNames, plainWeights),
  heard: tableOf(groundNames, heardWeights),
  plainMessages: tableOf(messageGroundNames, plainMessageWeights),
  heardMessages: tableOf(messageGroundNames, heardMessageWeights),
};

function tableOf<Name extends string>(
  names: readonly Name[],
  { bias, weights }: JudgeWeights<Name>,
): JudgeTable {
  return { bias, weights: names.map((name) => weights[name]) };
}
