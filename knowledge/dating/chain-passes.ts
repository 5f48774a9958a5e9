// All histories of successive variants in one pass forward and one back: alone for a while, then a ramp into the next,
// ramps never overlapping. A variant may last zero cells: then it was, perhaps, never fitted.
import type { ChainGround, ChainTerms } from "./chain-terms.ts";

export interface ChainPriors {
  /** Per width. */
  readonly logWidth: readonly number[];
  /** Per changeover: logarithms over half borders (2 · cells + 1), or undefined for an even one. */
  readonly logMiddle: readonly (Float64Array | undefined)[];
}

export interface ChainPass {
  /** Logarithm of the sum over all histories. */
  readonly logEvidence: number;
  /** Per changeover: probabilities of width × first border of the ramp; each sums to one. */
  readonly chances: readonly Float64Array[];
}

/** ln(eˣ + eʸ). */
function logAdd(x: number, y: number): number {
  if (x === -Infinity) return y;
  return x > y ? x + Math.log1p(Math.exp(y - x)) : y + Math.log1p(Math.exp(x - y));
}

/** Sum over all histories, and the chance of every ramp. `terms.ramps` already hold all sightings. */
export function chainPass(ground: ChainGround, terms: ChainTerms, priors: ChainPriors): ChainPass {
  const changes = terms.ramps.length;
  const weighted = terms.ramps.map((ramp, change) => weightedRamp(ground, ramp, priors, change));
  const leaves: Float64Array[] = [terms.pure[0] as Float64Array];
  for (let change = 0; change < changes; change += 1) {
    const arrived = arrivals(ground, leaves[change] as Float64Array, weighted[change] as Float64Array);
    leaves.push(stayUntil(arrived, terms.pure[change + 1] as Float64Array));
  }
  const enters: Float64Array[] = new Array(changes + 1);
  enters[changes] = stayToEnd(terms.pure[changes] as Float64Array);
  for (let change = changes - 1; change >= 0; change -= 1) {
    const departed = departures(ground, weighted[change] as Float64Array, enters[change + 1] as Float64Array);
    enters[change] = stayFrom(departed, terms.pure[change] as Float64Array);
  }
  const logSum = (leaves[changes] as Float64Array)[ground.grid.cells] as number;
  const chances = weighted.map((ramp, change) =>
    rampChances(ground, leaves[change] as Float64Array, ramp, enters[change + 1] as Float64Array, logSum),
  );
  return { logEvidence: terms.base + logSum, chances };
}

function weightedRamp(
  ground: ChainGround,
  ramp: Float64Array,
  priors: ChainPriors,
  change: number,
): Float64Array {
  const { widths, grid } = ground;
  const borders = grid.cells + 1;
  const middle = priors.logMiddle[change];
  return ramp.map((gain, place) => {
    const width = widths[Math.floor(place / borders)] as number;
    const start = place % borders;
    const logPrior = priors.logWidth[Math.floor(place / borders)] as number;
    return gain + logPrior + (middle ? (middle[2 * start + width] as number) : 0);
  });
}

/** Log weight of arriving at each border through some ramp. */
function arrivals(ground: ChainGround, leave: Float64Array, ramp: Float64Array): Float64Array {
  const { widths } = ground;
  const borders = leave.length;
  const terms = new Float64Array(widths.length);
  return leave.map((_, border) => {
    for (let w = 0; w < widths.length; w += 1) {
      const start = border - (widths[w] as number);
      terms[w] = start < 0 ? -Infinity : (leave[start] as number) + (ramp[w * borders + start] as number);
    }
    return sumOfExponentials(terms);
  });
}

/** Log weight of everything after each border when a ramp begins there. */
function departures(ground: ChainGround, ramp: Float64Array, enter: Float64Array): Float64Array {
  const { widths } = ground;
  const borders = enter.length;
  const terms = new Float64Array(widths.length);
  return enter.map((_, start) => {
    for (let w = 0; w < widths.length; w += 1) {
      const border = start + (widths[w] as number);
      terms[w] =
        border >= borders ? -Infinity : (enter[border] as number) + (ramp[w * borders + start] as number);
    }
    return sumOfExponentials(terms);
  });
}

function sumOfExponentials(terms: Float64Array): number {
  let greatest = -Infinity;
  for (let w = 0; w < terms.length; w += 1)
    if ((terms[w] as number) > greatest) greatest = terms[w] as number;
  if (greatest === -Infinity) return -Infinity;
  let sum = 0;
  for (let w = 0; w < terms.length; w += 1) {
    const below = (terms[w] as number) - greatest;
    if (below > -40) sum += Math.exp(below);
  }
  return greatest + Math.log(sum);
}

/** leave[a] = ⊕_{b ≤ a} arrived[b] + pure[b … a). */
function stayUntil(arrived: Float64Array, pure: Float64Array): Float64Array {
  let running = -Infinity;
  return arrived.map((weight, border) => {
    running = logAdd(running, weight - (pure[border] as number));
    return running + (pure[border] as number);
  });
}

function stayToEnd(pure: Float64Array): Float64Array {
  const all = pure[pure.length - 1] as number;
  return pure.map((gain) => all - gain);
}

/** enter[b] = ⊕_{a ≥ b} pure[b … a) + departed[a]. */
function stayFrom(departed: Float64Array, pure: Float64Array): Float64Array {
  const enter = new Float64Array(departed.length);
  let running = -Infinity;
  for (let border = departed.length - 1; border >= 0; border -= 1) {
    running = logAdd(running, (departed[border] as number) + (pure[border] as number));
    enter[border] = running - (pure[border] as number);
  }
  return enter;
}

function rampChances(
  ground: ChainGround,
  leave: Float64Array,
  ramp: Float64Array,
  enter: Float64Array,
  logSum: number,
): Float64Array {
  const borders = leave.length;
  const chances = new Float64Array(ramp.length);
  let total = 0;
  ground.widths.forEach((width, w) => {
    for (let start = 0; start + width < borders; start += 1) {
      const place = w * borders + start;
      const logarithm =
        (leave[start] as number) + (ramp[place] as number) + (enter[start + width] as number) - logSum;
      if (logarithm < -40) continue;
      const chance = Math.exp(logarithm);
      chances[place] = chance;
      total += chance;
    }
  });
  return chances.map((chance) => chance / total);
}
