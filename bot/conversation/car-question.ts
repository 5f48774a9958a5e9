/**
 * Whether the car's papers are worth a question. The search knows only features of the part, so the car is priced one
 * step ahead in the same coin: how far the expected price of a wrong verdict falls if the answer were known.
 */
import { identify, lambdaOfGoal, parseDateText } from "../../knowledge/index.ts";
import type { Assessed, CarQuestion } from "./assessed.ts";
import { carForGoal } from "./car-for-goal.ts";
import type { CaseFacts } from "./case.ts";
import { trimsOf } from "./say-question.ts";

type Found = Omit<Assessed, "question">;
type Car = CaseFacts["car"];

/** Looking a date or a trim up costs about as much as a few minutes' look. */
const effortOfPapers = 2;

/** Car questions that have no answer yet and were not answered with "cannot tell"; none for a loose part. */
export function unansweredCarQuestions(facts: CaseFacts): readonly CarQuestion[] {
  const { car } = facts;
  const isForCar = facts.goal === "right-for-car" || facts.goal === "what-should-it-have";
  if (car.isLoosePart === true && !isForCar) return [];
  const open: readonly (readonly [CarQuestion, unknown])[] = [
    ["car.built", car.built],
    ["car.trim", car.trim],
    ["car.market", car.market],
  ];
  return open
    .filter(([ask, known]) => known === undefined && !facts.unanswerable.includes(ask))
    .map(([ask]) => ask);
}

/**
 * λ·(e now − Σ share·e after) − effort, in looks from outside, where e = 1 − the first class's probability and the shares
 * are those of the cars built (trims and markets: even). Positive: worth asking.
 */
export function worthOfCarQuestion(found: Found, ask: CarQuestion): number {
  const answers = possibleCars(found, ask);
  if (answers.length < 2) return -effortOfPapers;
  const total = answers.reduce((sum, { share }) => sum + share, 0);
  const after = answers.reduce((sum, { car, share }) => sum + share * errorFor(found, car), 0) / total;
  return lambdaOfGoal[found.goal] * (errorOf(found.identification.classes) - after) - effortOfPapers;
}

function errorFor({ compiled, facts, goal }: Found, car: Car): number {
  const known = carForGoal({ ...facts, car });
  return errorOf(identify(compiled, { car: known, goal, reports: facts.reports }).classes);
}

function errorOf(classes: readonly { readonly probability: number }[]): number {
  return 1 - classes.reduce((most, { probability }) => Math.max(most, probability), 0);
}

interface PossibleCar {
  readonly car: Car;
  readonly share: number;
}

function possibleCars({ compiled, facts }: Found, ask: CarQuestion): readonly PossibleCar[] {
  const { cars } = compiled.handbook;
  const { car } = facts;
  if (ask === "car.built") {
    return Object.entries(cars.production).flatMap(([year, share]) => {
      const built = parseDateText(year);
      return built === undefined || share <= 0 ? [] : [{ car: { ...car, built }, share }];
    });
  }
  if (ask === "car.trim") {
    return trimsOf(cars, car.model)
      .filter((trim) => isSoldThen(trim, car))
      .map((trim) => ({ car: { ...car, trim: trim.id }, share: 1 }));
  }
  if (ask === "car.market") return cars.markets.map((market) => ({ car: { ...car, market: market.id }, share: 1 }));
  return cars.models.map((model) => ({ car: { ...car, model: model.id }, share: 1 }));
}

function isSoldThen(trim: { readonly from: string; readonly to: string }, car: Car): boolean {
  const from = parseDateText(trim.from);
  const to = parseDateText(trim.to);
  if (car.built === undefined || from === undefined || to === undefined) return true;
  return car.built.to > from.from && car.built.from < to.to;
}
