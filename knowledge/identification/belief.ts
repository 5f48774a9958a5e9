/** What is believed of one part after some reports, with everything that is needed to explain it. */
import type { CarDescription } from "../evidence/car-description.ts";
import type { Report } from "../evidence/report.ts";
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { type CarGround, carGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { type Evidence, evidenceOf, KIN_LIKENESS, logLikelihoodOf } from "./evidence.ts";
import { type Fact, factsOf } from "./facts.ts";
import type { VariantLikelihood } from "./likelihood.ts";
import { logJoint } from "./posterior.ts";

export interface Belief {
  readonly compiled: CompiledPart;
  readonly ground: CarGround;
  readonly facts: readonly Fact[];
  readonly answered: ReadonlySet<string>;
  readonly evidence: readonly Evidence[];
  /** ln prior + Σ ln likelihood, one per hypothesis. */
  readonly joint: Float64Array;
  readonly probabilities: Float64Array;
}

interface Kept {
  readonly ground: CarGround;
  readonly reports: readonly Report[];
  readonly belief: Belief;
}
const lastBelief = new WeakMap<CompiledPart, Kept>();

/** The belief after some reports. The last one is kept, because verdict and next question are asked one after the other. */
export function beliefOf(compiled: CompiledPart, car: CarDescription, reports: readonly Report[]): Belief {
  const ground = carGround(compiled, car);
  const kept = lastBelief.get(compiled);
  if (kept && kept.ground === ground && isSameList(kept.reports, reports)) return kept.belief;
  const belief = workOut(compiled, ground, reports);
  lastBelief.set(compiled, { ground, reports: [...reports], belief });
  return belief;
}

function isSameList(one: readonly Report[], other: readonly Report[]): boolean {
  return one.length === other.length && one.every((report, index) => report === other[index]);
}

function workOut(compiled: CompiledPart, ground: CarGround, reports: readonly Report[]): Belief {
  const facts = factsOf(compiled, reports);
  const answered = new Set(facts.map((fact) => fact.feature));
  const evidence = evidenceOf(compiled, ground, facts, answered);
  const joint = logJoint(
    ground.logPrior,
    evidence.map((item) => item.logLikelihood),
  );
  return { compiled, ground, facts, answered, evidence, joint, probabilities: normaliseLogarithms(joint) };
}

/** ln P(fact | h) of one fact by itself, tempered as it stands among all facts. */
export function factAlone(belief: Belief, fact: Fact): Float64Array {
  const own = belief.evidence.find((item) => item.facts.includes(fact));
  if (own && own.facts.length === 1) return own.logLikelihood;
  return logLikelihoodOf(belief.compiled, belief.ground, [fact], belief.answered);
}

/** ln P(h, all facts but this one), the tempering of the others left as it is, so that weights add up. */
export function jointWithout(belief: Belief, fact: Fact): Float64Array {
  const own = belief.evidence.find((item) => item.facts.includes(fact));
  if (!own) return belief.joint;
  const others = own.facts.filter((other) => other !== fact);
  const rest = logLikelihoodOf(belief.compiled, belief.ground, others, belief.answered);
  return belief.joint.map(
    (log, h) => log - (own.logLikelihood[h] as number) + (others.length > 0 ? (rest[h] as number) : 0),
  );
}

/** ln P(h, all facts but this one) as if it had never been told: its group is tempered anew. */
export function jointUntold(belief: Belief, fact: Fact): Float64Array {
  const group = belief.compiled.groups.get(fact.feature);
  const joint = jointWithout(belief, fact);
  const answered = new Set([...belief.answered].filter((feature) => feature !== fact.feature));
  for (const item of belief.evidence) {
    const [first] = item.facts;
    if (!first || item.facts.includes(fact) || !group?.features.includes(first.feature)) continue;
    const anew = logLikelihoodOf(belief.compiled, belief.ground, item.facts, answered);
    anew.forEach((log, h) => {
      joint[h] = (joint[h] as number) + log - (item.logLikelihood[h] as number);
    });
  }
  return joint;
}

/**
 * Σ_h p_h · P(part of the fact | h) ÷ P(fact | h): the chance of one way in which the fact can have come about, such
 * as a misreading or a slip of the unit.
 */
export function shareOfFact(belief: Belief, whole: VariantLikelihood, part: VariantLikelihood): number {
  const { space } = belief.compiled;
  const shares = whole.byVariant.map((chance, variant) => (part.byVariant[variant] as number) / chance);
  const kin = (likelihood: VariantLikelihood, variant: number): number =>
    KIN_LIKENESS * (likelihood.byVariant[variant] as number) + (1 - KIN_LIKENESS) * likelihood.flat;
  return belief.probabilities.reduce((sum, probability, h) => {
    const variant = space.variants[h] as number;
    if (h < space.inHandbook) return sum + probability * (shares[variant] as number);
    if (variant < 0) return sum + (probability * part.flat) / whole.flat;
    return sum + (probability * kin(part, variant)) / kin(whole, variant);
  }, 0);
}
