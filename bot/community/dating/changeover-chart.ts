/** The findings of a change as a timeline, and the same as a table for whoever cannot see it. */
import {
  formatInterval,
  type Interval,
  type PartKind,
  provenanceGrades,
  sayProbability,
  variantById,
} from "../../../knowledge/index.ts";
import * as words from "../../conversation/phrases/changeovers.ts";
import { listed } from "../../conversation/phrases/grammar.ts";
import type { ChangeoverChart } from "../../conversation/saying/changeover-chart.ts";
import type { Block, TableBlock } from "../../reply.ts";
import { type ChangeFindings, isSuspect, type JudgedSighting } from "./changeover-findings.ts";

export function timelineBlock(part: PartKind, findings: ChangeFindings): Block {
  return { kind: "timeline", chart: chartOf(part, findings), table: tableOf(part, findings.judged) };
}

function chartOf(part: PartKind, findings: ChangeFindings): ChangeoverChart {
  const { succession, change, month, judged, seen } = findings;
  const title = words.changeTitle(part.name);
  const said = [
    ...(month === undefined ? [] : [words.pictureWords.monthLine(formatInterval(month.month))]),
    words.pictureWords.intervalLine(words.wholeMonths(change.interval, succession.setting.window)),
  ];
  const suspects = judged.filter(isSuspect).map(({ id }) => id);
  return {
    title,
    description: [
      title,
      ...said,
      words.pictureWords.sightings(seen),
      ...(suspects.length === 0 ? [] : [words.labelledFor(words.pictureWords.suspect, listed(suspects))]),
    ].join("; "),
    heading: [title, ...said],
    old: words.pictureWords.oldLabel(nameOf(part, succession.old)),
    new: words.pictureWords.newLabel(nameOf(part, succession.new)),
    span: spanOf(judged, change.interval),
    marks: judged.map((one) => ({
      side: one.isNew ? "new" : "old",
      built: one.built,
      grade: one.grade,
      isSuspect: isSuspect(one),
      words: wordsOf(part, one),
    })),
    band: change.interval,
    ...(month === undefined ? {} : { month: month.month }),
    legend: legendOf(judged, month !== undefined),
  };
}

export function nameOf(part: PartKind, variant: string): string {
  return variantById(part, variant)?.name ?? variant;
}

export function wordsOf(
  part: PartKind,
  { id, variant, built, grade, count, notAsBuilt }: JudgedSighting,
): string {
  return [
    count === 1 ? id : words.sightingsCounted(count),
    nameOf(part, variant),
    words.builtWords(formatInterval(built)),
    words.gradeWords[grade],
    words.notAsBuiltWords(sayProbability(notAsBuilt)),
  ].join(", ");
}

export function spanOf(judged: readonly JudgedSighting[], band: Interval): Interval {
  return judged.reduce<Interval>(
    (whole, { built }) => ({ from: Math.min(whole.from, built.from), to: Math.max(whole.to, built.to) }),
    band,
  );
}

export function legendOf(judged: readonly JudgedSighting[], hasMonth: boolean): ChangeoverChart["legend"] {
  const { pictureWords, gradeSigns } = words;
  const shown = (
    isShown: boolean,
    sign: ChangeoverChart["legend"][number]["sign"],
    said: string,
  ): ChangeoverChart["legend"] => (isShown ? [{ sign, words: said }] : []);
  return [
    ...provenanceGrades.flatMap((grade) =>
      shown(
        judged.some((one) => one.grade === grade),
        grade,
        gradeSigns[grade],
      ),
    ),
    ...shown(judged.some(isSuspect), "suspect", pictureWords.suspect),
    ...shown(
      judged.some(({ built }) => built.to - built.from > 1.01),
      "range",
      pictureWords.range,
    ),
    ...shown(true, "band", pictureWords.interval),
    ...shown(hasMonth, "month", pictureWords.month),
  ];
}

/** More rows than these are a row a year. */
const mostRows = 24;

/** Cars of one build date and kind in a row, or of one year where that would be long, with the worst doubt among them. */
export function tableOf(part: PartKind, judged: readonly JudgedSighting[]): TableBlock {
  const closely = rowsOf(part, judged, ({ built }) => built);
  const rows = closely.length <= mostRows ? closely : rowsOf(part, judged, ({ built }) => yearOf(built));
  return { kind: "table", caption: words.changeTitle(part.name), head: words.timelineHead, rows };
}

function yearOf({ from }: Interval): Interval {
  const january = 12 * Math.floor(from / 12);
  return { from: january, to: january + 12 };
}

function rowsOf(
  part: PartKind,
  judged: readonly JudgedSighting[],
  dated: (one: JudgedSighting) => Interval,
): TableBlock["rows"] {
  const rows = new Map<string, { readonly cells: readonly [string, string]; count: number; doubt: number }>();
  for (const one of judged) {
    const cells = [formatInterval(dated(one)), nameOf(part, one.variant)] as const;
    const row = rows.get(cells.join("|")) ?? { cells, count: 0, doubt: 0 };
    row.count += one.count;
    row.doubt = Math.max(row.doubt, one.notAsBuilt);
    rows.set(cells.join("|"), row);
  }
  return [...rows.values()].map(({ cells, count, doubt }) => [
    ...cells,
    String(count),
    sayProbability(doubt),
  ]);
}
