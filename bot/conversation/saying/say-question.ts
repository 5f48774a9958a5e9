/** The one question of a turn as a block, with what must stand before it: the cause of a second look, the cautions. */
import type { CarDescription, Cars, Feature, Handbook } from "../../../knowledge/index.ts";
import { notThere } from "../../../knowledge/index.ts";
import type { Block, Choice, QuestionBlock } from "../../reply.ts";
import type { CarQuestion, NextQuestion, Reason } from "../assessed.ts";
import type { CaseFacts, OpenQuestion } from "../case.ts";
import { unitQuestionPrefix } from "../doubted-reading.ts";
import { madeThen } from "../made-then.ts";
import {
  besides,
  inUnit,
  isItThisUnit,
  lookAgain,
  measuredWhere,
  no,
  noUnitSaid,
  weighedHow,
  whenBuilt,
  whichMarket,
  whichModel,
  whichPart,
  whichTrim,
  yes,
} from "../phrases/question.ts";
import { isOfMass, sayNumber } from "./say-value.ts";

/** What the case keeps of a question while it waits. */
export function openQuestion(question: NextQuestion | null): OpenQuestion | null {
  if (question === null) return null;
  switch (question.about) {
    case "part":
      return { feature: "part" };
    case "car":
      return { feature: question.ask };
    case "unit":
      return { feature: `${unitQuestionPrefix}${question.feature.id}`, unit: question.unit };
    case "feature":
      return { feature: question.feature.id };
  }
}

export function questionBlock(handbook: Handbook, facts: CaseFacts, question: NextQuestion): QuestionBlock {
  switch (question.about) {
    case "part":
      return partQuestion(handbook);
    case "car":
      return carQuestion(handbook.cars, facts, question.ask);
    case "unit":
      return unitQuestion(question);
    case "feature":
      return featureQuestion(question.feature, question.because);
  }
}

function partQuestion(handbook: Handbook): QuestionBlock {
  return {
    kind: "question",
    feature: "part",
    text: whichPart,
    effort: 1,
    photographDoes: false,
    answers: handbook.parts.map(({ id, name }) => ({ id, label: name, say: name })),
    expects: "choice",
    besides: besides.filter((choice) => choice.id === "cannot-tell"),
  };
}

function carQuestion(cars: Cars, facts: CaseFacts, ask: CarQuestion): QuestionBlock {
  const base = { kind: "question", feature: ask, effort: 1, photographDoes: false, besides } as const;
  switch (ask) {
    case "car.built":
      return { ...base, text: whenBuilt, answers: [], expects: "date" };
    case "car.trim":
      return { ...base, text: whichTrim, answers: named(trimsOf(cars, facts.car)), expects: "choice" };
    case "car.market":
      return { ...base, text: whichMarket, answers: named(cars.markets), expects: "choice" };
    case "car.model":
      return { ...base, text: whichModel, answers: named(cars.models), expects: "choice" };
  }
}

/** Trims made with the model and when the car was built, as far as these are known; all where that leaves none. */
function trimsOf(cars: Cars, { model, built }: CarDescription): Cars["trims"] {
  const then = madeThen(cars.trims, built).filter(
    ({ models }) => model === undefined || models.length === 0 || models.includes(model),
  );
  return then.length === 0 ? cars.trims : then;
}

function named(things: readonly { readonly id: string; readonly name: string }[]): readonly Choice[] {
  return things.map(({ id, name }) => ({ id, label: name, say: name }));
}

function unitQuestion({ feature, unit, said }: Extract<NextQuestion, { about: "unit" }>): QuestionBlock {
  const value = sayNumber(said.value);
  const meant = `${value} ${unit}`;
  return {
    kind: "question",
    feature: `${unitQuestionPrefix}${feature.id}`,
    text: said.unit === null ? noUnitSaid(value, meant) : isItThisUnit(`${value} ${said.unit}`, meant),
    effort: 1,
    photographDoes: false,
    answers: [yes, no],
    expects: "choice",
    besides: besides.filter((choice) => choice.id === "why" || choice.id === "undo"),
  };
}

function featureQuestion(feature: Feature, because: Reason): QuestionBlock {
  const asked = feature.kind === "measurement" ? inUnit(feature.question, feature.unit) : feature.question;
  const text = putAgain(asked, because, isOfMass(feature));
  const absent = feature.none === undefined ? [] : [{ id: notThere, label: feature.none, say: feature.none }];
  const base = {
    kind: "question",
    feature: feature.id,
    text,
    effort: feature.effort,
    photographDoes: feature.photograph,
    besides,
  } as const;
  if (feature.kind === "states") {
    return { ...base, answers: [...named(feature.states), ...absent], expects: "choice" };
  }
  if (feature.kind === "date") return { ...base, answers: absent, expects: "date" };
  return { ...base, answers: absent, expects: "measurement", unit: feature.unit };
}

function putAgain(question: string, because: Reason, isMass: boolean): string {
  switch (because.kind) {
    case "next":
      return question;
    case "contradiction":
      return lookAgain(question);
    case "outlier":
      return isMass ? weighedHow(question) : measuredWhere(question);
  }
}

/** Pictures of a feature or variant, when the handbook has them. */
export function pictureBlock(
  handbook: Handbook,
  path: string | undefined,
  alternative: string,
): Block | undefined {
  const svg = path === undefined ? undefined : handbook.drawings.get(path);
  return path === undefined || svg === undefined ? undefined : { kind: "picture", path, svg, alternative };
}
