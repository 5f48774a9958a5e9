/** "how do I check?": cautions first, then the tools, the steps and the drawing. */
import { type Feature, featureById } from "../../knowledge/index.ts";
import type { NextQuestion } from "../conversation/assessed.ts";
import {
  drawingOf,
  howBuilt,
  howMarket,
  howModel,
  howPart,
  howTrim,
  howUnit,
  photographDoes,
  toolsNeeded,
  whyNothing,
} from "../conversation/phrases/question.ts";
import { cautionsBlock } from "../conversation/saying/say-cautions.ts";
import { pictureBlock } from "../conversation/saying/say-question.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

/** Steps for the named feature of the part in hand, else for the open question. */
export function howToCheck(scene: Scene, named: string | undefined): readonly Block[] {
  const part = scene.assessed?.part;
  const feature = named === undefined || part === undefined ? undefined : featureById(part, named);
  if (feature !== undefined) return featureSteps(scene, feature);
  const { question } = scene;
  if (question === null) return [{ kind: "text", text: whyNothing }];
  if (question.about === "feature") return featureSteps(scene, question.feature);
  return [{ kind: "text", text: otherSteps(question) }];
}

function featureSteps(scene: Scene, feature: Feature): readonly Block[] {
  const { handbook } = scene.knowledge;
  const steps = [
    feature.check,
    feature.tools.length === 0 ? undefined : toolsNeeded(feature.tools),
    feature.photograph ? photographDoes : undefined,
  ]
    .filter((line) => line !== undefined)
    .join(" ");
  return [
    cautionsBlock(feature.cautions),
    { kind: "text", text: steps } as const,
    pictureBlock(handbook, feature.drawing, drawingOf(feature.name)),
  ].filter((block) => block !== undefined);
}

function otherSteps(question: Exclude<NextQuestion, { about: "feature" }>): string {
  if (question.about === "part") return howPart;
  if (question.about === "unit") return howUnit;
  switch (question.ask) {
    case "car.built":
      return howBuilt;
    case "car.trim":
      return howTrim;
    case "car.market":
      return howMarket;
    case "car.model":
      return howModel;
  }
}
