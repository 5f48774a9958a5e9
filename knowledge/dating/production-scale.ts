// Time counted in cars built instead of months: sightings fall evenly over cars, not over the calendar, and the
// estimators of a last sighting need them even.
import type { Interval } from "../calendar/interval.ts";
import { type CellGrid, cellGrid } from "./cells.ts";

/** Both ways between an instant in months and the share of the window's cars built by then, 0 … 1. */
export interface ProductionScale {
  readonly window: Interval;
  readonly builtBy: (instant: number) => number;
  readonly instantAt: (built: number) => number;
}

/** The scale of a window, by months; undefined for an empty or endless one. Years without a figure count as the mean. */
export function productionScale(
  window: Interval,
  production?: ReadonlyMap<number, number>,
): ProductionScale | undefined {
  const grid = cellGrid(window, production, 1);
  if (!grid) return undefined;
  const running = runningCars(grid);
  const all = running[grid.cells] as number;
  return {
    window: { from: grid.from, to: grid.from + grid.cells },
    builtBy: (instant) => {
      const months = Math.min(grid.cells, Math.max(0, instant - grid.from));
      const cell = Math.min(grid.cells - 1, Math.floor(months));
      return ((running[cell] as number) + (months - cell) * (grid.cars[cell] as number)) / all;
    },
    instantAt: (built) => {
      const cars = Math.min(1, Math.max(0, built)) * all;
      let cell = 0;
      while (cell < grid.cells - 1 && (running[cell + 1] as number) < cars) cell += 1;
      return grid.from + cell + (cars - (running[cell] as number)) / (grid.cars[cell] as number);
    },
  };
}

function runningCars(grid: CellGrid): Float64Array {
  const running = new Float64Array(grid.cells + 1);
  grid.cars.forEach((cars, cell) => {
    running[cell + 1] = (running[cell] as number) + cars;
  });
  return running;
}
