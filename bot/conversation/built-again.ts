/**
 * The build date put right while something else is asked: "actually no, march 1978", "it is really from 1950, sorry". Where a size is asked
 * for the reader would take the year for its figure.
 */
import {
  type CarFinding,
  featureById,
  type MessageReading,
  partById,
  type ReadingContext,
  readMessage,
} from "../../knowledge/index.ts";
import type { Case } from "./case.ts";
import type { Knowledge } from "./knowledge.ts";

const correcting =
  /\b(?:no|sorry|i meant?|meant|rather|correction|make (?:that|it)|actually|really|should be|typo|oops|wait|hang on)\b/giu;
const month = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";
const dated = new RegExp(String.raw`^(?<before>.*?)(?<date>(?:${month}\.?,? )?(?:19|20)\d\d)\W*$`, "iu");
const ofTheBuild = /\b(?:built|build|from|made|finished|completed|left the (?:works|factory))\W*$/iu;

/** The message as a new build date of the speaker's car; undefined when it is no such thing. */
export function builtAgain(
  knowledge: Knowledge,
  text: string,
  context: ReadingContext,
  kept: Case | undefined,
  person: string,
  spoken: MessageReading,
): MessageReading | undefined {
  if (kept?.owner !== person || kept.facts.car.built === undefined) return undefined;
  if (spoken.car.length > 0 || !spoken.findings.every(isBareFigure) || isDateAsked(knowledge, context))
    return undefined;
  const rest = text.replace(correcting, " ");
  const { before = "", date } = dated.exec(rest)?.groups ?? {};
  if (rest === text || date === undefined || !isOfBuild(knowledge, kept, before, date)) return undefined;
  const car = readMessage(`the car was built ${date}`, knowledge.lexicon, context).car.filter(isBuilt);
  return car.length === 0 ? undefined : { ...spoken, findings: [], car, leftAside: [], isOpaque: false };
}

/** A year alone may be a size: it counts where such things were made then, and no size like it was told. */
function isOfBuild({ handbook }: Knowledge, { facts }: Case, before: string, date: string): boolean {
  if (ofTheBuild.test(before)) return true;
  if (/[\p{L}\p{N}]/u.test(before)) return false;
  if (/\p{L}/u.test(date)) return true;
  const year = Number(date);
  const wasMade = handbook.cars.models.some(
    ({ from, to }) => Number(from.slice(0, 4)) <= year && year <= Number(to.slice(0, 4)),
  );
  const isSize = facts.reports.some(({ value }) => value.kind === "measurement" && value.value >= 1000);
  return wasMade && !isSize;
}

function isBareFigure({ value }: MessageReading["findings"][number]): boolean {
  return value.kind === "measurement" && value.unit === null;
}

function isDateAsked({ handbook }: Knowledge, { part: id, askedFeature }: ReadingContext): boolean {
  const part = id === undefined ? undefined : partById(handbook, id);
  const feature =
    part === undefined || askedFeature === undefined ? undefined : featureById(part, askedFeature);
  return feature?.kind === "date";
}

function isBuilt({ about }: CarFinding): boolean {
  return about === "built";
}
