/**
 * How people misread a feature: P(says r | it is s) for every pair of states. One wrong look must never be able to
 * rule a variant out, so every report passes through this matrix.
 */
import { notThere } from "../evidence/report.ts";
import type { StateFeature } from "../handbook/schema.ts";

/** Rate at which a state is reported where the part has no such feature, and the other way about. */
export const NOT_THERE_MISTAKE = 0.03;
/** A state for which the historian names no confusion is misread as often as anything else. */
const DEFAULT_MISTAKE = 0.04;
/** However many confusions are named, the truth is still said this often. */
const LEAST_TRUTH = 0.2;

type Misread = Pick<StateFeature, "misread"> & { readonly states: readonly { readonly id: string }[] };

/** Square and row-major: chances[is × size + said]. */
export interface MistakeChannel {
  readonly states: readonly string[];
  readonly chances: Float64Array;
}

/**
 * The channel of a feature (identification method, section 3). One rate is spread over the other states; single
 * confusions replace it for the states they name. `isConditional` adds the state "not-there" as the last.
 */
export function mistakeChannel(feature: Misread, isConditional: boolean): MistakeChannel {
  const real = feature.states.map((state) => state.id);
  const states = isConditional ? [...real, notThere] : real;
  const size = states.length;
  const chances = new Float64Array(size * size);
  real.forEach((is, row) => {
    const mistakes = real.map((said) => (said === is ? 0 : mistakeRate(feature, is, said)));
    const total = mistakes.reduce((sum, rate) => sum + rate, 0);
    const scale = total > 1 - LEAST_TRUTH ? (1 - LEAST_TRUTH) / total : 1;
    mistakes.forEach((rate, column) => {
      chances[row * size + column] = column === row ? 1 - total * scale : rate * scale;
    });
  });
  if (isConditional) addNotThere(chances, size);
  return { states, chances };
}

function mistakeRate(feature: Misread, is: string, said: string): number {
  const others = feature.states.length - 1;
  if (typeof feature.misread === "number") return feature.misread / others;
  const confusions = feature.misread.filter((confusion) => confusion.is === is);
  if (confusions.length === 0) return DEFAULT_MISTAKE / others;
  return confusions.find((confusion) => confusion.said === said)?.rate ?? 0;
}

function addNotThere(chances: Float64Array, size: number): void {
  const last = size - 1;
  for (let state = 0; state < last; state += 1) {
    chances[state * size + state] = (chances[state * size + state] as number) - NOT_THERE_MISTAKE;
    chances[state * size + last] = NOT_THERE_MISTAKE;
    chances[last * size + state] = NOT_THERE_MISTAKE / last;
  }
  chances[last * size + last] = 1 - NOT_THERE_MISTAKE;
}
