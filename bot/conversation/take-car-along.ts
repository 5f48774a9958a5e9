/** The same owner's next case is about the same car, until they say otherwise; nobody likes to give a date twice. */
import type { Cars } from "../../knowledge/index.ts";
import { carInWords } from "./apply-car.ts";
import type { Change } from "./change.ts";
import type { CaseChosen } from "./choose-case.ts";
import { asInCase } from "./phrases/understood.ts";
import { understoodItem } from "./understood.ts";
import { areOfOneCar, inheritedCar } from "./which-car.ts";

/** The change with what the case left behind knows of the car and this one does not; shown, so that it can be corrected. */
export function takeCarAlong(cars: Cars, change: Change, chosen: CaseChosen, person: string): Change {
  const { before, hasSwitched, isOfOtherCar } = chosen;
  const { facts, kept } = change;
  const isSame = before?.handbook === kept.handbook && kept.owner === person && areOfOneCar(before, kept);
  if (before === undefined || !hasSwitched || isOfOtherCar || !isSame || facts.car.isLoosePart === true)
    return change;
  const known = inheritedCar(before, person);
  const car = { ...known, ...facts.car };
  const own = carInWords(cars, facts.car);
  const fresh = Object.entries(carInWords(cars, car)).filter(([label]) => !Object.hasOwn(own, label));
  const items = fresh.map(([label, value]) => understoodItem(label, value, [asInCase(before.number)]));
  return { ...change, facts: { ...facts, car }, items: [...change.items, ...items] };
}
