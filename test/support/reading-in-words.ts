/** A reading written as short lines, so that tables of tests can be read by a restorer. */
import { formatInterval } from "../../knowledge/calendar/date-text.ts";
import type { ReportValue } from "../../knowledge/evidence/report.ts";
import type {
  CarFinding,
  FeatureFinding,
  Intent,
  MessageReading,
} from "../../knowledge/language/message-reading.ts";

/** "door-mirror.screws two", "rear-spoiler.width 1180±0.5 mm", "… not rough" for a state that is excluded. */
export function findingsInWords(reading: MessageReading): readonly string[] {
  return reading.findings.map(findingInWords);
}

export function findingInWords({ part, feature, value }: FeatureFinding): string {
  return `${part ?? "?"}.${feature} ${valueInWords(value)}`;
}

export function valueInWords(value: ReportValue): string {
  if (value.kind === "state") return value.state;
  if (value.kind === "cannot-tell") return "cannot tell";
  if (value.kind === "weighed-states") return Object.keys(value.weights).join("|");
  if (value.kind === "date")
    return value.readings.map(({ interval }) => formatInterval(interval)).join(" | ");
  return `${Number(value.value.toFixed(4))}±${Number(value.halfWidth.toFixed(4))} ${value.unit ?? "?"}`;
}

export function carInWords(reading: MessageReading): readonly string[] {
  return reading.car.map(carFindingInWords);
}

export function carFindingInWords(finding: CarFinding): string {
  if (finding.about === "built") return `built ${formatInterval(finding.interval)}`;
  if (finding.about === "model-year") return `model year ${finding.year}`;
  if (finding.about === "grade") return finding.grade;
  if (finding.about === "loose-part") return "loose";
  if (finding.about === "serial") return `serial ${finding.masked}`;
  return `${finding.about} ${finding.id}`;
}

export function intentsInWords(reading: MessageReading): readonly string[] {
  return reading.intents.map(intentInWords);
}

function intentInWords(intent: Intent): string {
  if (intent.kind === "goal") return intent.goal;
  if (intent.kind === "compare") return `compare ${intent.variants.join(" and ")}`;
  if (intent.kind === "switch-case") return `switch-case ${intent.number}`;
  return "feature" in intent && intent.feature !== undefined
    ? `${intent.kind} ${intent.feature}`
    : intent.kind;
}
