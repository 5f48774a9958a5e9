/** The answers a goal allows, and which of them each hypothesis amounts to. */
import { type Goal, notInHandbook } from "../evidence/goal.ts";
import type { CarGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import type { Way } from "./hypothesis-space.ts";

/** A variant that fewer cars of this date and kind than this left the works with is of another year or model. */
const LEAST_MIX = 0.05;

/** Class names in a fixed order, and the class of each hypothesis as an index into them. */
export interface Classes {
  readonly names: readonly string[];
  readonly of: Int32Array;
}

/**
 * The classes of a goal (identification method, section 7). The as-built mix decides what is "right kind"; on a car that left the
 * works without the part none is.
 */
export function classesOf(compiled: CompiledPart, ground: CarGround, goal: Goal): Classes {
  const known = ground.classes.get(goal);
  if (known) return known;
  const classes = workOut(compiled, ground, goal);
  ground.classes.set(goal, classes);
  return classes;
}

function workOut(compiled: CompiledPart, ground: CarGround, goal: Goal): Classes {
  const { space, part } = compiled;
  const names: string[] = [];
  const of = new Int32Array(space.size);
  const indices = new Map<string, number>();
  space.ways.forEach((way, h) => {
    const variant = space.variants[h] as number;
    const name = className(goal, way, {
      id: part.variants[variant]?.id ?? notInHandbook,
      isServicePart: part.variants[variant]?.origin === "service",
      isRightKind: ground.isFitted && (ground.mix.average[variant] ?? 0) >= LEAST_MIX,
      isFitted: ground.isFitted,
    });
    let index = indices.get(name);
    if (index === undefined) {
      index = names.length;
      names.push(name);
      indices.set(name, index);
    }
    of[h] = index;
  });
  return { names, of };
}

interface Candidate {
  readonly id: string;
  readonly isServicePart: boolean;
  readonly isRightKind: boolean;
  /** The car left the works with some kind of the part. */
  readonly isFitted: boolean;
}

function className(goal: Goal, way: Way, candidate: Candidate): string {
  if (way === "kin" || way === "kin-of-nothing") return notInHandbook;
  if (goal === "which-variant" || goal === "what-should-it-have") return candidate.id;
  if (way === "reproduction" || way === "other-maker") return way;
  if (goal === "genuine") return "genuine";
  if (way === "works" && candidate.isFitted) return "as-built";
  if (candidate.isServicePart) return "service-part";
  return candidate.isRightKind ? "right-kind-replaced" : "other-year-or-model";
}

/** Σ of the weights in each class. */
export function overClasses(classes: Classes, weights: Float64Array): Float64Array {
  const sums = new Float64Array(classes.names.length);
  for (let h = 0; h < weights.length; h += 1) {
    const index = classes.of[h] as number;
    sums[index] = (sums[index] as number) + (weights[h] as number);
  }
  return sums;
}

/**
 * Indices from the greatest weight to the least; equal weights keep their order. `weights`: no NaN. The weights themselves are
 * sorted and each index then looks up its place among them: a sort that compares indices takes three times as long.
 */
export function heaviestFirst(weights: ArrayLike<number>): readonly number[] {
  const size = weights.length;
  const rising = Float64Array.from(weights).sort();
  const taken = new Int32Array(size + 1);
  const indices = new Array<number>(size).fill(0);
  for (let index = 0; index < size; index += 1) {
    const after = firstAbove(rising, weights[index] as number);
    indices[size - after + (taken[after] as number)] = index;
    taken[after] = (taken[after] as number) + 1;
  }
  return indices;
}

/** Where in a rising row the first value stands that is greater than `value`. */
function firstAbove(rising: Float64Array, value: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((rising[middle] as number) <= value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Index of the greatest weight, the first of equal ones; −1 for none. */
export function heaviest(weights: ArrayLike<number>): number {
  let best = -1;
  for (let index = 0; index < weights.length; index += 1) {
    if (best < 0 || (weights[index] as number) > (weights[best] as number)) best = index;
  }
  return best;
}

/** Indices of the two greatest weights, the greater first; of equal ones the earlier. Fewer where there are fewer. */
export function twoHeaviest(weights: ArrayLike<number>): readonly number[] {
  const first = heaviest(weights);
  if (weights.length < 2) return first < 0 ? [] : [first];
  let second = first === 0 ? 1 : 0;
  for (let index = second + 1; index < weights.length; index += 1) {
    if (index !== first && (weights[index] as number) > (weights[second] as number)) second = index;
  }
  return [first, second];
}
