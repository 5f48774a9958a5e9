/** A reported value, and a whole fact, in the handbook's own words. */
import {
  type Feature,
  formatInterval,
  type Report,
  type ReportValue,
  stateName,
} from "../../../knowledge/index.ts";
import { listed, numberInWords } from "../phrases/grammar.ts";
import { cannotTellValue } from "../phrases/understood.ts";

/** "rough", "17 in", "June 1981 or June 1971", "cannot tell". */
export function sayValue(feature: Feature, value: ReportValue): string {
  switch (value.kind) {
    case "state":
      return stateName(feature, value.state);
    case "weighed-states":
      return fittingStates(value.weights)
        .map((state) => stateName(feature, state))
        .join("; or ");
    case "measurement":
      return value.unit === null ? sayNumber(value.value) : `${sayNumber(value.value)} ${value.unit}`;
    case "date":
      return listed(fewDates(value.readings.map((reading) => formatInterval(reading.interval))), "or");
    case "cannot-tell":
      return cannotTellValue;
  }
}

/** "inside finish (rough, fibres showing)", "rounded tips": a fact as it stands within a sentence, commas and all. */
export function sayFact(feature: Feature, value: ReportValue): string {
  const said = sayValue(feature, value);
  return namesItsFeature(feature.name, said) ? said : `${feature.name} (${said})`;
}

// A state such as "black gel coat" has the feature's word in it, and needs no feature before it.
function namesItsFeature(name: string, said: string): boolean {
  const words = name.toLowerCase().match(/[a-z]{4,}/g) ?? [];
  return words.some((word) => said.toLowerCase().includes(word.replace(/s$/, "")));
}

/** What was told last of a feature; that somebody could not tell only when nobody told anything. */
export function lastTold(feature: string, reports: readonly Report[]): Report | undefined {
  const own = reports.filter((report) => report.feature === feature);
  return own.findLast((report) => report.value.kind !== "cannot-tell") ?? own.at(-1);
}

/** The value alone, as it was told last; the feature's name when nobody has. */
export function sayReportedValue(feature: Feature, reports: readonly Report[]): string {
  const last = lastTold(feature.id, reports);
  return last === undefined ? feature.name : sayValue(feature, last.value);
}

/** The fact of a feature as the last person told it; the feature's name alone when nobody has. */
export function sayReported(feature: Feature, reports: readonly Report[]): string {
  const last = lastTold(feature.id, reports);
  return last === undefined ? feature.name : sayFact(feature, last.value);
}

/** The same standing alone on a line: "inside finish: rough, fibres showing". */
export function sayReportedPlainly(feature: Feature, reports: readonly Report[]): string {
  const last = lastTold(feature.id, reports);
  return last === undefined ? feature.name : `${feature.name}: ${sayValue(feature, last.value)}`;
}

const massUnits: ReadonlySet<string> = new Set(["g", "kg", "lb", "oz"]);

/** A weight, not a length. */
export function isOfMass(feature: Feature): boolean {
  return feature.kind === "measurement" && massUnits.has(feature.unit);
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

const mostDates = 4;

/** All of a few dates; of many the first, and how many more. */
function fewDates(dates: readonly string[]): readonly string[] {
  if (dates.length <= mostDates) return dates;
  const shown = dates.slice(0, mostDates - 1);
  return [...shown, `one of ${numberInWords(dates.length - shown.length)} more`];
}
