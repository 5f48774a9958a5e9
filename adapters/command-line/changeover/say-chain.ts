/** The changes of a chain as text and as one object for scripts. */
import { formatInterval, provenanceGrades, swapByGrade } from "../../../knowledge/index.ts";
import type { ChainFindings } from "./chain-findings.ts";
import { day, stretch } from "./findings-as-json.ts";
import { nameOf } from "./names.ts";
import { oneLine } from "./one-line.ts";
import {
  assumptionWords,
  fromTo,
  gradeWords,
  groupWords,
  headings,
  listedCounts,
  monthWords,
  otherVariantsWords,
  outsideWords,
  seenWords,
  shareWords,
} from "./phrases.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { type Row, rows, section } from "./say-findings.ts";

export function sayChain(question: ChangeoverQuestion, findings: ChainFindings): readonly string[] {
  const counts = countsOf(findings.used);
  const seen = (id: string) => counts.get(id) ?? 0;
  const others = othersOf(question);
  return [
    headings.chain(question.part?.name),
    ...rows(
      findings.changes.map(
        ({ old, new: fresh, median, interval }): Row => [
          fromTo(nameOf(question, old), nameOf(question, fresh)),
          groupWords(monthWords(median), formatInterval(interval), seen(old) + seen(fresh)),
        ],
      ),
    ),
    ...section(headings.sightings, [
      ...question.chain.map((id): Row => ["-", seenWords(nameOf(question, id), seen(id))]),
      ...(findings.outside.length === 0
        ? []
        : [["-", outsideWords(findings.outside.map(({ id }) => oneLine(id)).join(", "))] as const]),
      ...(others.size === 0 ? [] : [["-", otherVariantsWords(oneLine(listedCounts(others)))] as const]),
    ]),
    ...section(
      headings.assumptions,
      assumptions(question, findings).map((line): Row => ["-", line]),
    ),
  ];
}

export function chainAsJson(question: ChangeoverQuestion, findings: ChainFindings): object {
  const counts = countsOf(findings.used);
  return {
    kind: "chain",
    part: question.part?.id ?? null,
    production: stretch(question.setting.window),
    variants: question.chain.map((id) => ({
      id,
      name: nameOf(question, id),
      sightings: counts.get(id) ?? 0,
    })),
    changes: findings.changes.map(({ old, new: fresh, median, interval }) => ({
      old,
      new: fresh,
      median: day(median),
      interval: stretch(interval),
    })),
    outsideProduction: findings.outside.map(({ id }) => id),
    otherVariants: Object.fromEntries(othersOf(question)),
    assumptions: assumptions(question, findings),
  };
}

function othersOf({ sightings, chain }: ChangeoverQuestion): ReadonlyMap<string, number> {
  return countsOf(sightings.filter(({ variant }) => !chain.includes(variant)));
}

function assumptions(question: ChangeoverQuestion, { sold }: ChainFindings): readonly string[] {
  const { setting, part, chain, windowFrom } = question;
  const swaps = provenanceGrades.map((grade) => shareWords(gradeWords[grade], swapByGrade[grade])).join(", ");
  return [
    assumptionWords.window(formatInterval(setting.window), windowFrom),
    setting.production === undefined ? assumptionWords.evenProduction : assumptionWords.production,
    part === undefined ? assumptionWords.chainByCars : assumptionWords.chainByHandbook,
    assumptionWords.chain,
    part === undefined ? assumptionWords.notStated : assumptionWords.stated,
    assumptionWords.swaps(swaps),
    sold === undefined
      ? assumptionWords.replacements
      : assumptionWords.replacementsSold(
          chain.map((id, at) => shareWords(nameOf(question, id), sold[at] ?? 0)).join(", "),
        ),
  ];
}
