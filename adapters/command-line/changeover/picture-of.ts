/** The findings of one change, or of one variant, as a timeline. */
import { formatInterval, type Interval, provenanceGrades, sayProbability } from "../../../knowledge/index.ts";
import { type Timeline, type TimelineSign, timelineLineLength } from "../../pictures/timeline.ts";
import { wrapped } from "../../terminal/wrap.ts";
import { type ChangeoverFindings, isSuspect, type Judged } from "./findings.ts";
import { nameOf, sideName } from "./names.ts";
import { oneLine } from "./one-line.ts";
import { builtWords, gradeSigns, gradeWords, headings, notAsBuiltWords, pictureWords } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

const MOST_NAME_LINES = 2;

export function pictureOf(question: ChangeoverQuestion, findings: ChangeoverFindings): Timeline {
  const { judged } = findings;
  const title = titleOf(question, findings);
  const said = findings.kind === "change" ? datesOf(findings) : [];
  const band = findings.kind === "change" ? findings.change.interval : undefined;
  const month = findings.kind === "change" ? findings.month?.month : undefined;
  const labelled = (side: "old" | "new", words: (name: string) => string): readonly string[] =>
    question[side].length === 0
      ? []
      : wrapped(
          question.chosen === "alone" ? sideName(question, side) : words(sideName(question, side)),
          timelineLineLength,
        ).slice(0, MOST_NAME_LINES);
  const counted = pictureWords.sightings(judged.length);
  return {
    title,
    description: [title, ...said, counted, ...suspectsOf(judged)].join("; "),
    heading: [title, ...said].flatMap((line) => wrapped(line, timelineLineLength)),
    old: labelled("old", pictureWords.oldLabel),
    new: labelled("new", pictureWords.newLabel),
    span: spanOf(judged, band),
    marks: judged.map((one) => ({
      side: one.isNew ? "new" : "old",
      built: one.sighting.built,
      grade: one.sighting.grade,
      isSuspect: isSuspect(one),
      words: wordsOf(question, one),
    })),
    ...(band === undefined ? {} : { band }),
    ...(month === undefined ? {} : { month }),
    legend: legendOf(judged, { band, month }),
  };
}

function titleOf(question: ChangeoverQuestion, { kind }: ChangeoverFindings): string {
  const part = question.part?.name;
  return kind === "change" ? headings.change(part) : headings.oneVariant(part);
}

function datesOf(findings: Extract<ChangeoverFindings, { readonly kind: "change" }>): readonly string[] {
  const { month, change } = findings;
  return [
    ...(month ? [pictureWords.monthLine(formatInterval(month.month))] : []),
    pictureWords.intervalLine(formatInterval(change.interval)),
  ];
}

export function suspectsOf(judged: readonly Judged[]): readonly string[] {
  const ids = judged.filter(isSuspect).map(({ sighting }) => oneLine(sighting.id));
  return ids.length === 0 ? [] : [`${pictureWords.suspect}: ${ids.join(", ")}`];
}

export function wordsOf(question: ChangeoverQuestion, { sighting, notAsBuilt }: Judged): string {
  const { id, variant, built, grade } = sighting;
  const doubt = notAsBuiltWords(sayProbability(notAsBuilt));
  return [
    oneLine(id),
    nameOf(question, variant),
    builtWords(formatInterval(built)),
    gradeWords[grade],
    doubt,
  ].join(", ");
}

export function spanOf(judged: readonly Judged[], band: Interval | undefined): Interval {
  const stretches = [...judged.map(({ sighting }) => sighting.built), ...(band ? [band] : [])];
  return stretches.reduce((whole, { from, to }) => ({
    from: Math.min(whole.from, from),
    to: Math.max(whole.to, to),
  }));
}

/** Only what is in the drawing. */
export function legendOf(
  judged: readonly Judged[],
  shown: { readonly band: Interval | undefined; readonly month: Interval | undefined },
): Timeline["legend"] {
  const grades = provenanceGrades
    .filter((grade) => judged.some(({ sighting }) => sighting.grade === grade))
    .map((grade) => ({ sign: grade, words: gradeSigns[grade] }));
  const entry = (sign: TimelineSign, words: string, isShown: boolean) => (isShown ? [{ sign, words }] : []);
  return [
    ...grades,
    ...entry("suspect", pictureWords.suspect, judged.some(isSuspect)),
    ...entry(
      "range",
      pictureWords.range,
      judged.some(({ sighting: { built } }) => built.to - built.from > 1.01),
    ),
    ...entry("band", pictureWords.interval, shown.band !== undefined),
    ...entry("month", pictureWords.month, shown.month !== undefined),
  ];
}
