/**
 * What speaks for the first class and what for its rival, fact by fact. Every fact is weighed with all the others
 * already known, because weights taken one after another depend on the order and can even change sign.
 */
import { logSumExp } from "../numbers/log-sum-exp.ts";
import { type Belief, beliefOf } from "./belief.ts";
import { type Classes, classesOf, overClasses, twoHeaviest } from "./classes.ts";
import type { CompiledPart } from "./compiled-part.ts";
import type { Fact } from "./facts.ts";
import type { Duel, Told } from "./identification.ts";
import { withoutFact } from "./without-fact.ts";

/** Weights below this may have lost digits: then the logarithms are summed themselves. */
const LOST = 1e-280;

/**
 * The duel of the two heaviest classes in decimal bans, log₁₀ [P(fact, others | A)/P(others | A)] − the same for B
 * (identification method, section 7); null when there is no second class.
 */
export function duelOf(belief: Belief, classes: Classes): Duel | null {
  const [first = 0, rival] = twoHeaviest(overClasses(classes, belief.probabilities));
  if (rival === undefined) return null;
  const firstMembers = membersOf(belief, classes, first);
  const rivalMembers = membersOf(belief, classes, rival);
  if (firstMembers.length === 0 || rivalMembers.length === 0) return null;
  const bans = (joint: Float64Array): number =>
    (logSumExp(firstMembers.map((h) => joint[h] as number)) -
      logSumExp(rivalMembers.map((h) => joint[h] as number))) /
    Math.LN10;
  const bansWithout = (fact: Fact): number => {
    const { joint, weights } = withoutFact(belief, fact);
    const sums = overClasses(classes, weights);
    const one = sums[first] as number;
    const other = sums[rival] as number;
    return Math.min(one, other) > LOST ? Math.log10(one / other) : bans(joint);
  };
  const all = bans(belief.joint);
  return {
    first: classes.names[first] as string,
    rival: classes.names[rival] as string,
    priorBans: bans(belief.ground.logPrior),
    weights: belief.facts.map((fact) => ({ feature: fact.feature, bans: all - bansWithout(fact) })),
  };
}

/** The duel of the two likeliest kinds, whatever was asked. */
export function duelOfVariants(compiled: CompiledPart, { car, reports }: Told): Duel | null {
  const belief = beliefOf(compiled, car, reports);
  return duelOf(belief, classesOf(compiled, belief.ground, "which-variant"));
}

function membersOf(belief: Belief, classes: Classes, index: number): readonly number[] {
  const members: number[] = [];
  classes.of.forEach((of, h) => {
    if (of === index && (belief.ground.prior[h] as number) > 0) members.push(h);
  });
  return members;
}
