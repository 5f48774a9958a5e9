/** The reading whose unit is in doubt: one question is about one person's words, never about everybody's. */
import type { MeasurementUnit, Report, ReportValue } from "../../knowledge/index.ts";

/** What a question about a unit is called; the feature's id stands behind it. */
export const unitQuestionPrefix = "unit:";

export interface DoubtedReading {
  readonly report: Report;
  readonly value: Extract<ReportValue, { kind: "measurement" }>;
}

/** The first reading of the feature not said in `unit` and not yet confirmed; undefined when there is none. */
export function doubtedReading(
  reports: readonly Report[],
  feature: string,
  unit: string,
): DoubtedReading | undefined {
  for (const report of reports) {
    const { value } = report;
    if (report.feature !== feature || value.kind !== "measurement" || value.unitConfirmed === true) continue;
    if (value.unit !== unit) return { report, value };
  }
  return undefined;
}

/** The unit as a type; undefined for any other word. */
export function unitNamed(unit: string | undefined): MeasurementUnit | undefined {
  return units.find((known) => known === unit);
}

const units: readonly MeasurementUnit[] = ["mm", "cm", "in", "g", "kg", "lb", "oz"];
