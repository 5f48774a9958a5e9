/** Facts that do not go with the rest: named so that they are looked at again, never averaged away in silence. */
import { logSumExp } from "../numbers/log-sum-exp.ts";
import { type Belief, factAlone, jointWithout } from "./belief.ts";
import type { Fact } from "./facts.ts";
import type { Contradiction, Duel } from "./identification.ts";
import { neverTogether } from "./never-together.ts";
import { logJoint } from "./posterior.ts";
import { stateProbability } from "./state-probability.ts";

/** Alarm of either rule; false alarms 6.5 % in simulated cases without a wrong report (identification method, 7). */
const ALARM = 0.7;
/**
 * From this probability of the first variant on a foreign pair is settled by the other facts, and the two rules above
 * name the wrong one. Added alarms below it, 2,000 simulated owners a figure: 1.5 % of cases with three facts, 2 % with
 * seven (without this bound 10 %).
 */
const SETTLED = 0.66;

/**
 * The facts that any rule flags, most probably misread first: P(the state is not as reported | all) above .7, or
 * log₁₀ P(fact)/P(fact | others) above .7 over the hypotheses of the handbook; or the fact stands beside another that no
 * kind shows together with it, while no variant is settled (`firstVariant`: probability of the likeliest one).
 */
export function contradictionsOf(
  belief: Belief,
  duel: Duel | null,
  firstVariant: number,
): readonly Contradiction[] {
  const all = inHandbook(belief, belief.joint);
  const none = inHandbook(belief, belief.ground.logPrior);
  const partners =
    firstVariant < SETTLED ? neverTogether(belief.compiled, belief.facts) : new Map<string, string>();
  return belief.facts
    .map((fact) => ({
      feature: fact.feature,
      against: partners.get(fact.feature) ?? strongestAgainst(duel, fact.feature),
      isNeverTogether: partners.has(fact.feature),
      misreadProbability: misreadProbability(belief, fact),
      conflictBans: conflictBans(belief, fact, all, none),
    }))
    .filter((one) => one.isNeverTogether || one.misreadProbability > ALARM || one.conflictBans > ALARM)
    .sort((one, other) => other.misreadProbability - one.misreadProbability);
}

/**
 * The chance that nobody reported the true state: Σ_h p_h · Σ_{s not reported} θ_s P(r | s) ÷ Σ_s θ_s P(r | s);
 * 0 for facts other than states seen.
 */
export function misreadProbability(belief: Belief, fact: Fact): number {
  const said = fact.reports.flatMap(({ value }) => (value.kind === "state" ? [value.state] : []));
  const right = said.length > 0 ? stateProbability(belief, fact.feature, said) : undefined;
  return right === undefined ? 0 : 1 - right;
}

/** log₁₀ P(fact)/P(fact | others) over the hypotheses of the handbook; `all` and `none`: ln P(all facts), ln P(no fact). */
function conflictBans(belief: Belief, fact: Fact, all: number, none: number): number {
  const told = logJoint(belief.ground.logPrior, [factAlone(belief, fact)]);
  const before = inHandbook(belief, told) - none;
  const after = all - inHandbook(belief, jointWithout(belief, fact));
  return (before - after) / Math.LN10;
}

function inHandbook(belief: Belief, logs: Float64Array): number {
  return logSumExp(logs.subarray(0, belief.compiled.space.inHandbook));
}

/** The fact with the largest weight the other way; null when none speaks the other way. */
function strongestAgainst(duel: Duel | null, feature: string): string | null {
  const own = duel?.weights.find((weight) => weight.feature === feature)?.bans ?? 0;
  let strongest: string | null = null;
  let least = 0;
  for (const weight of duel?.weights ?? []) {
    const signed = own > 0 ? weight.bans : -weight.bans;
    if (weight.feature === feature || signed >= least) continue;
    least = signed;
    strongest = weight.feature;
  }
  return strongest;
}
