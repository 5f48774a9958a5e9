/** "where do I go from here?": what evidence would settle it, and the notes of the case ready for a keeper. */
import { featuresNamed } from "../conversation/features-named.ts";
import {
  handOverLead,
  needsPart,
  whereLead,
  whereLine,
  whereNothing,
} from "../conversation/phrases/commands.ts";
import { effortWords } from "../conversation/phrases/effort.ts";
import { byInformationPerEffort } from "../conversation/question-worth.ts";
import { handOver } from "../conversation/saying/hand-over.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

const mostEvidence = 4;

export function whereFromHere(scene: Scene): readonly Block[] {
  const { assessed, kept, knowledge } = scene;
  if (assessed === undefined) return [{ kind: "text", text: needsPart }];
  const ids = byInformationPerEffort(assessed.table).map(({ question }) => question.id);
  const items = featuresNamed(assessed.part, ids)
    .slice(0, mostEvidence)
    .map((feature) => whereLine(feature.question, effortWords(feature.effort)));
  const evidence: Block =
    items.length === 0 ? { kind: "text", text: whereNothing } : { kind: "list", lead: whereLead, items };
  return [
    evidence,
    { kind: "text", text: handOverLead },
    { kind: "text", text: handOver(knowledge.handbook, kept, assessed), tone: "aside" },
  ];
}
