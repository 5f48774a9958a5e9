/** Marks that would cover each other are stacked away from the ruler, the earliest nearest to it. */
import type { TimelineMark } from "./timeline.ts";
import { RING, round } from "./timeline-marks.ts";
import type { TimeScale } from "./timeline-ruler.ts";

export interface PlacedMark extends TimelineMark {
  readonly x: number;
  /** Ends of the stretch in which the car was built; equal when that is no longer than a month. */
  readonly from: number;
  readonly to: number;
  /** From 1, next to the ruler. */
  readonly level: number;
}

const HALF_MARK = 5.5;
const MONTH = 1.01;

/** Every mark with its place, and the number of levels. O(marks · levels). */
export function stacked(
  marks: readonly TimelineMark[],
  scale: TimeScale,
): { readonly placed: readonly PlacedMark[]; readonly levels: number } {
  const ends: number[] = [];
  const placed = marks
    .map((mark) => extentOf(mark, scale))
    .sort((one, other) => one.left - other.left)
    .map(({ mark, left, right }): PlacedMark => {
      const free = ends.findIndex((end) => end <= left);
      const level = free < 0 ? ends.length : free;
      ends[level] = right;
      return { ...mark, level: level + 1 };
    });
  return { placed, levels: ends.length };
}

function extentOf(mark: TimelineMark, scale: TimeScale) {
  const { from, to } = mark.built;
  const x = round(scale.at((from + to) / 2));
  const isWide = to - from > MONTH;
  const ends = isWide ? { from: round(scale.at(from)), to: round(scale.at(to)) } : { from: x, to: x };
  const half = mark.isSuspect ? RING + 1 : HALF_MARK;
  return {
    mark: { ...mark, x, ...ends },
    left: Math.min(x - half, ends.from - 1),
    right: Math.max(x + half, ends.to + 1),
  };
}
