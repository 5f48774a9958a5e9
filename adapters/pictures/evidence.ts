/**
 * Evidence as a balance: each fact in words on the centre line, under it a bar to the right when it speaks for the first name, to the left when
 * for its rival, as long as its weight. The left is hatched and in the second ink, so that doubt is seen without colour too. 320 units wide.
 */
import { escapeXml } from "./escape-xml.ts";
import { inkStyle } from "./ink-style.ts";
import { textLines, textWidth } from "./letter-widths.ts";
import { hatching, round } from "./timeline-marks.ts";

export interface Evidence {
  /** For whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  /** Stands over the bars to the right. */
  readonly first: string;
  /** Stands over the bars to the left. */
  readonly rival: string;
  /** In the order shown. `bans`: decimal bans, positive for the first; `strength` in a word or two. */
  readonly items: readonly { readonly words: string; readonly bans: number; readonly strength: string }[];
  /** What the ends and the middle of each side are worth, at one and at two bans. */
  readonly scale: { readonly oneBan: string; readonly twoBans: string };
}

const WIDTH = 320;
const MARGIN = 10;
const CENTRE = WIDTH / 2;
/** Two bans, a hundred to one, fill a side; a heavier fact is drawn broken off. */
const FULL_BANS = 2;
const HALF = CENTRE - MARGIN;
const LINE = 15;
const BAR = 11;
const GAP = 11;
const SHORTEST = 2;
const ARROW = 12;
const STYLE = inkStyle("evidence", { hasDoubt: true });

/** The drawing as one SVG element, complete in itself. */
export function evidenceBalance(value: Evidence): string {
  const rival = textLines(value.rival, HALF - ARROW - 8, { mostLines: 3, isBold: true });
  const first = textLines(value.first, HALF - ARROW - 8, { mostLines: 3, isBold: true });
  const rowsTop = MARGIN + Math.max(rival.length, first.length) * LINE + 8;
  const rows: string[] = [];
  let top = rowsTop + GAP;
  for (const item of value.items) {
    const row = rowOf(item, top);
    rows.push(row.drawn);
    top = row.end + GAP;
  }
  const height = top + LINE + 16;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" class="evidence" role="img">`,
    `<title>${escapeXml(value.title)}</title>`,
    `<desc>${escapeXml(value.description)}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    ...rival.map((line, index) => headLine(line, index, "left")),
    ...first.map((line, index) => headLine(line, index, "right")),
    `<path class="ink" d="M${MARGIN + 6} ${MARGIN + 4}l-6 5l6 5M${WIDTH - MARGIN - 6} ${MARGIN + 4}l6 5l-6 5"/>`,
    `<path class="ink" d="M${MARGIN} ${rowsTop}H${WIDTH - MARGIN}M${CENTRE} ${rowsTop}V${top}"/>`,
    ...rows,
    scaleLine(value.scale, top),
    "</svg>",
    "",
  ].join("\n");
}

function headLine(line: string, index: number, side: "left" | "right"): string {
  const y = MARGIN + (index + 1) * LINE - 2;
  const place = side === "left" ? `x="${MARGIN + ARROW}"` : `x="${WIDTH - MARGIN - ARROW}" text-anchor="end"`;
  return `<text class="name" ${place} y="${y}">${escapeXml(line)}</text>`;
}

/** The words on paper over the centre line, the bar below, its strength on the side the bar leaves empty. */
function rowOf({ words, bans, strength }: Evidence["items"][number], top: number) {
  const lines = textLines(words, WIDTH - 2 * MARGIN, { mostLines: 4 });
  const barTop = top + lines.length * LINE + 2;
  const drawn = [
    ...lines.map((line, index) => wordsOnCentre(line, top + index * LINE)),
    barOf(bans, barTop),
    bans < 0
      ? `<text x="${CENTRE + 8}" y="${barTop + 10}">${escapeXml(strength)}</text>`
      : `<text x="${CENTRE - 8}" y="${barTop + 10}" text-anchor="end">${escapeXml(strength)}</text>`,
  ].join("\n");
  return { drawn, end: barTop + BAR };
}

function wordsOnCentre(line: string, top: number): string {
  const width = round(textWidth(line) + 8);
  const ground = `<rect class="paper" x="${round(CENTRE - width / 2)}" y="${top - 1}" width="${width}" height="${LINE + 1}"/>`;
  return `${ground}<text x="${CENTRE}" y="${top + LINE - 4}" text-anchor="middle">${escapeXml(line)}</text>`;
}

function barOf(bans: number, top: number): string {
  const length = round(Math.max(SHORTEST, Math.min(1, Math.abs(bans) / FULL_BANS) * HALF));
  const bottom = top + BAR;
  const bar =
    bans < 0
      ? `<path class="ink doubt" d="${hatching(CENTRE - length, CENTRE, top, bottom)}"/>`
      : `<rect class="solid" x="${CENTRE}" y="${top}" width="${length}" height="${BAR}"/>`;
  if (Math.abs(bans) <= FULL_BANS) return bar;
  const end = bans < 0 ? MARGIN + 12 : WIDTH - MARGIN - 12;
  const broken = `<path class="paper" d="M${end - 5} ${bottom + 1}l5 -${BAR + 2}h5l-5 ${BAR + 2}z"/>`;
  return bar + broken;
}

function scaleLine({ oneBan, twoBans }: Evidence["scale"], top: number): string {
  const [farLeft, left, right, farRight] = [MARGIN, CENTRE - HALF / 2, CENTRE + HALF / 2, WIDTH - MARGIN];
  const ticks = [farLeft, left, CENTRE, right, farRight].map((x) => `M${x} ${top}v5`).join("");
  const label = (x: number, anchor: string, words: string): string =>
    `<text x="${x}" y="${top + 18}" text-anchor="${anchor}">${escapeXml(words)}</text>`;
  return [
    `<path class="ink" d="M${farLeft} ${top}H${farRight}${ticks}"/>`,
    label(farLeft, "start", twoBans),
    label(left, "middle", oneBan),
    label(right, "middle", oneBan),
    label(farRight, "end", twoBans),
  ].join("\n");
}
