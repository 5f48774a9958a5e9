/**
 * Findings about the part become reports. A later report of the same person on the same feature replaces the earlier
 * one; reports of different people stand side by side, for the identification weighs them together.
 */
import {
  type Feature,
  type FeatureFinding,
  notThere,
  type PartKind,
  type Report,
  type ReportValue,
} from "../../knowledge/index.ts";
import type { CaseFacts } from "./case.ts";
import { unitQuestionPrefix } from "./doubted-reading.ts";
import {
  certaintyDoubt,
  otherSays,
  replacedEarlier,
  saidByAnother,
  severalReadings,
  unitNotSaid,
} from "./phrases/understood.ts";
import { sayValue } from "./saying/say-value.ts";
import type { Speaker } from "./speaker.ts";
import { type UnderstoodItem, understoodItem } from "./understood.ts";

/** No more of somebody's words is kept with a fact. */
const longestWords = 200;

export interface FactsApplied {
  readonly facts: CaseFacts;
  readonly items: readonly UnderstoodItem[];
}

/** The case's facts with the findings applied in the order said; findings on features the part has not are dropped. */
export function applyFacts(
  part: PartKind,
  facts: CaseFacts,
  findings: readonly FeatureFinding[],
  speaker: Speaker,
): FactsApplied {
  return findings.reduce<FactsApplied>(
    (applied, finding) => {
      const feature = part.features.find((one) => one.id === finding.feature);
      const isSound = feature !== undefined && suits(feature, finding.value);
      return isSound ? applyFinding(applied, feature, finding, speaker) : applied;
    },
    { facts, items: [] },
  );
}

/** Whether a value is one that the feature can have; a script or an old button may say others. */
function suits(feature: Feature, value: ReportValue): boolean {
  switch (value.kind) {
    case "state":
      return (
        value.state === notThere ||
        (feature.kind === "states" && feature.states.some((state) => state.id === value.state))
      );
    case "weighed-states":
      return feature.kind === "states";
    case "measurement":
      return feature.kind === "measurement";
    case "date":
      return feature.kind === "date";
    case "cannot-tell":
      return true;
  }
}

function applyFinding(
  applied: FactsApplied,
  feature: Feature,
  finding: FeatureFinding,
  speaker: Speaker,
): FactsApplied {
  const { facts } = applied;
  const earlier = reportBy(facts.reports, feature.id, speaker.id);
  const report: Report = {
    feature: feature.id,
    by: speaker.id,
    certainty: finding.value.kind === "cannot-tell" ? 1 : finding.certainty,
    words: finding.words.slice(0, longestWords),
    value: asAskedAgain(facts, feature, finding.value, earlier),
  };
  const value = sayValue(feature, report.value);
  const before = earlier === undefined ? undefined : sayValue(feature, earlier.value);
  const item = understoodItem(feature.name, value, [
    ...doubtsOf(report),
    speaker.isOwner ? undefined : saidByAnother,
    before === undefined || before === value ? undefined : replacedEarlier(before),
    against(feature, facts.reports, speaker, value),
  ]);
  return {
    facts: {
      ...facts,
      reports: withReport(facts.reports, report),
      rechecked: recheckedAfter(facts, feature.id),
    },
    items: [...applied.items.filter((one) => one.label !== feature.name), item],
  };
}

/** A size whose unit was asked back, and that is said once more with the same unit, is meant so. */
function asAskedAgain(
  { open }: CaseFacts,
  { id }: Feature,
  value: ReportValue,
  earlier: Report | undefined,
): ReportValue {
  const was = earlier?.value;
  if (open?.feature !== `${unitQuestionPrefix}${id}`) return value;
  if (value.kind !== "measurement" || was?.kind !== "measurement" || value.unit === null) return value;
  const isSame = value.unit === was.unit && value.value === was.value;
  return isSame ? { ...value, unitConfirmed: true } : value;
}

/** What somebody else said of the feature, when it is not the same; two who disagree are never averaged in silence. */
function against(
  feature: Feature,
  reports: readonly Report[],
  speaker: Speaker,
  value: string,
): string | undefined {
  const others = reports
    .filter((report) => report.feature === feature.id && report.by !== speaker.id)
    .filter((report) => report.value.kind !== "cannot-tell")
    .map((report) => sayValue(feature, report.value));
  const last = others.findLast((other) => other !== value);
  return last === undefined ? undefined : otherSays(last);
}

function reportBy(reports: readonly Report[], feature: string, person: string): Report | undefined {
  return reports.find((report) => report.feature === feature && report.by === person);
}

/** The reports with this one in place of the same person's earlier one on the same feature, or at the end. */
export function withReport(reports: readonly Report[], report: Report): readonly Report[] {
  const isSame = (other: Report) => other.feature === report.feature && other.by === report.by;
  if (!reports.some(isSame)) return [...reports, report];
  return reports.map((other) => (isSame(other) ? report : other));
}

// An answer to a question about a fact that was already told is a second look.
function recheckedAfter(facts: CaseFacts, feature: string): readonly string[] {
  const wasTold = facts.reports.some((report) => report.feature === feature);
  const wasAskedAgain = facts.open?.feature === feature && wasTold;
  return wasAskedAgain && !facts.rechecked.includes(feature)
    ? [...facts.rechecked, feature]
    : facts.rechecked;
}

function doubtsOf(report: Report): readonly (string | undefined)[] {
  return [certaintyDoubt(report.certainty), formDoubt(report.value)];
}

function formDoubt(value: ReportValue): string | undefined {
  if (value.kind === "measurement" && value.unit === null) return unitNotSaid;
  if (value.kind === "date" && value.readings.length > 1) return severalReadings(value.readings.length);
  return undefined;
}
