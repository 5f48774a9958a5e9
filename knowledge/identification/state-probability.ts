/** What is believed of a feature's true state, whether or not somebody has reported it. */
import type { Belief } from "./belief.ts";
import { shareOfFact } from "./belief.ts";
import type { Fact } from "./facts.ts";
import { reportsByState } from "./state-reports.ts";
import type { StateTable } from "./state-table.ts";
import { causeLikelihood, overVariants } from "./variant-likelihood.ts";

/**
 * P(the true state is one of `states` | all facts) = Σ_h p_h · Σ_{s in states} θ_s P(reports | s) ÷ Σ_s θ_s P(reports | s);
 * undefined for a feature without states.
 */
export function stateProbability(
  belief: Belief,
  feature: string,
  states: readonly string[],
): number | undefined {
  const { compiled } = belief;
  const table = compiled.states.get(feature);
  if (!table) return undefined;
  const fact = belief.facts.find((told) => told.feature === feature) ?? { feature, reports: [] };
  const chosen = (of: StateTable): Float64Array =>
    reportsByState(of.channel, fact.reports).map((chance, state) =>
      states.includes(of.channel.states[state] as string) ? chance : 0,
    );
  const cause = compiled.causes.get(feature);
  if (!cause) {
    const whole = overVariants(table, reportsByState(table.channel, fact.reports));
    return shareOfFact(belief, whole, overVariants(table, chosen(table)));
  }
  const item: Fact[] = belief.facts.filter(
    (told) => told !== fact && compiled.causes.get(told.feature) === cause,
  );
  item.push(fact);
  const whole = causeLikelihood(compiled, cause, item);
  const part = causeLikelihood(compiled, cause, item, (of, other) =>
    other === fact ? chosen(of) : reportsByState(of.channel, other.reports),
  );
  return shareOfFact(belief, whole, part);
}
