/**
 * When the works fitted each kind of a part: one ruler with months, under it a bar a kind; where an end is not sure, or a change is known only
 * as an interval, the bar is hatched and in the second ink. What was seen on cars may stand under each bar. 320 units wide.
 */
import type { Interval, ProvenanceGrade } from "../../knowledge/index.ts";
import { escapeXml } from "./escape-xml.ts";
import { inkStyle } from "./ink-style.ts";
import { textLines, textWidth } from "./letter-widths.ts";
import type { TimelineMark } from "./timeline.ts";
import { hatching, levelApart, markShape, ringAround, round } from "./timeline-marks.ts";
import { ruler, type TimeScale, timeScale } from "./timeline-ruler.ts";
import { stacked } from "./timeline-stack.ts";

export interface FittedPeriods {
  /** For whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  /** One a kind, in the order shown; at least one with a period. */
  readonly rows: readonly {
    readonly name: string;
    /** The times in words. */
    readonly times: string;
    /** Months; an end that is sure has no length. */
    readonly periods: readonly { readonly begins: Interval; readonly ends: Interval }[];
    readonly marks?: readonly Omit<TimelineMark, "side">[];
  }[];
  /** When a car was built: blocked in on the ruler, and a line past every bar. */
  readonly car?: Interval;
  readonly legend: readonly { readonly sign: FittedSign; readonly words: string }[];
}

export type FittedSign = "fitted" | "unsure" | "car" | "suspect" | ProvenanceGrade;

type Row = FittedPeriods["rows"][number];

const WIDTH = 320;
const MARGIN = 10;
const LINE = 15;
const BAR = 10;
const GAP = 16;
const RULER_HEIGHT = 34;
const YEAR_TICK = 4;
const LEGEND_LINE = 19;
/** From the left of a sign to its words, and from the words to the next sign. */
const SIGN = 22;
const APART = 14;
const STYLE = inkStyle("fitted-periods", { hasDoubt: true });

