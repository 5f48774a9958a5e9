/** What is believed of one part after some reports, with everything that is needed to explain it. */
import type { CarDescription } from "../evidence/car-description.ts";
import type { Report } from "../evidence/report.ts";
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { type CarGround, carGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { type Evidence, evidenceOf, logLikelihoodOf } from "./evidence.ts";
import { type Fact, factsOf } from "./facts.ts";
import { KIN_LIKENESS, type VariantLikelihood } from "./likelihood.ts";
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
  /** ln P(h, all facts but one), worked out when first asked for: a cache. */
  readonly without: Map<Fact, Float64Array>;
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
  return {
    compiled,
    ground,
    facts,
    answered,
    evidence,
    joint,
    probabilities: normaliseLogarithms(joint),
    without: new Map(),
  };
}

/** ln P(fact | h) of one fact by itself, tempered as it stands among all facts. */
export function factAlone(belief: Belief, fact: Fact): Float64Array {
  const own = belief.evidence.find((item) => item.facts.includes(fact));
  if (own && own.facts.length === 1) return own.logLikelihood;
  return logLikelihoodOf(belief.compiled, belief.ground, [fact], belief.answered);
}

/** ln P(h, all facts but this one), the tempering of the others left as it is, so that weights add up. */
export function jointWithout(belief: Belief, fact: Fact): Float64Array {
  const known = belief.without.get(fact);
  if (known) return known;
  const joint = subtracted(belief, fact);
  belief.without.set(fact, joint);
  return joint;
}

function subtracted(belief: Belief, fact: Fact): Float64Array {
  const own = belief.evidence.find((item) => item.facts.includes(fact));
  if (!own) return belief.joint;
  const joint = new Float64Array(belief.joint.length);
  for (let h = 0; h < joint.length; h += 1) {
    joint[h] = (belief.joint[h] as number) - (own.logLikelihood[h] as number);
  }
  const others = own.facts.filter((other) => other !== fact);
  return others.length === 0
    ? joint
    : logJoint(joint, [logLikelihoodOf(belief.compiled, belief.ground, others, belief.answered)]);
}

/** ln P(h, all facts but this one) as if it had never been told: its group is tempered anew. */
export function jointUntold(belief: Belief, fact: Fact): Float64Array {
  const group = belief.compiled.groups.get(fact.feature);
  if (!group) return jointWithout(belief, fact);
  const joint = Float64Array.from(jointWithout(belief, fact));
  const answered = new Set([...belief.answered].filter((feature) => feature !== fact.feature));
  for (const item of belief.evidence) {
    const [first] = item.facts;
    if (!first || item.facts.includes(fact) || !group.features.includes(first.feature)) continue;
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
  const kin = (likelihood: VariantLikelihood, variant: number): number =>
    KIN_LIKENESS * (likelihood.byVariant[variant] as number) + (1 - KIN_LIKENESS) * likelihood.flat;
  let sum = 0;
  for (let h = 0; h < space.size; h += 1) {
    const probability = belief.probabilities[h] as number;
    const variant = space.variants[h] as number;
    if (variant < 0) sum += (probability * part.flat) / whole.flat;
    else if (h >= space.inHandbook) sum += (probability * kin(part, variant)) / kin(whole, variant);
    else sum += (probability * (part.byVariant[variant] as number)) / (whole.byVariant[variant] as number);
  }
  return sum;
}
