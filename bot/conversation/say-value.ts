/** A reported value, and a whole fact, in the handbook's own words. */
import {
  type Feature,
  formatInterval,
  notThere,
  type Report,
  type ReportValue,
} from "../../knowledge/index.ts";
import { listed } from "./phrases/grammar.ts";
import { cannotTellValue } from "./phrases/understood.ts";

/** "rough", "17 in", "June 1981 or June 1971", "cannot tell". */
export function sayValue(feature: Feature, value: ReportValue): string {
  switch (value.kind) {
    case "state":
      return stateName(feature, value.state);
    case "weighed-states":
      return listed(
        fittingStates(value.weights).map((state) => stateName(feature, state)),
        "or",
      );
    case "measurement":
      return value.unit === null ? sayNumber(value.value) : `${sayNumber(value.value)} ${value.unit}`;
    case "date":
      return listed(
        value.readings.map((reading) => formatInterval(reading.interval)),
        "or",
      );
    case "cannot-tell":
      return cannotTellValue;
  }
}

/** "inside finish (rough, fibres showing)": a fact as it stands within a sentence, commas and all. */
export function sayFact(feature: Feature, value: ReportValue): string {
  return `${feature.name} (${sayValue(feature, value)})`;
}

/** The fact of a feature as the last person told it; the feature's name alone when nobody has. */
export function sayReported(feature: Feature, reports: readonly Report[]): string {
  const last = reports.findLast((report) => report.feature === feature.id);
  return last === undefined ? feature.name : sayFact(feature, last.value);
}

/** The state's name as the handbook writes it, or what the feature is called when it is not there at all. */
export function stateName(feature: Feature, state: string): string {
  if (state === notThere) return feature.none ?? `no ${feature.name}`;
  if (feature.kind !== "states") return state;
  return feature.states.find((one) => one.id === state)?.name ?? state;
}

/** At most three decimals and no trailing noughts: 17.375, 412. */
export function sayNumber(value: number): string {
  return String(Number(value.toFixed(3)));
}

// Heaviest first, ties in alphabetical order; a state that weighs under a tenth of the first is not worth naming.
function fittingStates(weights: Readonly<Record<string, number>>): readonly string[] {
  const ranked = Object.entries(weights).toSorted(
    ([one, oneWeight], [other, otherWeight]) => otherWeight - oneWeight || (one < other ? -1 : 1),
  );
  const heaviest = ranked[0]?.[1] ?? 0;
  return ranked.filter(([, weight]) => weight > 0 && weight >= heaviest / 10).map(([state]) => state);
}
