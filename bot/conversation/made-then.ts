/** What was made on the day a car was built: a date that leaves one model needs no question, and one that leaves none is a slip. */
import {
  type CarDescription,
  type Cars,
  formatInterval,
  type Interval,
  parseDateText,
} from "../../knowledge/index.ts";
import type { CarQuestion } from "./assessed.ts";
import { madeAtOtherTimes, noTrimOfModel } from "./phrases/understood.ts";

interface Made {
  readonly from: string;
  readonly to: string;
}

/** Those that were made at some time within `built`; all of them while the date is not known. */
export function madeThen<Thing extends Made>(
  things: readonly Thing[],
  built: Interval | undefined,
): readonly Thing[] {
  return built === undefined ? things : things.filter((thing) => meets(thing, built));
}

/** Questions about the car that its build date answers already. */
export function answeredByDate(cars: Cars, { built }: CarDescription): readonly CarQuestion[] {
  if (built === undefined) return [];
  const models = madeThen(cars.models, built).length === 1 ? (["car.model"] as const) : [];
  const trims = madeThen(cars.trims, built).length === 1 ? (["car.trim"] as const) : [];
  return [...models, ...trims];
}

/** What in the description of a car cannot all be true, a sentence each. */
export function atOdds(cars: Cars, car: CarDescription): readonly string[] {
  const model = cars.models.find(({ id }) => id === car.model);
  const trim = cars.trims.find(({ id }) => id === car.trim);
  const { built } = car;
  const outside = [model, trim].flatMap((thing) => {
    if (thing === undefined || built === undefined || meets(thing, built)) return [];
    const times = spanOf(thing);
    return times === undefined
      ? []
      : [madeAtOtherTimes(thing.name, formatInterval(times), formatInterval(built))];
  });
  const isOfOther =
    model !== undefined && trim !== undefined && trim.models.length > 0 && !trim.models.includes(model.id);
  return isOfOther ? [...outside, noTrimOfModel(trim.name, model.name)] : outside;
}

function meets(thing: Made, built: Interval): boolean {
  const span = spanOf(thing);
  return span === undefined || (span.from < built.to && built.from < span.to);
}

function spanOf({ from, to }: Made): Interval | undefined {
  const first = parseDateText(from);
  const last = parseDateText(to);
  return first && last && { from: first.from, to: last.to };
}
