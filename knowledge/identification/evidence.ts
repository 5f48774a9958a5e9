/**
 * Facts as items of evidence: one array of log likelihoods over all hypotheses each. Facts with one cause, and the
 * date marks of one part, are a single item; facts of one group are tempered.
 */
import type { CarGround } from "./car-ground.ts";
import type { CauseTable } from "./cause-table.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { dateLikelihood, marksAmong } from "./date-likelihood.ts";
import type { Fact } from "./facts.ts";
import type { HypothesisSpace } from "./hypothesis-space.ts";
import { KIN_LIKENESS, type VariantLikelihood } from "./likelihood.ts";
import { causeLikelihood, presenceLikelihood, variantLikelihood } from "./variant-likelihood.ts";

export interface Evidence {
  readonly facts: readonly Fact[];
  /** ln P(facts | h), tempered, natural logarithm; one per hypothesis. */
  readonly logLikelihood: Float64Array;
}

/**
 * τ = 1 ÷ (1 + (k − 1)·ρ) with k of a group's features answered, this one counted: the design effect of cluster
 * samples. 1 for a feature of no group, or one that a cause governs.
 */
export function temper(compiled: CompiledPart, feature: string, answered: ReadonlySet<string>): number {
  const group = compiled.groups.get(feature);
  if (!group || compiled.causes.has(feature)) return 1;
  const others = group.features.filter(
    (other) => other !== feature && answered.has(other) && !compiled.causes.has(other),
  );
  return 1 / (1 + others.length * group.coupling);
}

/** Facts that are weighed as one: those of a cause, all date marks, every other fact by itself. */
function itemsOf(compiled: CompiledPart, facts: readonly Fact[]): readonly (readonly Fact[])[] {
  const items = new Map<string | CauseTable, Fact[]>();
  for (const fact of facts) {
    const isDate = compiled.dates.has(fact.feature);
    const key = compiled.causes.get(fact.feature) ?? (isDate ? "\u0000dates" : fact.feature);
    const item = items.get(key);
    if (item) item.push(fact);
    else items.set(key, [fact]);
  }
  return [...items.values()];
}

/** All facts as evidence, in the handbook's order. `answered` sets the tempering: usually the facts' own features. */
export function evidenceOf(
  compiled: CompiledPart,
  ground: CarGround,
  facts: readonly Fact[],
  answered: ReadonlySet<string> = new Set(facts.map((fact) => fact.feature)),
): readonly Evidence[] {
  return itemsOf(compiled, facts).map((item) => ({
    facts: item,
    logLikelihood: logLikelihoodOf(compiled, ground, item, answered),
  }));
}

/** ln P(item | h) for one item of `itemsOf`, or for part of one; no facts: 0 for all. */
export function logLikelihoodOf(
  compiled: CompiledPart,
  ground: CarGround,
  item: readonly Fact[],
  answered: ReadonlySet<string>,
): Float64Array {
  const [first] = item;
  if (!first) return new Float64Array(compiled.space.size);
  const cause = compiled.causes.get(first.feature);
  if (cause) return overHypotheses(compiled.space, causeLikelihood(compiled, cause, item), 1);
  if (compiled.dates.has(first.feature)) return dateEvidence(compiled, ground, item);
  const likelihood = variantLikelihood(compiled, first);
  if (!likelihood) return new Float64Array(compiled.space.size);
  return overHypotheses(compiled.space, likelihood, temper(compiled, first.feature, answered));
}

/** τ · ln of: P(fact | v); for a kin of v .6·P(fact | v) + .4·P(fact | flat); for the kin of nothing P(fact | flat). */
function overHypotheses(
  space: HypothesisSpace,
  { byVariant, flat }: VariantLikelihood,
  tempering: number,
): Float64Array {
  const known = new Float64Array(byVariant.length);
  for (let variant = 0; variant < known.length; variant += 1) {
    known[variant] = tempering * Math.log(byVariant[variant] as number);
  }
  const logs = new Float64Array(space.size);
  for (let h = 0; h < space.size; h += 1) {
    const variant = space.variants[h] as number;
    if (h < space.inHandbook) logs[h] = known[variant] as number;
    else if (variant < 0) logs[h] = tempering * Math.log(flat);
    else {
      const kin = KIN_LIKENESS * (byVariant[variant] as number) + (1 - KIN_LIKENESS) * flat;
      logs[h] = tempering * Math.log(kin);
    }
  }
  return logs;
}

function dateEvidence(compiled: CompiledPart, ground: CarGround, marks: readonly Fact[]): Float64Array {
  const logs = new Float64Array(compiled.space.size);
  const read = marksAmong(compiled, marks);
  if (read)
    dateLikelihood(compiled, ground, read).forEach((chance, h) => {
      logs[h] = Math.log(chance);
    });
  for (const mark of marks) {
    const presence = presenceLikelihood(compiled, mark);
    if (!presence) continue;
    overHypotheses(compiled.space, presence, 1).forEach((log, h) => {
      logs[h] = (logs[h] as number) + log;
    });
  }
  return logs;
}
