/**
 * Words that go on from what was told before: the unit of a size alone ("mm"), another value in its place ("no, sorry,
 * 47 inches", "actually rough"), or the same once more. By themselves they name no feature, and would be left aside.
 */
import type {
  FeatureFinding,
  MessageReading,
  ReadingContext,
  Report,
  ReportValue,
} from "../../knowledge/index.ts";
import type { Case } from "./case.ts";
import { unitQuestionPrefix } from "./doubted-reading.ts";
import type { Knowledge } from "./knowledge.ts";
import { readWords } from "./read-words.ts";

const bareUnit = /^\W*(?:(?:in|its|it is|they are|sorry|i meant) )?([a-z]+)\W*$/i;
const correcting =
  /\b(?:yes|no|sorry|i meant?|meant|rather|correction|make (?:that|it)|actually|should be|typo|oops)\b/gi;

/** So many facts back a correction is looked for. */
const mostFactsBack = 6;

/** The message read as going on from the person's own facts, the latest first; undefined when it is no such thing. */
export function readOn(
  knowledge: Knowledge,
  text: string,
  context: ReadingContext,
  kept: Case | undefined,
  person: string,
  spoken: MessageReading,
): MessageReading | undefined {
  if (kept === undefined || spoken.findings.length > 0 || spoken.intents.some(isWish)) return undefined;
  for (const report of toldBy(kept, person)) {
    const again = goingOn(text, report, kept);
    if (again === undefined) continue;
    const read = readWords(knowledge, again, { ...context, askedFeature: report.feature });
    const findings = read.findings.filter(
      (finding) => isOfKind(finding, report) && !isOfNoUnit(finding, again),
    );
    if (findings.length > 0) return { ...read, findings, intents: [], isOpaque: false };
  }
  return undefined;
}

function toldBy({ facts }: Case, person: string): readonly Report[] {
  const own = facts.reports.filter((report) => report.by === person && report.value.kind !== "cannot-tell");
  return own.toReversed().slice(0, mostFactsBack);
}

/** What the words say in full of this fact; undefined when they do not go on from it. */
function goingOn(text: string, { feature, value }: Report, { facts }: Case): string | undefined {
  const full = completed(text, value);
  if (full !== undefined) return full;
  const rest = text.replace(correcting, " ").trim();
  const isUnitAsked = facts.open?.feature === `${unitQuestionPrefix}${feature}`;
  if (rest === text.trim() && !isUnitAsked) return undefined;
  const isFigure = /\d/.test(rest);
  if (isFigure !== (value.kind !== "state") || !/[\p{L}\p{N}]/u.test(rest)) return undefined;
  // "1180 mm; no, 1181": the unit stays what it was.
  const isBare = /\d$/.test(rest) && value.kind === "measurement" && value.unit !== null;
  return isBare ? `${rest} ${value.unit}` : rest;
}

/** "420" and then "mm": the size in full; undefined when a unit was said before or none is said now. */
function completed(text: string, value: ReportValue): string | undefined {
  const unit = bareUnit.exec(text)?.[1];
  return unit === undefined || value.kind !== "measurement" || value.unit !== null
    ? undefined
    : `${value.value} ${unit}`;
}

// A word that is no unit leaves the figure as bare as it was.
function isOfKind({ feature, value, words }: FeatureFinding, report: Report): boolean {
  const isSame = feature === report.feature && value.kind === report.value.kind;
  return isSame && (value.kind !== "measurement" || value.unit !== null || report.words !== words);
}

const noUnitOfOurs =
  /\d\s*(?:tons?|tonnes?|stones?|m|met(?:er|re)s?|f(?:ee|oo)?t|yards?|lit(?:er|re)s?|degrees?)\b/iu;

// "40 tons" is no bare 40.
function isOfNoUnit({ value }: FeatureFinding, text: string): boolean {
  return value.kind === "measurement" && value.unit === null && noUnitOfOurs.test(text);
}

function isWish({ kind }: { readonly kind: string }): boolean {
  return kind !== "yes" && kind !== "no" && kind !== "small-talk";
}
