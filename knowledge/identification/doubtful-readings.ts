/** Measurements that need a word back: probably another unit than said, or probably taken in the wrong place. */
import type { MeasurementUnit, Report } from "../evidence/report.ts";
import { type Belief, shareOfFact } from "./belief.ts";
import type { Fact } from "./facts.ts";
import type { DoubtfulReading } from "./identification.ts";
import { onlyTerm, type Reading } from "./measurement-likelihood.ts";
import { type MeasurementTable, overMeans } from "./measurement-table.ts";
import { readingsOf } from "./variant-likelihood.ts";

const DOUBT = 0.5;

/** At most one doubt per measured fact: the likeliest one above one half. */
export function doubtfulReadings(belief: Belief): readonly DoubtfulReading[] {
  return belief.facts.flatMap((fact) => {
    const table = belief.compiled.measurements.get(fact.feature);
    const doubts = table ? doubtsOf(belief, fact, table) : [];
    const worst = doubts.reduce<DoubtfulReading | undefined>(
      (best, doubt) => (best && best.probability >= doubt.probability ? best : doubt),
      undefined,
    );
    return worst ? [worst] : [];
  });
}

function doubtsOf(belief: Belief, fact: Fact, table: MeasurementTable): readonly DoubtfulReading[] {
  const readings = readingsOf(belief.compiled, fact);
  const measured = fact.reports.filter(({ value }) => value.kind === "measurement");
  const whole = overMeans(table, readings);
  return readings.flatMap((reading, index) => {
    const asIf = (unit: MeasurementUnit | null): number => {
      const only = readings.map((other, place) => (place === index ? onlyTerm(other, unit) : other));
      return shareOfFact(belief, whole, overMeans(table, only));
    };
    const doubts: DoubtfulReading[] = unsaidUnits(reading, measured[index]).map((unit) => ({
      feature: fact.feature,
      reason: "unit",
      meantUnit: unit,
      probability: asIf(unit),
    }));
    doubts.push({ feature: fact.feature, reason: "outlier", probability: asIf(null) });
    return doubts.filter(({ probability }) => probability > DOUBT);
  });
}

function unsaidUnits(reading: Reading, report: Report | undefined): readonly MeasurementUnit[] {
  const said = report?.value.kind === "measurement" ? report.value.unit : null;
  return reading.terms.map(({ unit }) => unit).filter((unit) => unit !== said);
}

/** P(the number was meant in this unit | all facts), for the first person who measured the feature. */
export function meantUnitProbability(belief: Belief, feature: string, unit: MeasurementUnit): number {
  const fact = belief.facts.find((told) => told.feature === feature);
  const table = belief.compiled.measurements.get(feature);
  if (!fact || !table) return 0;
  const [first, ...others] = readingsOf(belief.compiled, fact);
  if (!first) return 0;
  return shareOfFact(
    belief,
    overMeans(table, [first, ...others]),
    overMeans(table, [onlyTerm(first, unit), ...others]),
  );
}
