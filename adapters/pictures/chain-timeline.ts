/**
 * Several kinds that followed each other as a drawing: one ruler, under it a lane a kind with the cars seen, and between each lane and the
 * next a strip of years on which the interval of the change is hatched. 320 units wide, ink and paper only, as `timeline`.
 */
import type { ChainChart } from "../../bot/index.ts";
import type { Interval } from "../../knowledge/index.ts";
import { escapeXml } from "./escape-xml.ts";
import { inkStyle } from "./ink-style.ts";
import { textLines } from "./letter-widths.ts";
import { legendHeight, legendRows } from "./timeline-legend.ts";
import { drawnMark, hatching, levelApart, round } from "./timeline-marks.ts";
import { ruler, type TimeScale, timeScale } from "./timeline-ruler.ts";
import { stacked } from "./timeline-stack.ts";

const WIDTH = 320;
const MARGIN = 10;
const LINE = 15;
const RULER_HEIGHT = 34;
const STRIP = 14;
/** From a name to the middle of the first mark under it, and from the last mark to what comes next. */
const NEAREST = 11;
const BEYOND = 12;
const GAP = 8;
const STYLE = inkStyle("chain", { hasDoubt: true });

interface Drawn {
  readonly lines: readonly string[];
  readonly end: number;
}

/** The drawing as one SVG element, complete in itself. O(marks · height of the tallest stack). */
export function chainTimeline(chart: ChainChart): string {
  const scale = timeScale(chart.span, MARGIN, WIDTH - MARGIN);
  const head = texts(chart.heading, MARGIN);
  const rulerTop = head.end + GAP;
  const drawn: string[] = [];
  let top = rulerTop + RULER_HEIGHT + GAP;
  chart.lanes.forEach((one, at) => {
    const ofLane = lane(one, top, scale);
    const change = chart.changes[at];
    const ofChange = change === undefined ? { lines: [], end: ofLane.end } : strip(change, ofLane.end, scale);
    drawn.push(...ofLane.lines, ...ofChange.lines);
    top = ofChange.end + GAP;
  });
  const height = top + legendHeight(chart.legend) + MARGIN - 4;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" class="chain" role="img">`,
    `<title>${escapeXml(chart.title)}</title>`,
    `<desc>${escapeXml(chart.description)}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    ...head.lines,
    ruler(scale, rulerTop, RULER_HEIGHT, undefined),
    ...drawn,
    ...legendRows(chart.legend, MARGIN, top),
    "</svg>",
    "",
  ].join("\n");
}

function texts(words: readonly string[], top: number, isBold = false): Drawn {
  const broken = words.flatMap((line) => textLines(line, WIDTH - 2 * MARGIN, { mostLines: 2, isBold }));
  const mark = isBold ? ' class="name"' : "";
  return {
    lines: broken.map(
      (line, index) =>
        `<text${mark} x="${MARGIN}" y="${top + (index + 1) * LINE - 4}">${escapeXml(line)}</text>`,
    ),
    end: top + broken.length * LINE,
  };
}

function lane({ name, marks }: ChainChart["lanes"][number], top: number, scale: TimeScale): Drawn {
  const label = texts([name], top, true);
  const { placed, levels } = stacked(
    marks.map((mark) => ({ ...mark, side: "old" as const })),
    scale,
  );
  const apart = levelApart(levels);
  const lines = placed.map((mark) => drawnMark(mark, round(label.end + NEAREST + (mark.level - 1) * apart)));
  const end = label.end + (levels === 0 ? 0 : round(NEAREST + (levels - 1) * apart + BEYOND));
  return { lines: [...label.lines, ...lines], end };
}

/** The years once more, the interval hatched on them, and its dates in words. */
function strip({ interval, words }: ChainChart["changes"][number], top: number, scale: TimeScale): Drawn {
  const bottom = top + STRIP;
  const years = yearsOf(scale).map((at) => `M${round(scale.at(at))} ${top}V${bottom}`);
  const outline = `M${MARGIN} ${top}H${WIDTH - MARGIN}V${bottom}H${MARGIN}z`;
  const said = texts([words], bottom + 2);
  return {
    lines: [
      `<path class="ink" d="${outline}${years.join("")}"/>`,
      `<path class="ink" d="${band(interval, scale, top, bottom)}"/>`,
      ...said.lines,
    ],
    end: said.end,
  };
}

const CLOSEST_YEARS = 4;

function yearsOf(scale: TimeScale): readonly number[] {
  if (12 * scale.perMonth < CLOSEST_YEARS) return [];
  return Array.from({ length: (scale.to - scale.from) / 12 - 1 }, (_, at) => scale.from + 12 * (at + 1));
}

function band({ from, to }: Interval, scale: TimeScale, top: number, bottom: number): string {
  const left = scale.at(from);
  return hatching(left, Math.max(left + 2, scale.at(to)), top, bottom);
}
