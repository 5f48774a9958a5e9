/** "cannot tell", "yes" and "no" get their meaning from the question that is open. */
import type { PartKind, Report } from "../../knowledge/index.ts";
import { applyFacts } from "./apply-facts.ts";
import type { CaseFacts } from "./case.ts";
import { type Change, withNote } from "./change.ts";
import { cannotTellPart, cannotTellWhat, takenAsCannotTell, yesOrNoToWhat } from "./phrases/commands.ts";
import { readingDropped, unitKept } from "./phrases/question.ts";
import { cannotTellValue, carLabels } from "./phrases/understood.ts";
import { sayValue } from "./say-value.ts";
import type { Speaker } from "./speaker.ts";

/** What a question about a unit is called; the feature's id stands behind it. */
export const unitQuestionPrefix = "unit:";

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
  if (asked.startsWith(unitQuestionPrefix)) return dropReading(part, change, speaker);
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
  return withNote({ ...change, facts: applied.facts }, takenAsCannotTell(feature.name));
}

/** Takes "yes" or "no" to a unit that was proposed; any other open question is not one for yes or no. */
export function yesOrNo(
  part: PartKind | undefined,
  change: Change,
  said: "yes" | "no",
  speaker: Speaker,
): Change {
  const { open } = change.facts;
  if (open === null || !open.feature.startsWith(unitQuestionPrefix)) return withNote(change, yesOrNoToWhat);
  return said === "no" ? dropReading(part, change, speaker) : confirmUnit(part, change);
}

function carUnanswerable(change: Change, asked: string): Change {
  const known = change.facts.unanswerable;
  const unanswerable = known.includes(asked) ? known : [...known, asked];
  const label = asked === "car.built" ? carLabels.built : asked.slice("car.".length);
  return withNote({ ...change, facts: { ...change.facts, unanswerable } }, takenAsCannotTell(label));
}

function confirmUnit(part: PartKind | undefined, change: Change): Change {
  const { open } = change.facts;
  const feature = part?.features.find((one) => `${unitQuestionPrefix}${one.id}` === open?.feature);
  const unit = open?.unit;
  if (feature === undefined || unit === undefined) return change;
  let kept = "";
  const reports = change.facts.reports.map((report): Report => {
    if (report.feature !== feature.id || report.value.kind !== "measurement") return report;
    const value = { ...report.value, unit: unit as typeof report.value.unit, unitConfirmed: true };
    kept = sayValue(feature, value);
    return { ...report, value };
  });
  return withNote({ ...change, facts: { ...change.facts, reports } }, unitKept(kept));
}

function dropReading(part: PartKind | undefined, change: Change, speaker: Speaker): Change {
  const id = change.facts.open?.feature.slice(unitQuestionPrefix.length);
  const feature = part?.features.find((one) => one.id === id);
  const dropped = change.facts.reports.findLast((report) => report.feature === id);
  if (feature === undefined || dropped === undefined) return change;
  const facts: CaseFacts = {
    ...change.facts,
    reports: change.facts.reports.filter(
      (report) => report.feature !== id || (!speaker.isOwner && report.by !== speaker.id),
    ),
  };
  return withNote({ ...change, facts }, readingDropped(sayValue(feature, dropped.value)));
}
