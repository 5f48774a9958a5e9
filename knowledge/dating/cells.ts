// A window of build dates cut into cells of equal length. Sightings live in cells, a changeover lies on a border
// between them, so that no date ever ties with it. Production per cell is kept as whole numbers: their sums are
// exact, and so no order of arrival and no mirror image can change a last digit.
import type { Interval } from "../calendar/interval.ts";

/** Cell k covers [from + k·cell, from + (k+1)·cell) months; border k is its left edge, border `cells` the end. */
export interface CellGrid {
  /** Beginning of the window, at the turn of a month. */
  readonly from: number;
  /** Length of a cell in months. */
  readonly cell: number;
  readonly cells: number;
  /** Relative production of each cell, whole and at least 1. */
  readonly cars: Float64Array;
}

/** The cells lo … hi − 1. */
export interface CellRange {
  readonly lo: number;
  readonly hi: number;
}

/** Share of the best year in whole steps; fine enough for any yearly figure of a small works. */
const FULL_YEAR = 65_536;
/** Longest window, in months, with cells of a quarter and of half a month. */
const QUARTER_UP_TO = 72;
const HALF_UP_TO = 144;
const DUST = 1e-6;

/**
 * The grid over a window, widened to whole months. Cells of ¼ month up to 6 years, ½ up to 12, 1 beyond, unless
 * `cell` says otherwise. `production`: cars by calendar year; a year without a figure counts as the mean year.
 * Undefined for a window that is empty, endless or longer than a century.
 */
export function cellGrid(
  window: Interval,
  production?: ReadonlyMap<number, number>,
  cell?: number,
): CellGrid | undefined {
  const from = Math.floor(window.from + DUST);
  const to = Math.ceil(window.to - DUST);
  const months = to - from;
  if (!(months > 0) || months > 1200) return undefined;
  const length = cell ?? usualCell(months);
  const cells = Math.round(months / length);
  return { from, cell: length, cells, cars: wholeProduction(from, length, cells, production) };
}

function usualCell(months: number): number {
  if (months <= QUARTER_UP_TO) return 0.25;
  return months <= HALF_UP_TO ? 0.5 : 1;
}

function wholeProduction(
  from: number,
  cell: number,
  cells: number,
  production: ReadonlyMap<number, number> | undefined,
): Float64Array {
  const figures = [...(production?.values() ?? [])];
  const mean = figures.length > 0 ? figures.reduce((sum, cars) => sum + cars, 0) / figures.length : 1;
  const greatest = Math.max(mean, ...figures, Number.MIN_VALUE);
  return Float64Array.from({ length: cells }, (_, index) => {
    const year = Math.floor((from + (index + 0.5) * cell) / 12);
    const cars = production?.get(year) ?? mean;
    return Math.max(1, Math.round((cars / greatest) * FULL_YEAR));
  });
}

/**
 * The cells an interval touches, cut at the window; an interval no longer than a cell belongs to the one that holds
 * its middle. Undefined when it lies outside the window.
 */
export function cellsOf(grid: CellGrid, interval: Interval): CellRange | undefined {
  const from = (interval.from - grid.from) / grid.cell;
  const to = (interval.to - grid.from) / grid.cell;
  if (to - from <= 1 + DUST) {
    const lo = Math.floor((from + to) / 2 + DUST);
    return lo >= 0 && lo < grid.cells ? { lo, hi: lo + 1 } : undefined;
  }
  const lo = Math.max(0, Math.floor(from + DUST));
  const hi = Math.min(grid.cells, Math.ceil(to - DUST));
  return lo < hi ? { lo, hi } : undefined;
}

/** The instant (in months) of a border, which need not be a whole one. */
export function instantOf(grid: CellGrid, border: number): number {
  return grid.from + border * grid.cell;
}

/** An instant of the window: a border that lies beyond either end counts as that end. */
export function instantWithin(grid: CellGrid, border: number): number {
  return instantOf(grid, Math.min(grid.cells, Math.max(0, border)));
}

/** From half a cell before one border to half a cell after another, cut at the window: no car was built before or after it. */
export function stretchAround(grid: CellGrid, first: number, last: number): Interval {
  return { from: instantWithin(grid, first - 0.5), to: instantWithin(grid, last + 0.5) };
}
