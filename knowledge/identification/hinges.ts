/** Facts on which the answer hangs: without one of them another class would stand first. */
import type { Belief } from "./belief.ts";
import { type Classes, heaviest, overClasses } from "./classes.ts";
import { asIfUntold } from "./without-fact.ts";

/** Features of the facts whose removal changes the first class, in the handbook's order. */
export function hingesOf(belief: Belief, classes: Classes): readonly string[] {
  const first = heaviest(overClasses(classes, belief.probabilities));
  return belief.facts
    .filter((fact) => heaviest(overClasses(classes, asIfUntold(belief, fact).weights)) !== first)
    .map((fact) => fact.feature);
}
