/** Findings about the car become its description. Only the owner of a case describes its car. */
import type { CarDescription, CarFinding, Cars } from "../../knowledge/index.ts";
import { formatInterval } from "../../knowledge/index.ts";
import type { CaseFacts } from "./case.ts";
import { atOdds } from "./made-then.ts";
import {
  byItsNumber,
  carLabels,
  carOfLoosePart,
  historyWords,
  loosePartValue,
  notYourCar,
  replacedEarlier,
  serialMasked,
} from "./phrases/understood.ts";
import type { Speaker } from "./speaker.ts";
import { type UnderstoodItem, understoodItem } from "./understood.ts";

export interface CarApplied {
  readonly facts: CaseFacts;
  readonly items: readonly UnderstoodItem[];
  readonly remarks: readonly string[];
}

/** The case's facts with what was said of the car, later words over earlier ones. */
export function applyCar(
  cars: Cars,
  facts: CaseFacts,
  findings: readonly CarFinding[],
  speaker: Speaker,
): CarApplied {
  if (findings.length === 0) return { facts, items: [], remarks: [] };
  if (!speaker.isOwner) return { facts, items: [], remarks: [notYourCar] };
  const car = describedCar(facts.car, findings);
  return {
    facts: { ...facts, car },
    items: itemsOf(cars, facts.car, findings),
    remarks: [
      ...(findings.some((finding) => finding.about === "serial") ? [serialMasked] : []),
      ...atOdds(cars, car).filter((odd) => !atOdds(cars, facts.car).includes(odd)),
      ...(isOfNoUse(facts, findings) ? [carOfLoosePart] : []),
    ],
  };
}

/** The car does not bear on which kind a loose part is, nor on whether it is genuine. */
function isOfNoUse({ car, goal }: CaseFacts, findings: readonly CarFinding[]): boolean {
  const isAsked = goal === "which-variant" || goal === "genuine";
  return car.isLoosePart === true && isAsked && findings.some(({ about }) => about !== "loose-part");
}

// One number may be read twice, whole and as the maker's serial within it.
function isShown(finding: CarFinding, index: number, findings: readonly CarFinding[]): boolean {
  return finding.about !== "serial" || findings.findIndex((one) => one.about === "serial") === index;
}

/** What was taken, each beside what stood in its place before; a number that dates the car says so. */
function itemsOf(
  cars: Cars,
  before: CarDescription,
  findings: readonly CarFinding[],
): readonly UnderstoodItem[] {
  const known = carInWords(cars, before);
  const after = describedCar(before, findings);
  const byNumber =
    after.built !== before.built && !findings.some(({ about }) => about === "built" || about === "model-year")
      ? after.built
      : undefined;
  return [
    ...findings.filter(isShown).map((finding) => carItem(cars, finding, known)),
    ...(byNumber === undefined
      ? []
      : [understoodItem(carLabels.built, formatInterval(byNumber), [byItsNumber])]),
  ];
}

/** The car with what was said of it, later words over earlier ones. */
export function describedCar(car: CarDescription, findings: readonly CarFinding[]): CarDescription {
  // An exact date said in the same breath as a model year or a serial is the better one: it comes last.
  return [...findings].sort((one, other) => rank(one) - rank(other)).reduce(withFinding, car);
}

function rank(finding: CarFinding): number {
  if (finding.about === "serial") return 0;
  if (finding.about === "model-year") return 1;
  return finding.about === "built" ? 2 : 3;
}

function withFinding(car: CarDescription, finding: CarFinding): CarDescription {
  switch (finding.about) {
    case "model":
      return { ...car, model: finding.id };
    case "trim":
      return { ...car, trim: finding.id };
    case "market":
      return { ...car, market: finding.id };
    case "built":
      return { ...withoutModelYear(car), built: finding.interval };
    case "model-year":
      return { ...car, modelYear: finding.year, built: finding.interval };
    case "grade":
      return { ...car, grade: finding.grade };
    case "loose-part":
      return { ...car, isLoosePart: true };
    case "serial":
      return {
        ...car,
        maskedSerial: finding.masked,
        ...(finding.digest === undefined ? {} : { serialDigest: finding.digest }),
        ...(finding.interval === undefined || car.built !== undefined ? {} : { built: finding.interval }),
      };
  }
}

function withoutModelYear(car: CarDescription): CarDescription {
  const { modelYear: _, ...rest } = car;
  return rest;
}

function carItem(cars: Cars, finding: CarFinding, known: Readonly<Record<string, string>>): UnderstoodItem {
  const item = (label: string, value: string, key: string) => {
    const was = known[key];
    return understoodItem(label, value, [
      was === undefined || was === value ? undefined : replacedEarlier(was),
    ]);
  };
  switch (finding.about) {
    case "model":
      return item(carLabels.model, nameIn(cars.models, finding.id), "model");
    case "trim":
      return item(carLabels.trim, nameIn(cars.trims, finding.id), "trim");
    case "market":
      return item(carLabels.market, nameIn(cars.markets, finding.id), "market");
    case "built":
      return item(carLabels.built, formatInterval(finding.interval), "built");
    case "model-year":
      return item(carLabels.modelYear, String(finding.year), "model year");
    case "grade":
      return item(carLabels.grade, historyWords(finding.grade), "history");
    case "loose-part":
      return understoodItem(carLabels.loose, loosePartValue);
    case "serial":
      return item(carLabels.serial, finding.masked, "serial");
  }
}

function nameIn(named: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return named.find((one) => one.id === id)?.name ?? id;
}

/** The car in words, by label; what is unknown is left out. */
export function carInWords(cars: Cars, car: CarDescription): Readonly<Record<string, string>> {
  return {
    ...(car.model === undefined ? {} : { model: nameIn(cars.models, car.model) }),
    ...(car.trim === undefined ? {} : { trim: nameIn(cars.trims, car.trim) }),
    ...(car.market === undefined ? {} : { market: nameIn(cars.markets, car.market) }),
    ...(car.built === undefined ? {} : { built: formatInterval(car.built) }),
    ...(car.modelYear === undefined ? {} : { "model year": String(car.modelYear) }),
    ...(car.grade === undefined ? {} : { history: historyWords(car.grade) }),
    ...(car.maskedSerial === undefined ? {} : { serial: car.maskedSerial }),
    ...(car.isLoosePart === true ? { [carLabels.loose]: loosePartValue } : {}),
  };
}
