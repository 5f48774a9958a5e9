// A change in the rate of dated events at any instant, not only between years: the density of the instant is that of a
// Poisson process with both rates Gamma(shape, rate). Like its neighbour for yearly counts it tries the project's special
// functions and sums on a published posterior.
import { logGamma } from "../../knowledge/numbers/log-gamma.ts";
import { normaliseLogarithms } from "../../knowledge/numbers/log-sum-exp.ts";

/** Instants tried, and how likely each is: midpoints of steps of a day between the first and the last of `span`. */
export interface InstantOfChange {
  readonly instants: readonly number[];
  readonly chances: Float64Array;
}

/** Events in years, rising; a change is as likely at one instant as at another. */
export function instantOfChange(
  events: readonly number[],
  span: readonly [number, number],
  shape: number,
  rate: number,
): InstantOfChange {
  const [first, last] = span;
  const steps = Math.round((last - first) * 365.25);
  const instants = Array.from({ length: steps }, (_, k) => first + ((k + 0.5) * (last - first)) / steps);
  const marginal = (count: number, years: number): number =>
    logGamma(shape + count) - (shape + count) * Math.log(rate + years);
  let before = 0;
  const logarithms = instants.map((instant) => {
    while (before < events.length && (events[before] as number) <= instant) before += 1;
    return marginal(before, instant - first) + marginal(events.length - before, last - instant);
  });
  return { instants, chances: normaliseLogarithms(logarithms) };
}