/** The drawing as one SVG element, complete in itself. O(marks · height of the tallest stack). */
export function fittedPeriods(value: FittedPeriods): string {
  const title = textLines(value.title, WIDTH - 2 * MARGIN, { mostLines: 3 });
  const rulerTop = MARGIN + title.length * LINE + 8;
  const scale = timeScale(spanOf(value), MARGIN, WIDTH - MARGIN);
  const rows: string[] = [];
  let top = rulerTop + RULER_HEIGHT + 8;
  for (const row of value.rows) {
    const { drawn, end } = rowOf(row, top, scale, value.car);
    rows.push(drawn);
    top = end + GAP;
  }
  const legend = legendOf(value.legend, top - 6);
  const height = legend.end + 8;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" class="fitted-periods" role="img">`,
    `<title>${escapeXml(value.title)}</title>`,
    `<desc>${escapeXml(value.description)}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    ...title.map(
      (line, index) => `<text x="${MARGIN}" y="${baseline(MARGIN, index)}">${escapeXml(line)}</text>`,
    ),
    ruler(scale, rulerTop, RULER_HEIGHT, value.car),
    ...rows,
    ...legend.drawn,
    "</svg>",
    "",
  ].join("\n");
}

function baseline(top: number, line: number): number {
  return top + (line + 1) * LINE - 4;
}

function spanOf({ rows, car }: FittedPeriods): Interval {
  const stretches = [
    ...rows.flatMap(({ periods }) => periods.flatMap(({ begins, ends }) => [begins, ends])),
    ...rows.flatMap(({ marks = [] }) => marks.map(({ built }) => built)),
    ...(car === undefined ? [] : [car]),
  ];
  return {
    from: Math.min(...stretches.map(({ from }) => from)),
    to: Math.max(...stretches.map(({ to }) => to)),
  };
}

/** Name and times in words, the bar on a line with the years, the marks of what was seen below. */
function rowOf({ name, times, periods, marks = [] }: Row, top: number, scale: TimeScale, car?: Interval) {
  const names = textLines(name, WIDTH - 2 * MARGIN, { mostLines: 2, isBold: true });
  const words = textLines(times, WIDTH - 2 * MARGIN, { mostLines: 3 });
  const barTop = top + (names.length + words.length) * LINE + 4;
  const bottom = barTop + BAR;
  const { placed, levels } = stacked(
    marks.map((mark) => ({ ...mark, side: "old" as const })),
    scale,
  );
  const apart = levelApart(levels);
  const end = bottom + (levels === 0 ? YEAR_TICK : round(levels * apart) + 4);
  const drawn = [
    ...names.map(
      (line, index) =>
        `<text class="name" x="${MARGIN}" y="${baseline(top, index)}">${escapeXml(line)}</text>`,
    ),
    ...words.map(
      (line, index) =>
        `<text x="${MARGIN}" y="${baseline(top, names.length + index)}">${escapeXml(line)}</text>`,
    ),
    yearLine(scale, bottom),
    ...periods.map((period) => barOf(period, barTop, scale)),
    ...(car === undefined ? [] : [carLine(scale, car, barTop, bottom)]),
    ...placed.map(({ x, level, grade, isSuspect, words: said }) => {
      const y = round(bottom + level * apart - 3);
      const ring = isSuspect ? ringAround(x, y) : "";
      return `<g class="sighting"><title>${escapeXml(said)}</title>${ring}${markShape(grade, x, y)}</g>`;
    }),
  ].join("\n");
  return { drawn, end };
}

function yearLine(scale: TimeScale, y: number): string {
  const years = Array.from(
    { length: (scale.to - scale.from) / 12 + 1 },
    (_, index) => scale.from + 12 * index,
  );
  const apart = 12 * scale.perMonth;
  const ticks = apart < YEAR_TICK ? [scale.from, scale.to] : years;
  return `<path class="ink" d="M${MARGIN} ${y}H${WIDTH - MARGIN}${ticks.map((at) => `M${round(scale.at(at))} ${y}v${YEAR_TICK}`).join("")}"/>`;
}

/** Solid where it is sure, hatched at the ends; hatched throughout when the two ends meet. */
function barOf({ begins, ends }: Row["periods"][number], top: number, scale: TimeScale): string {
  const bottom = top + BAR;
  const hatched = ({ from, to }: Interval): string => {
    const [left, right] = [scale.at(from), scale.at(to)];
    return right - left < 1 ? "" : `<path class="ink doubt" d="${hatching(left, right, top, bottom)}"/>`;
  };
  if (begins.to >= ends.from) return hatched({ from: begins.from, to: ends.to });
  const left = round(scale.at(begins.to));
  const width = round(Math.max(1.2, scale.at(ends.from) - left));
  const sure = `<rect class="solid" x="${left}" y="${top}" width="${width}" height="${BAR}"/>`;
  return [sure, hatched(begins), hatched(ends)].join("");
}

function carLine(scale: TimeScale, car: Interval, top: number, bottom: number): string {
  const x = round(scale.at((car.from + car.to) / 2));
  const ground = `<rect class="paper" x="${round(x - 1.8)}" y="${top - 4}" width="3.6" height="${BAR + 8}"/>`;
  return `${ground}<path class="ink" d="M${x} ${top - 4}V${bottom + 4}"/>`;
}

/** As many entries on a line as fit. */
function legendOf(entries: FittedPeriods["legend"], top: number) {
  const drawn: string[] = [];
  let [x, y] = [MARGIN, top];
  for (const { sign, words } of entries) {
    const width = SIGN + textWidth(words);
    if (x > MARGIN && x + width > WIDTH - MARGIN) [x, y] = [MARGIN, y + LEGEND_LINE];
    drawn.push(`${legendSign(sign, x, y)}<text x="${x + SIGN}" y="${y + 10}">${escapeXml(words)}</text>`);
    x = round(x + width + APART);
  }
  return { drawn, end: y + LEGEND_LINE };
}

function legendSign(sign: FittedSign, x: number, y: number): string {
  if (sign === "fitted") return `<rect class="solid" x="${x}" y="${y + 1}" width="16" height="${BAR}"/>`;
  if (sign === "car") return `<path class="ink" d="M${x + 8} ${y - 2}v${BAR + 6}"/>`;
  if (sign === "suspect") return ringAround(x + 8, y + 6);
  if (sign !== "unsure") return markShape(sign, x + 8, y + 6);
  return `<path class="ink doubt" d="${hatching(x, x + 16, y + 1, y + 1 + BAR)}"/>`;
}
