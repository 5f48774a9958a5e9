/**
 * What would be believed without one fact: the ground of the duel, the hinges and the contradictions. Logarithms are turned
 * into weights once a fact, because on a large handbook the exponentials cost more than all the rest.
 */
import { normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import type { Belief, WithoutFact } from "./belief.ts";
import { type Evidence, logLikelihoodOf } from "./evidence.ts";
import type { Fact } from "./facts.ts";
import { logJoint } from "./posterior.ts";

/** All facts but this one, the tempering of the others left as it is, so that weights of evidence add up. */
export function withoutFact(belief: Belief, fact: Fact): WithoutFact {
  const known = belief.without.get(fact);
  if (known) return known;
  const without = weighed(subtracted(belief, fact));
  belief.without.set(fact, without);
  return without;
}

/** All facts but this one as if it had never been told: its group is tempered anew. */
export function asIfUntold(belief: Belief, fact: Fact): WithoutFact {
  const group = belief.compiled.groups.get(fact.feature);
  if (!group) return withoutFact(belief, fact);
  const joint = Float64Array.from(withoutFact(belief, fact).joint);
  const answered = new Set([...belief.answered].filter((feature) => feature !== fact.feature));
  for (const item of belief.evidence) {
    const [first] = item.facts;
    if (!first || item.facts.includes(fact) || !group.features.includes(first.feature)) continue;
    const anew = logLikelihoodOf(belief.compiled, belief.ground, item.facts, answered);
    anew.forEach((log, h) => {
      joint[h] = (joint[h] as number) + log - (item.logLikelihood[h] as number);
    });
  }
  return weighed(joint);
}

/** The belief as it would be had one fact never been told, whatever shares its group or its cause weighed anew. */
export function beliefUntold(belief: Belief, fact: Fact): Belief {
  const { compiled, ground } = belief;
  const group = compiled.groups.get(fact.feature);
  const answered = new Set([...belief.answered].filter((feature) => feature !== fact.feature));
  const evidence = belief.evidence.flatMap((item): readonly Evidence[] => {
    const facts = item.facts.filter((other) => other !== fact);
    const isAlike =
      facts.length === item.facts.length && !facts.some(({ feature }) => group?.features.includes(feature));
    if (isAlike) return [item];
    return facts.length === 0
      ? []
      : [{ facts, logLikelihood: logLikelihoodOf(compiled, ground, facts, answered) }];
  });
  const joint = logJoint(
    ground.logPrior,
    evidence.map((item) => item.logLikelihood),
  );
  const facts = belief.facts.filter((other) => other !== fact);
  return {
    ...belief,
    facts,
    answered,
    evidence,
    joint,
    probabilities: normaliseLogarithms(joint),
    without: new Map(),
  };
}

/** The belief as it would be without one fact, the tempering of the others left as it is. */
export function beliefWithout(belief: Belief, fact: Fact): Belief {
  const { joint, weights } = withoutFact(belief, fact);
  let total = 0;
  for (let h = 0; h < weights.length; h += 1) total += weights[h] as number;
  const probabilities = new Float64Array(weights.length);
  for (let h = 0; h < weights.length; h += 1) probabilities[h] = (weights[h] as number) / total;
  return {
    ...belief,
    facts: belief.facts.filter((other) => other !== fact),
    joint,
    probabilities,
    without: new Map(),
  };
}

function weighed(joint: Float64Array): WithoutFact {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let h = 0; h < joint.length; h += 1) greatest = Math.max(greatest, joint[h] as number);
  const weights = new Float64Array(joint.length);
  for (let h = 0; h < joint.length; h += 1) weights[h] = Math.exp((joint[h] as number) - greatest);
  return { joint, greatest, weights };
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
