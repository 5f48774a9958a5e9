/** "cannot tell", "yes" and "no" get their meaning from the question that is open. */
import {
  type Feature,
  featureById,
  type MeasurementUnit,
  type PartKind,
  type Report,
} from "../../knowledge/index.ts";
import { applyFacts, withReport } from "./apply-facts.ts";
import { type CaseFacts, cannotTells } from "./case.ts";
import { type Change, withNote } from "./change.ts";
import { type DoubtedReading, doubtedReading, unitNamed, unitQuestionPrefix } from "./doubted-reading.ts";
import { cannotTellPart, cannotTellWhat, takenAsCannotTell, yesOrNoToWhat } from "./phrases/commands.ts";
import { readingDropped, unitKept } from "./phrases/question.ts";
import { cannotTellValue, carLabels, leftAsideThen } from "./phrases/understood.ts";
import { sayValue } from "./saying/say-value.ts";
import type { Speaker } from "./speaker.ts";

/** Takes "cannot tell" for the named feature, or for the open question when none was named. */
export function cannotTell(
  part: PartKind | undefined,
  change: Change,
  named: string | undefined,
  speaker: Speaker,
): Change {
  const asked = named ?? change.facts.open?.feature;
  if (asked === undefined) return withNote(change, cannotTellWhat);
  if (asked === "part") return withNote(change, cannotTellPart);
  if (asked.startsWith("car.")) return carUnanswerable(change, asked);
  if (asked.startsWith(unitQuestionPrefix)) return dropReading(part, change);
  const feature = part?.features.find((one) => one.id === asked);
  if (part === undefined || feature === undefined) return withNote(change, cannotTellWhat);
  const finding = {
    part: part.id,
    feature: asked,
    value: { kind: "cannot-tell" },
    certainty: 1,
    words: cannotTellValue,
  } as const;
  const applied = applyFacts(part, change.facts, [finding], speaker);
  return withNote(
    { ...change, facts: applied.facts },
    takenAsCannotTell(feature.name, cannotTells(change.facts) === 0),
  );
}

/**
 * Takes "yes" or "no" to a unit that was proposed, or to what was asked back; any other open question is not one for yes or no, and a
 * nod (a thumb by itself) then asks for no reply.
 */
export function yesOrNo(
  part: PartKind | undefined,
  change: Change,
  said: "yes" | "no",
  speaker: Speaker,
  isNod: boolean,
): Change {
  const { open, inDoubt } = change.facts;
  if (open?.feature.startsWith(unitQuestionPrefix) === true)
    return said === "no" ? denyUnit(part, change) : confirmUnit(part, change);
  if (part === undefined || inDoubt === undefined) return isNod ? change : withNote(change, yesOrNoToWhat);
  return said === "no"
    ? withNote(change, leftAsideThen(inDoubt.words))
    : confirmMeant(part, change, inDoubt, speaker);
}

/** What was asked back is taken as said. */
function confirmMeant(
  part: PartKind,
  change: Change,
  { feature, state, words }: NonNullable<CaseFacts["inDoubt"]>,
  speaker: Speaker,
): Change {
  const finding = { part: part.id, feature, value: { kind: "state", state }, certainty: 1, words } as const;
  const { facts, items } = applyFacts(part, change.facts, [finding], speaker);
  return { ...change, facts, items: [...change.items, ...items] };
}

function carUnanswerable(change: Change, asked: string): Change {
  const known = change.facts.unanswerable;
  const unanswerable = known.includes(asked) ? known : [...known, asked];
  return withNote(
    { ...change, facts: { ...change.facts, unanswerable } },
    takenAsCannotTell(carAsked(asked), cannotTells(change.facts) === 0),
  );
}

/** What a question about the car asks for, by its id. */
export function carAsked(asked: string): string {
  return asked === "car.built" ? carLabels.built : asked.slice("car.".length);
}

/** "No" to another unit than the one said: it was meant as it was said. */
function denyUnit(part: PartKind | undefined, change: Change): Change {
  const doubted = doubtedHere(part, change);
  const said = doubted?.reading.value.unit ?? null;
  if (doubted === undefined || said === null) return dropReading(part, change);
  return withUnit(change, doubted, said);
}

function confirmUnit(part: PartKind | undefined, change: Change): Change {
  const doubted = doubtedHere(part, change);
  return doubted === undefined ? change : withUnit(change, doubted, doubted.unit);
}

function withUnit(change: Change, { feature, reading }: DoubtedHere, unit: MeasurementUnit): Change {
  const value = { ...reading.value, unit, unitConfirmed: true };
  const report: Report = { ...reading.report, value };
  const reports = withReport(change.facts.reports, report);
  return withNote({ ...change, facts: { ...change.facts, reports } }, unitKept(sayValue(feature, value)));
}

function dropReading(part: PartKind | undefined, change: Change): Change {
  const doubted = doubtedHere(part, change);
  if (doubted === undefined) return change;
  const { feature, reading } = doubted;
  const reports = change.facts.reports.filter((report) => report !== reading.report);
  const dropped: Change = { ...change, facts: { ...change.facts, reports } };
  return withNote(dropped, readingDropped(sayValue(feature, reading.value)));
}

interface DoubtedHere {
  readonly feature: Feature;
  readonly unit: MeasurementUnit;
  readonly reading: DoubtedReading;
}

/** The feature, the proposed unit and the reading that the open question is about. */
function doubtedHere(part: PartKind | undefined, change: Change): DoubtedHere | undefined {
  const { open, reports } = change.facts;
  const unit = unitNamed(open?.unit);
  const id = open?.feature.slice(unitQuestionPrefix.length);
  const feature = part === undefined || id === undefined ? undefined : featureById(part, id);
  if (feature === undefined || unit === undefined) return undefined;
  const reading = doubtedReading(reports, feature.id, unit);
  return reading && { feature, unit, reading };
}
