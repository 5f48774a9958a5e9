/** Instants at which an interval is sampled, so that one formula serves a known day, a year and an unknown date. */
import type { Interval } from "../calendar/interval.ts";

/** Instants in months and their weights, which sum to one. */
export interface TimeGrid {
  readonly times: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Midpoints of quarter-month steps (interval of at most three months) or month steps, each weighed by the yearly
 * production of its year. A year without a figure weighs as the mean year; no figures at all: even.
 * `interval`: finite, in months; an empty one is sampled at its start.
 */
export function timeGrid(interval: Interval, production?: ReadonlyMap<number, number>): TimeGrid {
  const length = Math.max(0, interval.to - interval.from);
  const step = length <= 3 ? 0.25 : 1;
  const size = Math.max(1, Math.ceil(length / step - 1e-6));
  const times = Float64Array.from({ length: size }, (_, k) => interval.from + ((k + 0.5) * length) / size);
  const made = times.map((time) => madeIn(production, Math.floor(time / 12)));
  const total = made.reduce((sum, cars) => sum + cars, 0);
  return { times, weights: made.map((cars) => (total > 0 ? cars / total : 1 / size)) };
}

function madeIn(production: ReadonlyMap<number, number> | undefined, year: number): number {
  if (!production || production.size === 0) return 1;
  const known = production.get(year);
  if (known !== undefined) return known;
  let total = 0;
  for (const cars of production.values()) total += cars;
  return total / production.size;
}
