/**
 * Which of its owner's cars a case is about. Somebody who has told of a second car has cases of both, and what is known of the one must not
 * be taken for the other's.
 */
import type { Case } from "./case.ts";
import type { Conversation } from "./conversation.ts";

/** Which of the owner's cars a case is about, counted from one. */
export function carOf(kept: Case): number {
  return kept.ofCar ?? 1;
}

/** How many cars the person has told of, at least one. */
export function carsOf({ cases }: Conversation, person: string): number {
  return Math.max(1, ...cases.filter(({ owner }) => owner === person).map(carOf));
}

/** The case as being about that one of its owner's cars. */
export function ofCar(kept: Case, car: number): Case {
  return car === 1 ? kept : { ...kept, ofCar: car };
}

/** Whether both are the same person's, about the same of their cars. */
export function areOfOneCar(one: Case, other: Case): boolean {
  return one.owner === other.owner && carOf(one) === carOf(other);
}

/** The car that a person's other case may be about too: its own words on the part's history stay behind. */
export function inheritedCar(kept: Case, person: string): Case["facts"]["car"] {
  if (kept.owner !== person || kept.facts.car.isLoosePart === true) return {};
  const { grade: _, ...car } = kept.facts.car;
  return car;
}
