/** The signs of a timeline: one shape a grade, told apart without colour and at a few units' size. */
import type { ProvenanceGrade } from "../../knowledge/index.ts";
import { escapeXml } from "./escape-xml.ts";
import type { PlacedMark } from "./timeline-stack.ts";

/** Radius of the ring round a suspect. */
export const RING = 7;
const LEVEL = 14;
/** More share the height of so many. */
const MOST_LEVELS = 24;
const HATCH = 5;
const SHORT_RANGE = 18;

const shapes: Readonly<Record<ProvenanceGrade, (x: number, y: number) => string>> = {
  "documented-from-new": (x, y) => `<rect class="ink solid" x="${x - 3}" y="${y - 3}" width="6" height="6"/>`,
  "one-owner": (x, y) => `<path class="ink open" d="M${x - 4.5} ${y}l4.5 -4.5l4.5 4.5l-4.5 4.5z"/>`,
  "history-unknown": (x, y) => `<path class="ink open" d="M${x} ${y - 4}l4.2 7h-8.4z"/>`,
  "known-replaced": (x, y) => `<path class="ink" d="M${x - 3.5} ${y - 3.5}l7 7M${x + 3.5} ${y - 3.5}l-7 7"/>`,
};

export function markShape(grade: ProvenanceGrade, x: number, y: number): string {
  return shapes[grade](x, y);
}

export function ringAround(x: number, y: number): string {
  return `<circle class="ink open" cx="${x}" cy="${y}" r="${RING}"/>`;
}

/**
 * From one mark to the next above or below it, of so many levels: a month in which hundreds of cars were seen is a column whose marks overlap,
 * and no tower that a telephone cannot show and Telegram refuses (a photograph's width and height together, 10,000).
 */
export function levelApart(levels: number): number {
  return LEVEL * Math.min(1, MOST_LEVELS / Math.max(1, levels));
}

/** Outline and slanting lines of a rectangle; drawn out rather than as a pattern, whose id would clash with another drawing's. */
export function hatching(left: number, right: number, top: number, bottom: number): string {
  const strokes: string[] = [
    `M${round(left)} ${round(top)}H${round(right)}V${round(bottom)}H${round(left)}z`,
  ];
  for (let sum = left + top + HATCH; sum < right + bottom; sum += HATCH) {
    const high = Math.max(top, sum - right);
    const low = Math.min(bottom, sum - left);
    strokes.push(`M${round(sum - high)} ${round(high)}L${round(sum - low)} ${round(low)}`);
  }
  return strokes.join("");
}

export function round(length: number): number {
  return Math.round(length * 100) / 100;
}

/** A sighting whole: its sign, the stretch of its date where that is not sure, a ring where it is a suspect. */
export function drawnMark({ x, from, to, grade, isSuspect, words }: PlacedMark, y: number): string {
  const range =
    to > from ? `<path class="ink" d="M${from} ${y}H${to}M${from} ${y - 3}v6M${to} ${y - 3}v6"/>` : "";
  const around = isSuspect ? ringAround(x, y) : `<circle class="paper" cx="${x}" cy="${y}" r="5.5"/>`;
  // A range too short to show on both sides of its mark is drawn across it.
  const ground = to - from > SHORT_RANGE ? range + around : around + range;
  return `<g class="sighting"><title>${escapeXml(words)}</title>${ground}${markShape(grade, x, y)}</g>`;
}
