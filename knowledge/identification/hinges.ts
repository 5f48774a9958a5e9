/** Facts on which the answer hangs: without one of them another class would stand first. */
import { type Belief, jointUntold } from "./belief.ts";
import { type Classes, heaviest, overClasses } from "./classes.ts";

/** Features of the facts whose removal changes the first class, in the handbook's order. */
export function hingesOf(belief: Belief, classes: Classes): readonly string[] {
  const first = heaviest(overClasses(classes, belief.probabilities));
  return belief.facts
    .filter((fact) => firstOf(classes, jointUntold(belief, fact)) !== first)
    .map((fact) => fact.feature);
}

/** The heaviest class of logarithms up to a common constant: no need to make them sum to one. */
function firstOf(classes: Classes, joint: Float64Array): number {
  const greatest = joint[heaviest(joint)] as number;
  const weights = new Float64Array(joint.length);
  for (let h = 0; h < joint.length; h += 1) weights[h] = Math.exp((joint[h] as number) - greatest);
  return heaviest(overClasses(classes, weights));
}
