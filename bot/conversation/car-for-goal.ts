/** The car as the identification is to see it, which depends on what is asked. */
import type { CarDescription } from "../../knowledge/index.ts";
import type { CaseFacts } from "./case.ts";

/** A loose part that is wanted for a dated car is judged as a part that replaced the car's own. */
export function carForGoal(facts: CaseFacts): CarDescription {
  const { isLoosePart, ...car } = facts.car;
  const isForCar = facts.goal === "right-for-car" || facts.goal === "what-should-it-have";
  if (isLoosePart !== true || !isForCar || car.built === undefined) return facts.car;
  return { ...car, grade: "known-replaced" };
}
