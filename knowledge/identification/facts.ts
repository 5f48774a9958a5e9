/** From what was said to what counts: one fact per feature, with the last word of each person. */
import { notThere, type Report } from "../evidence/report.ts";
import type { Feature } from "../handbook/schema.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { measureAlike } from "./measurement-units.ts";

export interface Fact {
  readonly feature: string;
  /** One per person, in the order in which they first spoke; all of them evidence. */
  readonly reports: readonly Report[];
}

/**
 * The facts in the handbook's order of features. The later report of a person about a feature replaces the earlier;
 * "cannot tell", hearsay (certainty 0) and reports that do not suit the feature are no evidence.
 */
export function factsOf(compiled: CompiledPart, reports: readonly Report[]): readonly Fact[] {
  const byFeature = new Map<string, Map<string, Report>>();
  for (const report of reports) {
    const people = byFeature.get(report.feature) ?? new Map<string, Report>();
    people.set(report.by, report);
    byFeature.set(report.feature, people);
  }
  return compiled.part.features.flatMap((feature) => {
    const said = [...(byFeature.get(feature.id)?.values() ?? [])].filter((report) =>
      isEvidence(compiled, feature, report),
    );
    return said.length > 0 ? [{ feature: feature.id, reports: said }] : [];
  });
}

function isEvidence(compiled: CompiledPart, feature: Feature, { value, certainty }: Report): boolean {
  if (!(certainty > 0) || certainty > 1) return false;
  switch (value.kind) {
    case "cannot-tell":
      return false;
    case "state":
      return isKnownState(compiled, feature, value.state);
    case "weighed-states":
      return feature.kind === "states" && feature.states.some(({ id }) => (value.weights[id] ?? 0) > 0);
    case "measurement":
      return (
        feature.kind === "measurement" &&
        value.value > 0 &&
        value.halfWidth >= 0 &&
        (value.unit === null || measureAlike(value.unit, feature.unit)) &&
        compiled.measurements.get(feature.id)?.range !== undefined
      );
    case "date":
      return (
        feature.kind === "date" &&
        value.readings.some(({ interval, weight }) => weight > 0 && interval.to > interval.from)
      );
  }
}

function isKnownState(compiled: CompiledPart, feature: Feature, state: string): boolean {
  const table = compiled.states.get(feature.id);
  if (table) return table.channel.states.includes(state);
  return state === notThere && compiled.presence.has(feature.id);
}
