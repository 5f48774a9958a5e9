/** Facts on which the answer hangs: without one of them another class would stand first. */
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { type Belief, jointUntold } from "./belief.ts";
import { type Classes, heaviest, overClasses } from "./classes.ts";

/** Features of the facts whose removal changes the first class, in the handbook's order. */
export function hingesOf(belief: Belief, classes: Classes): readonly string[] {
  const firstOf = (probabilities: Float64Array): number => heaviest(overClasses(classes, probabilities));
  const first = firstOf(belief.probabilities);
  return belief.facts
    .filter((fact) => firstOf(normaliseLogarithms(jointUntold(belief, fact))) !== first)
    .map((fact) => fact.feature);
}
