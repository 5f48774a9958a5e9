/** The findings as plain text of 80 columns: what people are told of a change, and of what it rests on. */
import {
  formatInterval,
  type ProvenanceGrade,
  provenanceGrades,
  sayProbability,
} from "../../../knowledge/index.ts";
import { assumptionsOf } from "./assumptions.ts";
import type { ChangeFindings, ChangeoverFindings, Judged } from "./findings.ts";
import { flowing, paragraph, type Row, rows, section } from "./laid-out.ts";
import { sideName } from "./names.ts";
import { oneLine } from "./one-line.ts";
import {
  countOfOne,
  countWords,
  dayWords,
  endsAreNoInterval,
  gradesTooHopeful,
  gradeWords,
  headings,
  labels,
  listedCounts,
  noMonth,
  notOneChange,
  otherVariantsWords,
  outsideWords,
  statedOutside,
  throughoutWords,
} from "./phrases.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { sayEnds, sayShape, saySpeed, saySuspects, sayWanted } from "./say-cars.ts";
import { sayGroups } from "./say-groups.ts";
import { sayUse } from "./say-use.ts";

/** A history or a doubt below this is not worth a line. */
const WORTH_SAYING = 0.05;
/** "likely" on the published scale: from here one of the two is named. */
const LIKELY = 0.66;

export function sayFindings(question: ChangeoverQuestion, findings: ChangeoverFindings): readonly string[] {
  const said =
    findings.kind === "change"
      ? sayChange(question, findings)
      : sayUse(question, findings).flatMap(paragraph);
  return [
    ...said,
    ...section(headings.sightings, saySightings(question, findings)),
    ...section(
      headings.assumptions,
      assumptionsOf(question, findings).map((line) => ["-", line] as const),
    ),
  ];
}

function sayChange(question: ChangeoverQuestion, findings: ChangeFindings): readonly string[] {
  const { change } = findings;
  return [
    headings.change(question.part?.name),
    ...rows([
      [labels.old, sideName(question, "old")],
      [labels.new, sideName(question, "new")],
    ]),
    "",
    ...rows(sayDate(findings)),
    ...remarks(question, findings),
    ...section(headings.ends, sayEnds(change.ends, findings.judged)),
    ...flowing(endsAreNoInterval),
    ...section(headings.suspects, saySuspects(question, findings.judged)),
    ...(change.moreSwapsThanGraded > LIKELY
      ? flowing(gradesTooHopeful(sayProbability(change.moreSwapsThanGraded)))
      : []),
    ...section(headings.wanted, sayWanted(findings.wanted)),
    ...sayGroups(findings.grouped),
  ];
}

function sayDate({ month, change, shapes }: ChangeFindings): readonly Row[] {
  return [
    [labels.month, month ? `${formatInterval(month.month)}: ${sayProbability(month.chance)}` : noMonth],
    [labels.interval, formatInterval(change.interval)],
    [labels.middle, dayWords(change.median)],
    [labels.speed, saySpeed(change)],
    [headings.shape, sayShape(shapes)],
  ];
}

function remarks(question: ChangeoverQuestion, { change, shapes }: ChangeFindings): readonly string[] {
  const { oldThroughout, newThroughout } = change;
  const throughout = (["old", "new"] as const).flatMap((side) => {
    const chance = side === "old" ? oldThroughout : newThroughout;
    return chance < WORTH_SAYING ? [] : [throughoutWords(sideName(question, side), sayProbability(chance))];
  });
  const lines = [
    ...(shapes.shapes[0]?.shape === "change" ? [] : [notOneChange]),
    ...throughout,
    ...(change.statedOutside ? [statedOutside] : []),
  ];
  return lines.length === 0 ? [] : ["", ...lines.flatMap(flowing)];
}

function saySightings(question: ChangeoverQuestion, findings: ChangeoverFindings): readonly Row[] {
  const { judged, outside } = findings;
  const counted = (members: readonly Judged[]): string => {
    if (findings.kind === "one-variant") return countOfOne(members.length);
    const fresh = members.filter(({ isNew }) => isNew).length;
    return countWords(members.length, members.length - fresh, fresh);
  };
  const byGrade = provenanceGrades.flatMap((grade: ProvenanceGrade): Row[] => {
    const members = judged.filter(({ sighting }) => sighting.grade === grade);
    return members.length === 0 ? [] : [[gradeWords[grade], counted(members)]];
  });
  const asked = [...question.old, ...question.new];
  const others = countsOf(question.sightings.filter(({ variant }) => !asked.includes(variant)));
  return [
    ...byGrade,
    ["in all", counted(judged)],
    ...(outside.length > 0 ? [["-", outsideWords(listedIds(outside))] as const] : []),
    ...(others.size > 0 ? [["-", otherVariantsWords(oneLine(listedCounts(others)))] as const] : []),
  ];
}

const MOST_IDS = 20;

function listedIds(sightings: readonly { readonly id: string }[]): string {
  const ids = sightings.slice(0, MOST_IDS).map(({ id }) => oneLine(id));
  const left = sightings.length - ids.length;
  return [...ids, ...(left > 0 ? [`${left} more`] : [])].join(", ");
}
