// Logarithms of chances as whole numbers. Sums of whole numbers are exact, so the order of arrival, a withdrawal or the
// mirror image of a history cannot change a last digit; floating sums could, and so change an answer.

/** Whole units in one nat of a single report: 2.4e-7 nats of rounding. */
const UNITS_OF_REPORT = 2 ** 21;
/** Whole units in one sighting: imprecise dates count as a little less than one. */
const UNITS_OF_COUNT = 2 ** 12;
/** Whole units in one nat of a sum of counts × reports; room for 200,000 sightings below 2⁵³. */
export const UNITS_PER_NAT = UNITS_OF_REPORT * UNITS_OF_COUNT;

/** Stands for an impossibility: two of them are twice as bad, so contradictions are counted and not lost. */
const IMPOSSIBLE = -700;

/** ln(chance) of one report in whole units; an impossible one counts as e⁻⁷⁰⁰. */
export function wholeLogarithm(chance: number): number {
  const logarithm = chance > 0 ? Math.max(IMPOSSIBLE, Math.log(chance)) : IMPOSSIBLE;
  return Math.round(logarithm * UNITS_OF_REPORT);
}

/** How much `count` sightings of the given weight each count, in whole units. */
export function wholeCount(count: number, weight: number): number {
  return Math.round(count * weight * UNITS_OF_COUNT);
}
