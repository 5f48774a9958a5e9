/** The stretches of time that a handbook speaks of: when cars were made, and when a part could be made at all. */

import { parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import { intersect } from "../calendar/interval.ts";
import type { CarDescription } from "../evidence/car-description.ts";
import type { Handbook } from "../handbook/schema.ts";

/** Parts may be marked this long before the first car was finished, in months. */
const MARKED_AHEAD = 24;

/** From the first instant of `from` to the last instant of `to`; undefined for a text that names no date. */
export function spanOfTexts(from: string, to: string): Interval | undefined {
  const start = parseDateText(from);
  const end = parseDateText(to);
  return start && end && start.from < end.to ? { from: start.from, to: end.to } : undefined;
}

/** The whole production of the marque, all models together. */
export function productionSpan(handbook: Handbook): Interval {
  const spans = handbook.cars.models
    .map((model) => spanOfTexts(model.from, model.to))
    .filter((span) => span !== undefined);
  const edited = parseDateText(handbook.cover.edited)?.to ?? 0;
  if (spans.length === 0) return { from: edited - 12, to: edited };
  return {
    from: Math.min(...spans.map((span) => span.from)),
    to: Math.max(...spans.map((span) => span.to)),
  };
}

/** From two years before production to the closing of this edition: when a date mark can lie. */
export function markEra(handbook: Handbook): Interval {
  const production = productionSpan(handbook);
  const edited = parseDateText(handbook.cover.edited)?.to ?? production.to;
  return { from: production.from - MARKED_AHEAD, to: Math.max(edited, production.to) };
}

/** When this car can have been built: its build date, else the years of its model and trim, else all production. */
export function buildInterval(handbook: Handbook, car: CarDescription): Interval {
  const whole = productionSpan(handbook);
  if (car.isLoosePart) return whole;
  if (car.built) return closed(car.built, whole);
  const model = handbook.cars.models.find(({ id }) => id === car.model);
  const trim = handbook.cars.trims.find(({ id }) => id === car.trim);
  return [model, trim].reduce((span, named) => {
    const own = named && spanOfTexts(named.from, named.to);
    return (own && intersect(span, own)) ?? span;
  }, whole);
}

/** A build date with an open end ("1980 or later") is closed at the end of production. */
function closed(built: Interval, production: Interval): Interval {
  const from = Number.isFinite(built.from) ? built.from : Math.min(production.from, built.to - 1);
  const to = Number.isFinite(built.to) ? built.to : Math.max(production.to, from + 1);
  return Number.isFinite(from) && Number.isFinite(to) ? { from, to } : production;
}

/** Cars finished in each year. */
export function yearlyProduction(handbook: Handbook): ReadonlyMap<number, number> {
  return new Map(Object.entries(handbook.cars.production).map(([year, cars]) => [Number(year), cars]));
}
