/** "help": three messages one could send, from the handbook in hand, and the words that always work. */
import type { Handbook } from "../../knowledge/index.ts";
import { helpExamples, helpLead, helpParts, helpWords } from "../conversation/phrases/commands.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

export function help({ knowledge }: Pick<Scene, "knowledge">): readonly Block[] {
  const { handbook } = knowledge;
  const names = handbook.parts.map((part) => part.name);
  const [first = "part", second = first] = names;
  return [
    {
      kind: "list",
      lead: helpLead(handbook.cover.name),
      items: helpExamples(first, second, middleYear(handbook)),
    },
    { kind: "text", text: helpParts(names) },
    { kind: "text", text: helpWords, tone: "aside" },
  ];
}

/** A year in which the first model was made. */
function middleYear({ cars }: Handbook): number {
  const [model] = cars.models;
  const [from, to] = [model?.from, model?.to].map((date) => Number(date?.slice(0, 4)));
  return Math.round(((from ?? 0) + (to ?? 0)) / 2);
}
