/** "why this?": what the answer would separate and settle, what the look costs, how often it goes wrong, who says so. */
import {
  type Feature,
  type Handbook,
  type QuestionTable,
  sayProbability,
  stateName,
} from "../../knowledge/index.ts";
import { carInWords } from "../conversation/apply-car.ts";
import type { Assessed, CarQuestion, NextQuestion } from "../conversation/assessed.ts";
import { withThe } from "../conversation/phrases/grammar.ts";
import {
  whyAsBuilt,
  whyBuilt,
  whyEffort,
  whyMarket,
  whyModel,
  whyNothing,
  whyPart,
  whyRecheck,
  whySeparates,
  whySettles,
  whyTrim,
  whyUnit,
} from "../conversation/phrases/question.ts";
import { afterAnswers } from "../conversation/question-worth.ts";
import { sayEvidence } from "../conversation/saying/say-evidence.ts";
import { nameInSentence, standingItems } from "../conversation/saying/say-standing.ts";
import { inBrackets, sourcesOfTell } from "../conversation/saying/sources-of.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

const answersForetold = 2;

export function why(scene: Scene): readonly Block[] {
  const { question, assessed } = scene;
  if (question === null) return whyAnswer(scene);
  switch (question.about) {
    case "part":
      return [plain(whyPart)];
    case "unit":
      return [plain(whyUnit)];
    case "car":
      return [plain(whyCar(question.ask))];
    case "feature":
      return assessed === undefined ? [] : [plain(whyFeature(scene, assessed, question))];
  }
}

/** After the answer "why?" asks for what it rests on. */
function whyAnswer({ assessed, knowledge }: Scene): readonly Block[] {
  if (assessed?.goal === "what-should-it-have") return [plain(whyAsBuiltOf(knowledge.handbook, assessed))];
  const evidence = assessed === undefined ? [] : sayEvidence(knowledge.handbook, assessed);
  return evidence.length > 0 ? evidence : [plain(whyNothing)];
}

/** What the works fitted goes by its periods and by the car; nothing seen on the part bears on it. */
function whyAsBuiltOf(handbook: Handbook, { part, facts, identification }: Assessed): string {
  const { maskedSerial: _, ...car } = facts.car;
  const told = Object.entries(carInWords(handbook.cars, car)).map(([label, value]) => `${label} ${value}`);
  const leaders = identification.ranking.slice(0, 2).map((one) => one.variant);
  const sources = part.variants
    .filter((variant) => leaders.includes(variant.id))
    .flatMap((variant) => variant.fitted.flatMap((period) => period.sources));
  return `${whyAsBuilt(told)} ${inBrackets(handbook, sources)}`.trim();
}

function whyCar(ask: CarQuestion): string {
  switch (ask) {
    case "car.built":
      return whyBuilt;
    case "car.trim":
      return whyTrim;
    case "car.market":
      return whyMarket;
    case "car.model":
      return whyModel;
  }
}

function whyFeature(
  scene: Scene,
  assessed: Assessed,
  question: Extract<NextQuestion, { about: "feature" }>,
): string {
  const { feature, because } = question;
  const left = standingItems(assessed).map((item) =>
    isVariantName(assessed, item.name) ? withThe(item.name) : item.name,
  );
  const sources = inBrackets(
    scene.knowledge.handbook,
    sourcesOfTell(
      assessed.part,
      feature.id,
      assessed.identification.ranking.slice(0, 2).map((one) => one.variant),
    ),
  );
  return [
    because.kind === "next" ? undefined : whyRecheck,
    feature.why === undefined ? undefined : `${feature.why} ${sources}`.trim(),
    because.kind === "next" && left.length > 1 ? whySeparates(left) : undefined,
    ...(because.kind === "next" ? foretold(assessed, assessed.table, feature) : []),
    whyEffort(feature.effort, misreadRate(feature)),
  ]
    .filter((line) => line !== undefined)
    .join(" ");
}

function isVariantName({ part }: Assessed, name: string): boolean {
  return part.variants.some((variant) => variant.name === name);
}

function foretold(assessed: Assessed, table: QuestionTable, feature: Feature): readonly string[] {
  const question = table.questions.find((one) => one.id === feature.id);
  if (question === undefined || feature.kind !== "states") return [];
  return afterAnswers(table, question)
    .slice(0, answersForetold)
    .map((after) =>
      whySettles(
        stateName(feature, after.answer),
        nameInSentence(assessed, after.class),
        sayProbability(after.classProbability),
      ),
    );
}

/** The largest share of owners who see one state for another; undefined for measurements and dates. */
function misreadRate(feature: Feature): number | undefined {
  if (feature.kind !== "states") return undefined;
  if (typeof feature.misread === "number") return feature.misread;
  return feature.misread.reduce((most, { rate }) => Math.max(most, rate), 0);
}

function plain(text: string): Block {
  return { kind: "text", text };
}
