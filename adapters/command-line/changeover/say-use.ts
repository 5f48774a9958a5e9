/** What can be said when one variant alone was seen: how long it was in use at least, and four published limits. */
import {
  formatInterval,
  type Refusal,
  type Result,
  type UseEnd,
  type UseLimit,
} from "../../../knowledge/index.ts";
import type { OneVariantFindings } from "./findings.ts";
import { sideName } from "./names.ts";
import { headings, monthWords, oneVariantWords } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

export const useMethods = [
  ["straussSadler", "Strauss & Sadler 1989"],
  ["solow", "Solow 1993"],
  ["robertsSolow", "Roberts & Solow 2003"],
  ["jaricRoberts", "Jarić & Roberts 2014"],
] as const;

/** A paragraph each; not yet wrapped. */
export function sayUse(question: ChangeoverQuestion, findings: OneVariantFindings): readonly string[] {
  const { end, beginning } = findings;
  const isNew = findings.judged.some((one) => one.isNew);
  const name = sideName(question, isNew ? "new" : "old");
  return [
    `${headings.oneVariant(question.part?.name)}: ${name}`,
    "",
    question.chosen === "alone" ? oneVariantWords.alone : oneVariantWords.noInterval,
    ...(beginning ? sayOneEnd(beginning, true) : []),
    ...(end ? sayOneEnd(end, false) : []),
  ];
}

function sayOneEnd(use: UseEnd, isBeginning: boolean): readonly string[] {
  const { inUseFrom, inUseUntil, notTrusted, endLead, beginningLead } = oneVariantWords;
  const atLeast = isBeginning ? inUseFrom : inUseUntil;
  return [
    "",
    use.atLeastBuilt === undefined ? notTrusted : atLeast(formatInterval(use.atLeastBuilt)),
    `${isBeginning ? beginningLead : endLead}:`,
    ...useMethods.map(([method, name]) => `- ${name}: ${sayLimit(use[method], isBeginning)}`),
  ];
}

function sayLimit(limit: Result<UseLimit, Refusal>, isBeginning: boolean): string {
  if (!limit.ok) return oneVariantWords.refused(limit.problem.message);
  const { isOpen, assumption } = limit.value;
  const estimate = monthWords(limit.value.estimate);
  const open = isBeginning ? oneVariantWords.openBeginning : oneVariantWords.openEnd;
  const closed = isBeginning ? oneVariantWords.beginningLimit : oneVariantWords.endLimit;
  const said = isOpen ? open(estimate) : closed(estimate, monthWords(limit.value.limit));
  return `${said}, ${oneVariantWords.holdsIf(withoutSource(assumption))}`;
}

/** The paper stands in front already. */
function withoutSource(assumption: string): string {
  return assumption.replace(/ \([^()]*\)$/u, "");
}
