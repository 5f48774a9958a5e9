/** What the signs of a timeline mean: two to a line, so that they fit the narrowest phone. */
import { escapeXml } from "./escape-xml.ts";
import type { TimelineSign } from "./timeline.ts";
import { hatching, markShape, RING, ringAround } from "./timeline-marks.ts";

type Legend = readonly { readonly sign: TimelineSign; readonly words: string }[];

const LINE = 19;
const COLUMN = 164;

export function legendHeight(legend: Legend): number {
  return Math.ceil(legend.length / 2) * LINE;
}

export function legendRows(legend: Legend, left: number, top: number): readonly string[] {
  return legend.map(({ sign, words }, index) => {
    const x = left + RING + (index % 2) * COLUMN;
    const y = top + Math.floor(index / 2) * LINE + LINE / 2;
    return `${legendSign(sign, x, y)}<text x="${x + 14}" y="${y + 4}">${escapeXml(words)}</text>`;
  });
}

function legendSign(sign: TimelineSign, x: number, y: number): string {
  if (sign === "suspect") return ringAround(x, y);
  if (sign === "band") return `<path class="ink" d="${hatching(x - 8, x + 8, y - 6, y + 6)}"/>`;
  if (sign === "month") return `<rect class="solid" x="${x - 4}" y="${y - 3}" width="8" height="6"/>`;
  if (sign === "range")
    return `<path class="ink" d="M${x - 8} ${y}h16M${x - 8} ${y - 3}v6M${x + 8} ${y - 3}v6"/>`;
  return markShape(sign, x, y);
}
