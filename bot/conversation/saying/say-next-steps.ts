/** What can be done after an answer, and the edition it rests on: never a dead end. */
import { notInHandbook } from "../../../knowledge/index.ts";
import type { Block, Choice } from "../../reply.ts";
import type { Assessed } from "../assessed.ts";
import type { Knowledge } from "../knowledge.ts";
import { choiceLabels } from "../phrases/answer.ts";
import { sayEdition } from "./say-edition.ts";
import { hasEvidence } from "./say-standing.ts";

export function sayNextSteps(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  return [
    { kind: "choices", choices: choicesAfter(assessed) },
    { kind: "edition", text: sayEdition(knowledge) },
  ];
}

export function choicesAfter(assessed: Assessed): readonly Choice[] {
  const { identification, goal, facts } = assessed;
  const [first, second] = identification.ranking;
  const isDatedCar = facts.car.built !== undefined && facts.car.isLoosePart !== true;
  const compare =
    first === undefined ||
    second === undefined ||
    first.variant === notInHandbook ||
    second.variant === notInHandbook
      ? undefined
      : { id: "compare", label: choiceLabels.compare, say: `compare ${first.name} and ${second.name}` };
  return [
    goal !== "what-should-it-have" && (identification.verdict === null || !hasEvidence(assessed))
      ? { id: "photographs", label: choiceLabels.photographs, say: "what photographs should I ask for?" }
      : undefined,
    goal === "right-for-car" || goal === "what-should-it-have"
      ? undefined
      : { id: "right-for-car", label: choiceLabels.rightForCar, say: "is it right for my car?" },
    isDatedCar && goal !== "what-should-it-have"
      ? { id: "should-have", label: choiceLabels.shouldHave, say: "what should my car have?" }
      : undefined,
    compare,
    { id: "sources", label: choiceLabels.sources, say: "show the sources" },
    { id: "keeper", label: choiceLabels.keeper, say: choiceLabels.keeper },
    { id: "new-case", label: choiceLabels.nextCase, say: "new case" },
  ].filter((choice) => choice !== undefined);
}
