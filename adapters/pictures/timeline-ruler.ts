/** The ruler of a timeline: months as short ticks on both edges, years right across with their figures. */
import type { Interval } from "../../knowledge/index.ts";
import { round } from "./timeline-marks.ts";

export interface TimeScale {
  /** Whole years, in months. */
  readonly from: number;
  readonly to: number;
  readonly perMonth: number;
  /** Place of an instant, cut at the ends. */
  readonly at: (instant: number) => number;
}

const MONTH_TICK = 4;
const QUARTER_TICK = 7;
/** Ticks closer than this run together on a phone. */
const CLOSEST_TICKS = 2.4;
const ROOM_FOR_YEAR = 32;
/** Its name stands beside the tick then, not between two. */
const ROOM_FOR_YEARS = 36;

/** Whole years, at least one; the width from `left` to `right` shared evenly among the months. */
export function timeScale(span: Interval, left: number, right: number): TimeScale {
  const from = 12 * Math.floor(span.from / 12);
  const to = Math.max(from + 12, 12 * Math.ceil(span.to / 12));
  const perMonth = (right - left) / (to - from);
  const at = (instant: number): number => left + (Math.min(to, Math.max(from, instant)) - from) * perMonth;
  return { from, to, perMonth, at };
}

export function ruler(scale: TimeScale, top: number, height: number, month: Interval | undefined): string {
  const bottom = top + height;
  const [left, right] = [scale.at(scale.from), scale.at(scale.to)];
  const strokes = [`M${round(left)} ${top}H${round(right)}V${bottom}H${round(left)}z`];
  for (let at = scale.from + 1; at < scale.to; at += 1) {
    const tick = tickOf(at, scale, height);
    if (tick === 0) continue;
    const x = round(scale.at(at));
    strokes.push(tick === height ? `M${x} ${top}v${height}` : `M${x} ${top}v${tick}M${x} ${bottom}v-${tick}`);
  }
  return [
    `<rect class="open" x="${round(left)}" y="${top}" width="${round(right - left)}" height="${height}"/>`,
    ...(month ? [blockedIn(scale, top, bottom, month)] : []),
    `<path class="ink" d="${strokes.join("")}"/>`,
    ...years(scale, top + height / 2 + 4),
  ].join("\n");
}

/** Length of a tick: the whole height for a year that is named, 0 for a month there is no room for. */
function tickOf(at: number, scale: TimeScale, height: number): number {
  if (at % 12 === 0) {
    if ((at / 12 - scale.from / 12) % yearsApart(scale) === 0) return height;
    return scale.perMonth * 12 >= CLOSEST_TICKS ? QUARTER_TICK : 0;
  }
  if (at % 3 === 0) return scale.perMonth * 3 >= CLOSEST_TICKS ? MONTH_TICK + 1 : 0;
  return scale.perMonth >= CLOSEST_TICKS ? MONTH_TICK - 1 : 0;
}

function yearsApart(scale: TimeScale): number {
  if (12 * scale.perMonth >= ROOM_FOR_YEAR) return 1;
  return [2, 5, 10, 20].find((years) => years * 12 * scale.perMonth >= ROOM_FOR_YEARS) ?? 50;
}

/** Each named year in the middle of its stretch, or at its tick when several years share a name. */
function years(scale: TimeScale, baseline: number): readonly string[] {
  const apart = yearsApart(scale);
  const named: string[] = [];
  for (let at = scale.from; at < scale.to; at += 12 * apart) {
    const isAlone = apart === 1;
    const room = scale.at(at + 12 * apart) - scale.at(at);
    if (room < (isAlone ? ROOM_FOR_YEAR : ROOM_FOR_YEARS) - 1) continue;
    const x = round(isAlone ? scale.at(at + 6) : scale.at(at) + 3);
    named.push(`<text x="${x}" y="${baseline}"${isAlone ? ' text-anchor="middle"' : ""}>${at / 12}</text>`);
  }
  return named;
}

function blockedIn(scale: TimeScale, top: number, bottom: number, month: Interval): string {
  const x = round(scale.at(month.from));
  const width = round(Math.max(2, scale.at(month.to) - scale.at(month.from)));
  const block = (y: number) =>
    `<rect class="solid" x="${x}" y="${y}" width="${width}" height="${QUARTER_TICK}"/>`;
  return block(top) + block(bottom - QUARTER_TICK);
}
