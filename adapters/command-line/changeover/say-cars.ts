/** What is said of a change and of the cars it rests on, alike for one change and for each of a chain. */
import {
  type CarWanted,
  type Changeover,
  type EndsOfUse,
  formatInterval,
  type ShapesOfChange,
  sayProbability,
} from "../../../knowledge/index.ts";
import { isSuspect, type Judged } from "./findings.ts";
import type { Row } from "./laid-out.ts";
import { nameOf } from "./names.ts";
import { oneLine } from "./one-line.ts";
import {
  asBuiltWords,
  builtWords,
  gradeWords,
  labels,
  noSuspects,
  notAsBuiltWords,
  nothingWanted,
  runnerUpWords,
  shapeWords,
  speedWords,
  wantedWords,
} from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

/** "likely" on the published scale: from here one of the two is named. */
const LIKELY = 0.66;

/** Which of the three is said; the overlap itself is hardly known below 60 sightings. */
export function speedOf({
  withinWeeks,
  overMonths,
}: Pick<Changeover, "withinWeeks" | "overMonths">): "weeks" | "months" | "unclear" {
  if (withinWeeks > LIKELY) return "weeks";
  return overMonths > LIKELY ? "months" : "unclear";
}

export function saySpeed(change: Pick<Changeover, "withinWeeks" | "overMonths">): string {
  const [weeks, months] = [sayProbability(change.withinWeeks), sayProbability(change.overMonths)];
  const speed = speedOf(change);
  if (speed === "unclear") return speedWords.unclear(weeks, months);
  return speedWords[speed](speed === "weeks" ? weeks : months);
}

/** The likeliest history and, where it is not sure, the next likely one. */
export function sayShape({ shapes, runnerUp }: ShapesOfChange): string {
  const [first, second] = shapes;
  const shape = first ? `${shapeWords[first.shape]}: ${sayProbability(first.chance)}` : "";
  const other =
    second && runnerUp ? `; ${runnerUpWords(shapeWords[second.shape], sayProbability(second.chance))}` : "";
  return `${shape}${other}`;
}

export function sayEnds(ends: EndsOfUse, judged: readonly Judged[]): readonly Row[] {
  const builtOf = new Map(judged.map(({ sighting }) => [sighting.id, sighting.built]));
  const row = (label: string, end: EndsOfUse["lastOld"], beside?: { readonly id: string }): Row[] => {
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

export function saySuspects(question: ChangeoverQuestion, judged: readonly Judged[]): readonly Row[] {
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

export function sayWanted(wanted: readonly CarWanted[]): readonly Row[] {
  if (wanted.length === 0) return [["-", nothingWanted]];
  return wanted.map(({ built, reportedNew }, index) => [
    `${index + 1}`,
    wantedWords(formatInterval(built), sayProbability(reportedNew)),
  ]);
}
