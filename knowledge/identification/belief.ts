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
  /** The same without one fact, worked out when first asked for: a cache. */
  readonly without: Map<Fact, WithoutFact>;
}

/** What would be known without one fact. */
export interface WithoutFact {
  /** ln P(h, all facts but this one). */
  readonly joint: Float64Array;
  readonly greatest: number;
  /** exp(joint − greatest): probabilities up to a common factor. */
  readonly weights: Float64Array;
}

interface Kept {
  readonly ground: CarGround;
  readonly reports: readonly Report[];
  readonly belief: Belief;
}
const lastBeliefs = new WeakMap<CompiledPart, readonly Kept[]>();
/** One turn asks for the belief now, the one before, and what the car alone says. */
const KEPT = 3;

/** The belief after some reports. The last few are kept, because verdict, question and reply each ask for them. */
export function beliefOf(compiled: CompiledPart, car: CarDescription, reports: readonly Report[]): Belief {
  const ground = carGround(compiled, car);
  const kept = lastBeliefs.get(compiled) ?? [];
  const known = kept.find((one) => one.ground === ground && isSameList(one.reports, reports));
  const found = known ?? { ground, reports: [...reports], belief: workOut(compiled, ground, reports) };
  lastBeliefs.set(compiled, [found, ...kept.filter((one) => one !== found)].slice(0, KEPT));
  return found.belief;
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
