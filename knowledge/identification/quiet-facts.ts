/**
 * Facts that hardly move the ranking, and the fact beside which they do not: of two signs of one change each alone says
 * much and the second little more, which is another thing than to say little.
 */
import { type Belief, beliefOf } from "./belief.ts";
import type { CompiledPart } from "./compiled-part.ts";
import type { Fact } from "./facts.ts";
import type { Told } from "./identification.ts";
import { overVariantsOf } from "./ranking.ts";
import { beliefUntold } from "./without-fact.ts";

/** Half the sum of all changes in the ranking; below it a fact says little. Ours, no source. */
const LITTLE_SHIFT = 0.05;

export interface QuietFact {
  readonly feature: string;
  /** The fact without which this one would speak; null when it says little by itself. */
  readonly beside: string | null;
}

/**
 * Of the facts on these features the quiet ones, in the order given. Of two that are quiet only beside each other the
 * one that moves less is named. Cost: facts × hypotheses for each.
 */
export function quietFacts(
  compiled: CompiledPart,
  { car, reports }: Told,
  features: readonly string[],
): readonly QuietFact[] {
  const belief = beliefOf(compiled, car, reports);
  const quiet = features.flatMap((feature) => {
    const fact = belief.facts.find((told) => told.feature === feature);
    const shift = fact === undefined ? 1 : shiftBy(belief, fact);
    return fact === undefined || shift >= LITTLE_SHIFT
      ? []
      : [{ fact, shift, beside: besideOf(belief, fact) }];
  });
  return quiet
    .filter(({ fact, shift, beside }, index) => {
      const place = quiet.findIndex((one) => one.fact.feature === beside && one.beside === fact.feature);
      const partner = quiet[place];
      return partner === undefined || shift < partner.shift || (shift === partner.shift && index > place);
    })
    .map(({ fact, beside }) => ({ feature: fact.feature, beside }));
}

/** The fact without which this one moves the ranking most, if it then does. */
function besideOf(belief: Belief, fact: Fact): string | null {
  let most = LITTLE_SHIFT;
  let beside: string | null = null;
  for (const other of belief.facts) {
    if (other === fact) continue;
    const shift = shiftBy(beliefUntold(belief, other), fact);
    if (shift <= most) continue;
    most = shift;
    beside = other.feature;
  }
  return beside;
}

/** Total variation distance between the ranking with and without a fact, in [0, 1]. */
function shiftBy(belief: Belief, fact: Fact): number {
  const { space, part } = belief.compiled;
  const told = overVariantsOf(space, part, belief.probabilities);
  const untold = overVariantsOf(space, part, beliefUntold(belief, fact).probabilities);
  return told.reduce((sum, probability, v) => sum + Math.abs(probability - (untold[v] as number)), 0) / 2;
}
