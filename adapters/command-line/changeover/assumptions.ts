/** What an answer takes for granted, a sentence each: an interval means nothing without it. */
import { formatInterval, provenanceGrades, swapByGrade } from "../../../knowledge/index.ts";
import type { ChangeoverFindings } from "./findings.ts";
import { sideName } from "./names.ts";
import { assumptionWords, gradeWords, shareWords } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

function replacementsTaken(question: ChangeoverQuestion): string {
  const { replacements } = question.setting;
  if (replacements === undefined) return assumptionWords.replacements;
  const whole = replacements.old + replacements.new;
  const share = (side: "old" | "new") => shareWords(sideName(question, side), replacements[side] / whole);
  return assumptionWords.replacementsSold(`${share("old")}, ${share("new")}`);
}

export function assumptionsOf(question: ChangeoverQuestion, findings: ChangeoverFindings): readonly string[] {
  const { setting, windowFrom, chosen } = question;
  const swaps = provenanceGrades
    .map((grade) => `${gradeWords[grade]} ${Math.round(100 * swapByGrade[grade])} %`)
    .join(", ");
  const ruled = findings.judged.filter(({ sighting }) => sighting.isRuledAsBuilt).length;
  const isChange = findings.kind === "change";
  const sides = [sideName(question, "old"), sideName(question, "new")] as const;
  const stated = setting.stated === undefined ? assumptionWords.notStated : assumptionWords.stated;
  return [
    assumptionWords.window(formatInterval(setting.window), windowFrom),
    setting.production === undefined ? assumptionWords.evenProduction : assumptionWords.production,
    ...(isChange ? [stated] : []),
    ...(chosen === "order" ? [assumptionWords.order(...sides)] : []),
    ...(chosen === "handbook" ? [assumptionWords.orderByHandbook(...sides)] : []),
    isChange ? assumptionWords.swaps(swaps) : assumptionWords.swapsFixed(swaps),
    ...(ruled > 0 ? [assumptionWords.rulings(ruled)] : []),
    ...(isChange ? [replacementsTaken(question)] : []),
  ];
}
