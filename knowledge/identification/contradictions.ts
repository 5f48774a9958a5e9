/** Facts that do not go with the rest: named so that they are looked at again, never averaged away in silence. */
import { logSumExp } from "../numbers/log-sum-exp.ts";
import { type Belief, factAlone } from "./belief.ts";
import type { Fact } from "./facts.ts";
import type { Contradiction } from "./identification.ts";
import { neverTogether } from "./never-together.ts";
import { stateProbability } from "./state-probability.ts";
import { beliefWithout, withoutFact } from "./without-fact.ts";

/** Alarm of either rule; false alarms 6.5 % in simulated cases without a wrong report (identification method, 7). */
const ALARM = 0.7;
/**
 * From this probability of the first variant on a foreign pair is settled by the other facts, and the two rules above
 * name the wrong one. Added alarms below it, 2,000 simulated owners a figure: 1.5 % of cases with three facts, 2 % with
 * seven (without this bound 10 %).
 */
const SETTLED = 0.66;

/** The chance of a misreading must fall by this much without the other fact. Ours, no source. */
const LEAST_FALL = 0.2;

/**
 * The facts that any rule flags, most probably misread first: P(the state is not as reported | all) above .7, or
 * log₁₀ P(fact)/P(fact | others) above .7 over the hypotheses of the handbook; or the fact stands beside another that no
 * kind shows together with it, while no variant is settled (`firstVariant`: probability of the likeliest one).
 */
export function contradictionsOf(belief: Belief, firstVariant: number): readonly Contradiction[] {
  const all = inHandbook(belief, belief.joint);
  const none = inHandbook(belief, belief.ground.logPrior);
  const foreign =
    firstVariant < SETTLED ? neverTogether(belief.compiled, belief.facts) : new Map<string, string>();
  const flagged = belief.facts
    .map((fact) => ({
      fact,
      isNeverTogether: foreign.has(fact.feature),
      misreadProbability: misreadProbability(belief, fact),
      conflictBans: conflictBans(belief, fact, all, none),
    }))
    .filter((one) => one.isNeverTogether || one.misreadProbability > ALARM || one.conflictBans > ALARM)
    .sort((one, other) => other.misreadProbability - one.misreadProbability);
  return flagged.map(({ fact, ...found }) => ({
    feature: fact.feature,
    against: foreign.get(fact.feature) ?? atOddsWith(belief, fact, found.misreadProbability),
    ...found,
  }));
}

/** The fact without which this one's chance of a misreading falls most, the first in the handbook's order; or null. */
function atOddsWith(belief: Belief, doubted: Fact, misread: number): string | null {
  const others = belief.facts.filter((fact) => fact !== doubted);
  const left = others.map((fact) => misreadProbability(beliefWithout(belief, fact), doubted));
  const least = Math.min(...left);
  return least <= misread - LEAST_FALL ? (others[left.indexOf(least)]?.feature ?? null) : null;
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
  const { greatest, weights } = withoutFact(belief, fact);
  const { inHandbook: size } = belief.compiled.space;
  const alone = likelihoods(belief, factAlone(belief, fact), size);
  let told = 0;
  let others = 0;
  for (let h = 0; h < size; h += 1) {
    told += (belief.ground.prior[h] as number) * (alone[h] as number);
    others += weights[h] as number;
  }
  const before = Math.log(told) - none;
  const after = all - greatest - Math.log(others);
  return (before - after) / Math.LN10;
}

/** exp of the first `size` logarithms. The ways of one variant mostly share one, and its exponential is then taken once. */
function likelihoods({ compiled: { space, part } }: Belief, logs: Float64Array, size: number): Float64Array {
  const known = new Float64Array(part.variants.length).fill(Number.NaN);
  const raised = new Float64Array(part.variants.length);
  const chances = new Float64Array(size);
  for (let h = 0; h < size; h += 1) {
    const variant = space.variants[h] as number;
    const log = logs[h] as number;
    if (known[variant] !== log) {
      known[variant] = log;
      raised[variant] = Math.exp(log);
    }
    chances[h] = raised[variant] as number;
  }
  return chances;
}

function inHandbook(belief: Belief, logs: Float64Array): number {
  return logSumExp(logs.subarray(0, belief.compiled.space.inHandbook));
}
