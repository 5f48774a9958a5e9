/** The findings as plain text of 80 columns: what people are told of a change, and of what it rests on. */
import {
  type Changeover,
  formatInterval,
  type ProvenanceGrade,
  provenanceGrades,
  sayProbability,
} from "../../../knowledge/index.ts";
import { padded, textWidth, wrapped } from "../../terminal/wrap.ts";
import { assumptionsOf } from "./assumptions.ts";
import { type ChangeFindings, type ChangeoverFindings, isSuspect, type Judged } from "./findings.ts";
import { nameOf, sideName } from "./names.ts";
import { oneLine } from "./one-line.ts";
import {
  asBuiltWords,
  builtWords,
  countOfOne,
  countWords,
  dayWords,
  endsAreNoInterval,
  gradesTooHopeful,
  gradeWords,
  groupName,
  groupWords,
  headings,
  labels,
  listedCounts,
  monthWords,
  noMonth,
  noSuspects,
  notAsBuiltWords,
  nothingWanted,
  notOneChange,
  otherVariantsWords,
  outsideWords,
  runnerUpWords,
  shapeWords,
  speedWords,
  statedOutside,
  throughoutWords,
  wantedWords,
} from "./phrases.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { sayUse } from "./say-use.ts";

const WIDTH = 80;
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

export type Row = readonly [label: string, text: string];

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
    ...section(headings.ends, sayEnds(change, findings)),
    ...flowing(endsAreNoInterval),
    ...section(headings.suspects, saySuspects(question, findings.judged)),
    ...(change.moreSwapsThanGraded > LIKELY
      ? flowing(gradesTooHopeful(sayProbability(change.moreSwapsThanGraded)))
      : []),
    ...section(headings.wanted, sayWanted(findings)),
    ...findings.grouped.flatMap(({ by, groups }) =>
      section(
        headings.markets[by],
        groups.map(({ market, median, interval, sightings }) => [
          oneLine(groupName(market)),
          groupWords(monthWords(median), formatInterval(interval), sightings),
        ]),
      ),
    ),
  ];
}

function sayDate({ month, change, shapes }: ChangeFindings): readonly Row[] {
  const [first, second] = shapes.shapes;
  const shape = first ? `${shapeWords[first.shape]}: ${sayProbability(first.chance)}` : "";
  const other =
    second && shapes.runnerUp
      ? `; ${runnerUpWords(shapeWords[second.shape], sayProbability(second.chance))}`
      : "";
  return [
    [labels.month, month ? `${formatInterval(month.month)}: ${sayProbability(month.chance)}` : noMonth],
    [labels.interval, formatInterval(change.interval)],
    [labels.middle, dayWords(change.median)],
    [labels.speed, saySpeed(change)],
    [headings.shape, `${shape}${other}`],
  ];
}

/** Which of the three is said; the overlap itself is hardly known below 60 sightings. */
export function speedOf({ withinWeeks, overMonths }: Changeover): "weeks" | "months" | "unclear" {
  if (withinWeeks > LIKELY) return "weeks";
  return overMonths > LIKELY ? "months" : "unclear";
}

function saySpeed(change: Changeover): string {
  const [weeks, months] = [sayProbability(change.withinWeeks), sayProbability(change.overMonths)];
  const speed = speedOf(change);
  if (speed === "unclear") return speedWords.unclear(weeks, months);
  return speedWords[speed](speed === "weeks" ? weeks : months);
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

function sayEnds({ ends }: Changeover, { judged }: ChangeFindings): readonly Row[] {
  const builtOf = new Map(judged.map(({ sighting }) => [sighting.id, sighting.built]));
  const row = (
    label: string,
    end: Changeover["ends"]["lastOld"],
    beside?: { readonly id: string },
  ): Row[] => {
    const built = end && builtOf.get(end.id);
    if (!end || !built || end.id === beside?.id) return [];
    const when = builtWords(formatInterval(built));
    return [[label, `${oneLine(end.id)}, ${when}; ${asBuiltWords(sayProbability(end.asBuilt))}`]];
  };
  return [
    ...row(labels.lastOld, ends.lastOld),
    ...row(labels.lastTrusted, ends.lastOldUnsuspected, ends.lastOld),
    ...row(labels.firstNew, ends.firstNew),
    ...row(labels.firstTrusted, ends.firstNewUnsuspected, ends.firstNew),
  ];
}

function saySuspects(question: ChangeoverQuestion, judged: readonly Judged[]): readonly Row[] {
  const suspects = judged
    .filter(isSuspect)
    .sort((one, other) => other.notAsBuilt - one.notAsBuilt)
    .map(({ sighting, notAsBuilt }): Row => {
      const car = `${nameOf(question, sighting.variant)}, ${builtWords(formatInterval(sighting.built))}`;
      const chance = notAsBuiltWords(sayProbability(notAsBuilt));
      return [oneLine(sighting.id), `${car}, ${gradeWords[sighting.grade]}; ${chance}`];
    });
  return suspects.length === 0 ? [["-", noSuspects]] : suspects;
}

function sayWanted({ wanted }: ChangeFindings): readonly Row[] {
  if (wanted.length === 0) return [["-", nothingWanted]];
  return wanted.map(({ built, reportedNew }, index) => [
    `${index + 1}`,
    wantedWords(formatInterval(built), sayProbability(reportedNew)),
  ]);
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

export function section(heading: string, body: readonly Row[]): readonly string[] {
  return ["", heading, ...rows(body)];
}

/** Labels in a column, their texts wrapped beside it; a long label takes a line of its own. */
export function rows(body: readonly Row[]): readonly string[] {
  const column = Math.min(28, Math.max(0, ...body.map(([label]) => textWidth(label))));
  return body.flatMap(([label, text]) => {
    const first = `  ${padded(label, column)}  `;
    if (textWidth(label) <= column) return wrapped(text, WIDTH, first);
    return [...wrapped(label, WIDTH, "  "), ...wrapped(text, WIDTH, " ".repeat(column + 4))];
  });
}

function paragraph(line: string): readonly string[] {
  return line.startsWith("- ") ? wrapped(line.slice(2), WIDTH, "  - ") : flowing(line);
}

function flowing(line: string): readonly string[] {
  return wrapped(line, WIDTH);
}
