/** What one car alone says of its part, worked out once and kept: its build mix, sales and prior. */
import { type Interval, midpoint } from "../calendar/interval.ts";
import type { CarDescription } from "../evidence/car-description.ts";
import type { Goal } from "../evidence/goal.ts";
import { spansFor } from "./as-built-mix.ts";
import { type BuildMix, buildMix } from "./build-mix.ts";
import type { Classes } from "./classes.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { buildInterval } from "./eras.ts";
import { isFittedAtAll } from "./fitted-at-all.ts";
import { changesFor } from "./learnt-change.ts";
import { mountingFits } from "./mounting-fit.ts";
import { priorOf } from "./prior.ts";
import { markSpans, saleLeft } from "./sale-spans.ts";
import { timeGrid } from "./time-grid.ts";

export interface CarGround {
  readonly built: Interval;
  readonly mix: BuildMix;
  /** Whether the works fitted any kind of the part to such a car then; where not, the mix says nothing. */
  readonly isFitted: boolean;
  /** When a part of each way but the works and used ones can have been marked, by variant. */
  readonly serviceMarks: readonly (readonly Interval[])[];
  readonly prior: Float64Array;
  readonly logPrior: Float64Array;
  /** Rows of the questions about dates and the car while no mark was read, by question: a cache. */
  readonly questionRows: Map<string, Float64Array>;
  /** The classes of each goal asked: a cache. */
  readonly classes: Map<Goal, Classes>;
}

/** Cars kept in the cache: the years, trims and markets of one question table and a little more. */
const KEPT = 64;

/**
 * The ground of a car. A loose part has no build date, no trim, and counts as known to be replaced; whatever else
 * is unknown is averaged over. Remembered by what matters of the description.
 */
export function carGround(compiled: CompiledPart, described: CarDescription): CarGround {
  const car: CarDescription = described.isLoosePart
    ? { isLoosePart: true, grade: "known-replaced" }
    : described;
  const key = JSON.stringify([
    car.model,
    car.trim,
    car.market,
    car.grade,
    car.built?.from,
    car.built?.to,
    car.isLoosePart,
  ]);
  const known = compiled.grounds.get(key);
  if (known) return known;
  const ground = workOut(compiled, car);
  const oldest = compiled.grounds.keys().next();
  if (compiled.grounds.size >= KEPT && !oldest.done) compiled.grounds.delete(oldest.value);
  compiled.grounds.set(key, ground);
  return ground;
}

function workOut(compiled: CompiledPart, car: CarDescription): CarGround {
  const { part, space } = compiled;
  const built = buildInterval(compiled.handbook, car);
  const grid = timeGrid(built, compiled.yearlyProduction);
  const spans = spansFor(compiled.fleet.spans, car);
  const mix = buildMix(grid, { ...compiled.fleet, spans, changes: changesFor(compiled.changes, car) });
  const isFitted = isFittedAtAll(grid, spans);
  const earliestSale = car.built ? midpoint(built) : compiled.productionSpan.from;
  const prior = priorOf({
    part,
    completeness: compiled.handbook.cover.completeness,
    space,
    grade: car.grade ?? "history-unknown",
    asBuilt: mix.average,
    amongAllCars: compiled.allCars.average,
    sales: compiled.sales,
    earliestSale,
    fits: car.isLoosePart ? new Float64Array(part.variants.length).fill(1) : mountingFits(part, mix.average),
  });
  const serviceMarks = compiled.sales.map((spans) => {
    const left = saleLeft(spans, earliestSale);
    return markSpans(left.length > 0 ? left : spans);
  });
  return {
    built,
    mix,
    isFitted,
    serviceMarks,
    prior,
    logPrior: prior.map(Math.log),
    questionRows: new Map(),
    classes: new Map(),
  };
}
