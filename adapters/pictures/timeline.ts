/**
 * A change over time as a drawing: a ruler with months, the old sightings above it, the new ones below, a value in and SVG
 * out. 320 units wide, so that on the narrowest phone 12 units are 12 pixels; it grows with its place. Ink and paper only,
 * one line weight: grades are told by shape, doubt by a ring, the interval by hatching.
 */
import type { Interval, ProvenanceGrade } from "../../knowledge/index.ts";
import { escapeXml } from "./escape-xml.ts";
import { inkStyle } from "./ink-style.ts";
import { legendHeight, legendRows } from "./timeline-legend.ts";
import { drawnMark, hatching, levelApart, round } from "./timeline-marks.ts";
import { ruler, type TimeScale, timeScale } from "./timeline-ruler.ts";
import { type PlacedMark, stacked } from "./timeline-stack.ts";

export interface TimelineMark {
  readonly side: "old" | "new";
  readonly built: Interval;
  readonly grade: ProvenanceGrade;
  readonly isSuspect: boolean;
  /** Shown when a pointer rests on the mark. */
  readonly words: string;
}

export interface Timeline {
  /** For whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  /** Lines above the drawing, none longer than `timelineLineLength`. */
  readonly heading: readonly string[];
  /** Lines beside each side; empty when that side is not there. */
  readonly old: readonly string[];
  readonly new: readonly string[];
  /** What the ruler shows, in months; widened to whole years. */
  readonly span: Interval;
  readonly marks: readonly TimelineMark[];
  /** Hatched. */
  readonly band?: Interval;
  /** Blocked in on the ruler. */
  readonly month?: Interval;
  /** What the signs mean, in the order shown. */
  readonly legend: readonly { readonly sign: TimelineSign; readonly words: string }[];
}

export type TimelineSign = ProvenanceGrade | "suspect" | "range" | "band" | "month";

/** Characters of 12 units that fit a line; longer lines are cut. */
export const timelineLineLength = 42;

const WIDTH = 320;
const MARGIN = 10;
const LINE = 16;
const RULER_HEIGHT = 34;
/** From the ruler to the middle of the nearest mark, and from the farthest mark to what stands beyond it. */
const NEAREST = 13;
const BEYOND = 11;
const STYLE = inkStyle("timeline", { hasDoubt: false });

/** The drawing as one SVG element, complete in itself. O(marks · height of the tallest stack). */
export function timeline(value: Timeline): string {
  const scale = timeScale(value.span, MARGIN, WIDTH - MARGIN);
  const old = stacked(
    value.marks.filter(({ side }) => side === "old"),
    scale,
  );
  const fresh = stacked(
    value.marks.filter(({ side }) => side === "new"),
    scale,
  );
  const headEnd = MARGIN + value.heading.length * LINE;
  const oldTop = headEnd + (value.heading.length > 0 ? 10 : 0);
  const bandTop = oldTop + value.old.length * LINE + 3;
  const rulerTop = bandTop + stackHeight(old.levels);
  const rulerEnd = rulerTop + RULER_HEIGHT;
  const bandEnd = rulerEnd + stackHeight(fresh.levels);
  const legendTop = bandEnd + value.new.length * LINE + 14;
  const height = legendTop + legendHeight(value.legend) + MARGIN - 4;
  const levelAt = ({ level, side }: PlacedMark): number => {
    const apart = levelApart(side === "old" ? old.levels : fresh.levels);
    const away = NEAREST + (level - 1) * apart;
    return round(side === "old" ? rulerTop - away : rulerEnd + away);
  };
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" class="timeline" role="img">`,
    `<title>${escapeXml(value.title)}</title>`,
    `<desc>${escapeXml(value.description)}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    ...lines(value.heading, MARGIN),
    ...lines(value.old, oldTop),
    ...(value.band ? [hatchedBand(scale, value.band, bandTop, bandEnd)] : []),
    ruler(scale, rulerTop, RULER_HEIGHT, value.month),
    ...[...old.placed, ...fresh.placed].map((mark) => drawnMark(mark, levelAt(mark))),
    ...lines(value.new, bandEnd + 1),
    ...legendRows(value.legend, MARGIN, legendTop),
    "</svg>",
    "",
  ].join("\n");
}

/** A little of the band shows even where nothing was seen. */
function stackHeight(levels: number): number {
  return levels === 0 ? NEAREST : round(NEAREST + (levels - 1) * levelApart(levels) + BEYOND);
}

function lines(texts: readonly string[], top: number): readonly string[] {
  return texts.map((text, index) => {
    const characters = [...text];
    const shown =
      characters.length <= timelineLineLength
        ? text
        : `${characters.slice(0, timelineLineLength - 1).join("")}…`;
    return `<text x="${MARGIN}" y="${top + (index + 1) * LINE - 4}">${escapeXml(shown)}</text>`;
  });
}

function hatchedBand(scale: TimeScale, band: Interval, top: number, bottom: number): string {
  const left = scale.at(band.from);
  const right = Math.max(left + 2, scale.at(band.to));
  return `<path class="ink" d="${hatching(left, right, top, bottom)}"/>`;
}
