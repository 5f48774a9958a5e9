/** The changes of a chain as plain text of 80 columns: all at once, then each by itself with its ends and the cars that would narrow it. */
import { formatInterval, provenanceGrades, sayProbability, swapByGrade } from "../../../knowledge/index.ts";
import type { ChainFindings, ChangeOfChain } from "./chain-findings.ts";
import { flowing, type Row, rows, section } from "./laid-out.ts";
import { nameOf } from "./names.ts";
import { oneLine } from "./one-line.ts";
import {
  assumptionWords,
  dayWords,
  endsAreNoInterval,
  gradeWords,
  groupWords,
  headings,
  labels,
  listedCounts,
  monthWords,
  noMonth,
  notOneChange,
  otherVariantsWords,
  outsideWords,
  seenWords,
  shareWords,
} from "./phrases.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { sayEnds, sayShape, saySpeed, saySuspects, sayWanted } from "./say-cars.ts";
import { sayGroups } from "./say-groups.ts";

export function sayChain(question: ChangeoverQuestion, findings: ChainFindings): readonly string[] {
  const { judged, changes } = findings;
  const counts = countsOf(judged.map(({ sighting }) => sighting));
  const seen = (id: string) => counts.get(id) ?? 0;
  const others = othersOf(question);
  const titleOf = ({ old, new: fresh }: ChangeOfChain) =>
    headings.changeOfChain(nameOf(question, old), nameOf(question, fresh));
  return [
    headings.chain(question.part?.name),
    ...rows(
      changes.map(
        (change): Row => [
          titleOf(change),
          groupWords(
            monthWords(change.median),
            formatInterval(change.interval),
            seen(change.old) + seen(change.new),
          ),
        ],
      ),
    ),
    ...changes.flatMap((change) => [
      ...section(titleOf(change), sayOne(change, findings)),
      ...(change.shapes === undefined || change.shapes.shapes[0]?.shape === "change"
        ? []
        : flowing(notOneChange)),
      ...section(headings.wanted, sayWanted(change.wanted)),
      ...sayGroups(change.grouped),
    ]),
    "",
    ...flowing(endsAreNoInterval),
    ...section(headings.suspects, saySuspects(question, judged)),
    ...section(headings.sightings, [
      ...question.chain.map((id): Row => ["-", seenWords(nameOf(question, id), seen(id))]),
      ...(findings.outside.length === 0
        ? []
        : [["-", outsideWords(findings.outside.map(({ id }) => oneLine(id)).join(", "))] as const]),
      ...(others.size === 0 ? [] : [["-", otherVariantsWords(oneLine(listedCounts(others)))] as const]),
    ]),
    ...section(
      headings.assumptions,
      chainAssumptions(question, findings).map((line): Row => ["-", line]),
    ),
  ];
}

function sayOne(change: ChangeOfChain, { judged }: ChainFindings): readonly Row[] {
  const { month, interval, median, shapes, ends } = change;
  return [
    [labels.month, month ? `${formatInterval(month.month)}: ${sayProbability(month.chance)}` : noMonth],
    [labels.interval, formatInterval(interval)],
    [labels.middle, dayWords(median)],
    [labels.speed, saySpeed(change)],
    ...(shapes === undefined ? [] : [[headings.shape, sayShape(shapes)] as const]),
    ...sayEnds(ends, judged),
  ];
}

/** Sightings of kinds that the chain does not have, by kind. */
export function othersOf({ sightings, chain }: ChangeoverQuestion): ReadonlyMap<string, number> {
  return countsOf(sightings.filter(({ variant }) => !chain.includes(variant)));
}

export function chainAssumptions(question: ChangeoverQuestion, { sold }: ChainFindings): readonly string[] {
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
