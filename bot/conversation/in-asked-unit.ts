/** A figure without a unit, in answer to a question that asked in inches or pounds: it is read in the unit that was asked for. */
import { featureById, type MessageReading } from "../../knowledge/index.ts";
import { unitNamed } from "./doubted-reading.ts";
import { findPart, type Knowledge } from "./knowledge.ts";
import { askedUnit } from "./saying/said-size.ts";

/** `asked`: the feature whose question is answered, of this part. */
export function inAskedUnit(
  knowledge: Knowledge,
  partId: string | null,
  asked: string | undefined,
  reading: MessageReading,
): MessageReading {
  const { units } = knowledge;
  const part = findPart(knowledge, partId);
  const feature = part === undefined || asked === undefined ? undefined : featureById(part, asked);
  if (units !== "imperial" || feature?.kind !== "measurement") return reading;
  const unit = unitNamed(askedUnit(units, feature.unit));
  if (unit === undefined || unit === feature.unit) return reading;
  const findings = reading.findings.map((finding) => {
    const { value } = finding;
    const isBare = finding.feature === asked && value.kind === "measurement" && value.unit === null;
    return isBare ? { ...finding, value: { ...value, unit } } : finding;
  });
  return { ...reading, findings };
}
