/** Every source that the present ranking rests on: the facts told, the variants that lead, the question that is open. */
import type { Assessed, NextQuestion } from "../assessed.ts";
import { sourcesOfTell } from "./sources-of.ts";

/** Source ids, those behind the facts first; without repeats. */
export function sourcesBehind(assessed: Assessed, question: NextQuestion | null): readonly string[] {
  const { part, facts, identification } = assessed;
  const leaders = identification.ranking.slice(0, 2).map((one) => one.variant);
  const told = facts.reports
    .filter((report) => report.value.kind !== "cannot-tell")
    .map((report) => report.feature);
  const asked = question?.about === "feature" ? [question.feature.id] : [];
  const behindFacts = [...told, ...asked].flatMap((feature) => sourcesOfTell(part, feature, leaders));
  const behindVariants = part.variants
    .filter((variant) => leaders.includes(variant.id))
    .flatMap((variant) => [...variant.sources, ...variant.fitted.flatMap((period) => period.sources)]);
  return [...new Set([...behindFacts, ...behindVariants])];
}
