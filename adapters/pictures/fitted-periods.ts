/**
 * When each version of a part was fitted, as rows over one ruler: a bar a period, its ends cut off where the date is sure and frayed where
 * it is not; hatched, when one version gave way to the next; what members saw, as marks. The same hand as the timeline of a changeover.
 */
import type { Interval, ProvenanceGrade } from "../../knowledge/index.ts";
import { escapeXml } from "./escape-xml.ts";
import { hatching, markShape, ringAround, round } from "./timeline-marks.ts";
import { ruler, type TimeScale } from "./timeline-ruler.ts";

export interface FittedBar {
  readonly span: Interval;
  readonly isStartSure: boolean;
  readonly isEndSure: boolean;
}

export interface FittedRow {
  readonly name: string;
  readonly bars: readonly FittedBar[];
  readonly marks: readonly {
    readonly built: Interval;
    readonly grade: ProvenanceGrade;
    readonly isSuspect: boolean;
    readonly words: string;
  }[];
}

export interface FittedPeriods {
  /** For whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  readonly rows: readonly FittedRow[];
  /** When one row gave way to another, hatched across both; `from` and `to` are places in `rows`. */
  readonly changes: readonly {
    readonly from: number;
    readonly to: number;
    readonly interval: Interval;
    readonly words: string;
  }[];
}

const WIDTH = 320;
const MARGIN = 10;
const RULER_TOP = 6;
const RULER_HEIGHT = 26;
const NAME = 15;
const BAR = 10;
const MARKS = 16;
const GAP = 9;
const FRAY = 5;
const LONGEST_NAME = 42;
const STYLE = [
  ".fitted .ink{fill:none;stroke:#1c1b19;stroke-width:1.2;stroke-linecap:round;stroke-linejoin:round}",
  ".fitted .open,.fitted .ink.open{fill:#fdfcf8}",
  ".fitted .solid,.fitted .ink.solid,.fitted text{fill:#1c1b19}",
  ".fitted .bar{fill:#0b5563}",
  ".fitted text{font:12px sans-serif}",
  "@media (prefers-color-scheme:dark){.fitted .ink{stroke:#e9e6de}.fitted .open,.fitted .ink.open{fill:#1d1c1a}",
  ".fitted .solid,.fitted .ink.solid,.fitted text{fill:#e9e6de}.fitted .bar{fill:#7fc4cf}}",
  "@media print{.fitted .ink{stroke:#000}.fitted .open,.fitted .ink.open{fill:#fff}",
  ".fitted .solid,.fitted .ink.solid,.fitted text,.fitted .bar{fill:#000}}",
].join("");

/** One SVG element, complete in itself; undefined when no row has a period or a mark. O(rows and marks). */
export function fittedPeriods(value: FittedPeriods): string | undefined {
  const spans = value.rows.flatMap(({ bars, marks }) => [
    ...bars.map(({ span }) => span),
    ...marks.map(({ built }) => built),
  ]);
  if (spans.length === 0) return undefined;
  const scale = scaleOf(spans);
  const tops = topsOf(value.rows);
  const height = (tops.at(-1) ?? 0) + MARGIN;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" class="fitted" role="img">`,
    `<title>${escapeXml(value.title)}</title>`,
    `<desc>${escapeXml(value.description)}</desc>`,
    `<style>${STYLE}</style>`,
    ruler(scale, RULER_TOP, RULER_HEIGHT, undefined),
    ...value.changes.map(({ from, to, interval, words }) => {
      const top = (tops[Math.min(from, to)] ?? 0) + NAME;
      const bottom = (tops[Math.max(from, to)] ?? 0) + NAME + BAR;
      const left = scale.at(interval.from);
      const right = Math.max(left + 2, scale.at(interval.to));
      return `<g><title>${escapeXml(words)}</title><path class="ink" d="${hatching(left, right, top, bottom)}"/></g>`;
    }),
    ...value.rows.map((row, index) => rowAt(row, tops[index] ?? 0, scale)),
    "</svg>",
    "",
  ].join("\n");
}

/** Where each row begins, and after the last where the drawing ends. */
function topsOf(rows: readonly FittedRow[]): readonly number[] {
  const tops = [RULER_TOP + RULER_HEIGHT + GAP];
  for (const { marks } of rows) {
    const height = NAME + BAR + (marks.length > 0 ? MARKS : 0) + GAP;
    tops.push((tops.at(-1) ?? 0) + height);
  }
  return tops;
}

function rowAt({ name, bars, marks }: FittedRow, top: number, scale: TimeScale): string {
  const shown = name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
  const middle = top + NAME + BAR / 2;
  return [
    `<text x="${MARGIN}" y="${top + NAME - 4}">${escapeXml(shown)}</text>`,
    ...bars.map((bar) => `<path class="bar" d="${barPath(bar, middle, scale)}"/>`),
    ...marks.map(({ built, grade, isSuspect, words }) => {
      const x = round(scale.at((built.from + built.to) / 2));
      const y = middle + BAR / 2 + MARKS / 2;
      return `<g><title>${escapeXml(words)}</title>${isSuspect ? ringAround(x, y) : ""}${markShape(grade, x, y)}</g>`;
    }),
  ].join("\n");
}

/** A bar whose unsure ends are notched like torn paper. */
function barPath({ span, isStartSure, isEndSure }: FittedBar, middle: number, scale: TimeScale): string {
  const left = round(scale.at(span.from));
  const right = round(Math.max(left + 3, scale.at(span.to)));
  const [top, bottom] = [middle - BAR / 2, middle + BAR / 2];
  const fray = round(Math.min(FRAY, (right - left) / 3));
  const end = isEndSure
    ? `V${bottom}`
    : `l${-fray} ${BAR / 4}l${fray} ${BAR / 4}l${-fray} ${BAR / 4}L${right} ${bottom}`;
  const start = isStartSure
    ? `V${top}`
    : `l${fray} ${-BAR / 4}l${-fray} ${-BAR / 4}l${fray} ${-BAR / 4}L${left} ${top}`;
  return `M${left} ${top}H${right}${end}H${left}${start}z`;
}

function scaleOf(spans: readonly Interval[]): TimeScale {
  const from = 12 * Math.floor(Math.min(...spans.map((span) => span.from)) / 12);
  const last = 12 * Math.ceil(Math.max(...spans.map((span) => span.to)) / 12);
  const to = Math.max(from + 12, last);
  const perMonth = (WIDTH - 2 * MARGIN) / (to - from);
  const at = (instant: number): number => MARGIN + (Math.min(to, Math.max(from, instant)) - from) * perMonth;
  return { from, to, perMonth, at };
}
