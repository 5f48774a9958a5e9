/**
 * Words that go on from the last size that was told: its unit alone ("mm"), or another figure in its place ("no, sorry,
 * 47 inches"), or the same once more. By themselves they name no feature, and would be left aside.
 */
import type { MessageReading, ReadingContext, Report, ReportValue } from "../../knowledge/index.ts";
import { unitQuestionPrefix } from "./answer-open-question.ts";
import type { Case } from "./case.ts";
import type { Knowledge } from "./knowledge.ts";
import { readWords } from "./read-words.ts";

const bareUnit = /^\W*(?:(?:in|its|it is|they are|sorry|i meant) )?([a-z]+)\W*$/i;
const correcting =
  /\b(yes|no|sorry|meant|mean|rather|correction|make (that|it)|actually|should be|typo|oops)\b/i;

/** The message read as going on from the person's last size; undefined when it is no such thing. */
export function readOnLastSize(
  knowledge: Knowledge,
  text: string,
  context: ReadingContext,
  kept: Case | undefined,
  person: string,
  spoken: MessageReading,
): MessageReading | undefined {
  const open = kept?.facts.open?.feature ?? "";
  const isUnitAsked = open.startsWith(unitQuestionPrefix);
  const asked = isUnitAsked ? open.slice(unitQuestionPrefix.length) : undefined;
  const last = kept?.facts.reports.findLast(
    (report) => report.by === person && isSize(report) && (asked === undefined || report.feature === asked),
  );
  if (last === undefined || spoken.findings.length > 0) return undefined;
  const isAgain = /\d/.test(text) && (isUnitAsked || correcting.test(text));
  const again = completed(text, last.value) ?? (isAgain ? text : undefined);
  if (again === undefined) return undefined;
  const read = readWords(knowledge, again, { ...context, askedFeature: last.feature });
  const findings = read.findings.filter(
    ({ feature, value }) => feature === last.feature && (isAgain || !isUnitless(value)),
  );
  return findings.length === 0 ? undefined : { ...read, findings, intents: [], isOpaque: false };
}

function isSize({ value }: Report): boolean {
  return value.kind === "measurement";
}

function isUnitless(value: ReportValue): boolean {
  return value.kind === "measurement" && value.unit === null;
}

/** "420" and then "mm": the size in full; undefined when a unit was said before or none is said now. */
function completed(text: string, value: ReportValue): string | undefined {
  const unit = bareUnit.exec(text)?.[1];
  return unit === undefined || value.kind !== "measurement" || value.unit !== null
    ? undefined
    : `${value.value} ${unit}`;
}
