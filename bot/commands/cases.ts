/** "list cases", "case 2", "new case": several questions side by side. */
import type { PartKind } from "../../knowledge/index.ts";
import type { Case } from "../conversation/case.ts";
import { caseLine, casesLead, goToCase, noCases, noPartYet } from "../conversation/phrases/commands.ts";
import { goalWords } from "../conversation/phrases/goals.ts";
import type { Block, Choice } from "../reply.ts";
import type { Scene } from "./scene.ts";

/** The cases of a conversation that say anything, by number. */
export function listCases(scene: Scene): readonly Block[] {
  const { parts } = scene.knowledge.handbook;
  const spoken = scene.conversation.cases.filter((kept) => isSpoken(kept) || kept.id === scene.kept.id);
  if (!spoken.some(isSpoken)) return [{ kind: "text", text: noCases }];
  const items = spoken.map((kept) =>
    caseLine(
      kept.number,
      partNameOf(parts, kept),
      goalWords[kept.facts.goal],
      kept.facts.reports.filter(({ value }) => value.kind !== "cannot-tell").length,
      kept.id === scene.kept.id,
    ),
  );
  const choices = spoken.filter((kept) => kept.id !== scene.kept.id).map(caseChoice);
  const list: Block = { kind: "list", lead: casesLead, items };
  return choices.length === 0 ? [list] : [list, { kind: "choices", choices }];
}

export function partNameOf(parts: readonly PartKind[], kept: Case): string {
  return parts.find((part) => part.id === kept.facts.part)?.name ?? noPartYet;
}

export function caseChoice(kept: Case): Choice {
  const say = goToCase(kept.number);
  return { id: kept.id, label: say, say };
}

function isSpoken(kept: Case): boolean {
  return kept.facts.part !== null || kept.facts.reports.length > 0;
}
