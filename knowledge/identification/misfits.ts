/** Facts that fit the best variant worst: what makes the part look as if it were in no handbook. */
import { type Belief, factAlone } from "./belief.ts";

/** At most this many are named, and none that speaks against the variant by less (decimal bans). */
const MOST = 3;
const LEAST_BANS = 0.1;

/**
 * Features of the facts with the largest negative weight, log₁₀ P(fact | variant)/P(fact | its kin), worst first.
 * `variant`: index of the best variant; of its ways the most probable one is taken.
 */
export function misfitsOf(belief: Belief, variant: number): readonly string[] {
  const { space } = belief.compiled;
  let best = -1;
  let kin = -1;
  for (let h = 0; h < space.size; h += 1) {
    if (space.variants[h] !== variant) continue;
    if (h >= space.inHandbook) kin = h;
    else if (best < 0 || (belief.joint[h] as number) > (belief.joint[best] as number)) best = h;
  }
  if (best < 0 || kin < 0) return [];
  return belief.facts
    .map((fact) => {
      const alone = factAlone(belief, fact);
      return { feature: fact.feature, bans: ((alone[best] as number) - (alone[kin] as number)) / Math.LN10 };
    })
    .filter(({ bans }) => bans < -LEAST_BANS)
    .sort((one, other) => one.bans - other.bans)
    .slice(0, MOST)
    .map(({ feature }) => feature);
}
