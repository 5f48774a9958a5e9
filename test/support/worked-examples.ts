/** The handbook of the worked examples of the identification method, section 10, and the reports it is asked with. */

import type { Report, ReportValue } from "../../knowledge/evidence/report.ts";
import type { Handbook } from "../../knowledge/handbook/schema.ts";
import { type CompiledPart, compilePart } from "../../knowledge/identification/compiled-part.ts";
import type { ObservedState } from "../../knowledge/identification/identification.ts";
import { dateFeature, measurementFeature, smallHandbook, stateFeature, variant } from "./small-handbook.ts";

/** A of 1977–79, B of 1979–81 and sold until 1988, C a reproduction sold since 1996. */
export function workedHandbook(): Handbook {
  return smallHandbook({
    features: [
      stateFeature("fixing", ["two", "three"], { misread: 0.02 }),
      stateFeature("mark", ["present", "absent"], {
        misread: [
          { is: "present", said: "absent", rate: 0.12 },
          { is: "absent", said: "present", rate: 0.02 },
        ],
      }),
      stateFeature("inside", ["rough", "smooth", "painted"], { misread: 0.06 }),
      stateFeature("edge", ["square", "round"], { misread: 0.05 }),
      measurementFeature("width"),
      dateFeature("cast"),
    ],
    variants: [
      variant("a", {
        origin: "production",
        fitted: [{ from: "1977-01", to: "1979-06" }],
        tells: {
          fixing: { two: "always" },
          mark: { present: "17 of 20" },
          inside: { rough: "usually", smooth: "sometimes" },
          edge: { square: "nearly always" },
          width: { mean: 412, spread: 2 },
        },
      }),
      variant("b", {
        origin: "production",
        fitted: [{ from: "1979-05", to: "1981-12" }],
        sold: [{ from: "1979", to: "1988" }],
        tells: {
          fixing: { three: "nearly always" },
          mark: { present: "usually" },
          inside: { smooth: "always" },
          edge: { round: "usually" },
          width: { mean: 421, spread: 2 },
        },
      }),
      variant("c", {
        origin: "reproduction",
        sold: [{ from: "1996", to: "2020-12" }],
        tells: {
          fixing: { two: "usually", three: "sometimes" },
          mark: { absent: "nearly always" },
          inside: { smooth: "often", painted: "sometimes" },
          edge: { round: "always" },
          width: { mean: 417, spread: 3 },
        },
      }),
    ],
    rest: {
      groups: [{ id: "mould", coupling: "close", features: ["inside", "edge"], reason: "one mould" }],
    },
  });
}

/** The same, compiled. */
export function compiledExample(): CompiledPart {
  return compiledFrom(workedHandbook());
}

/** The part kind of a small handbook, compiled. */
export function compiledFrom(handbook: Handbook, observed: readonly ObservedState[] = []): CompiledPart {
  const compiled = compilePart(handbook, "foot", observed);
  if (!compiled) throw new Error("the small handbook has a part kind named foot");
  return compiled;
}

/** A firm report of one person, unless said otherwise. */
export function report(feature: string, value: ReportValue, rest: Partial<Report> = {}): Report {
  return { feature, by: "owner", certainty: 1, words: "", value, ...rest };
}

export function sees(feature: string, state: string, rest: Partial<Report> = {}): Report {
  return report(feature, { kind: "state", state }, rest);
}

/** A reading in millimetres by tape, ± .5. */
export function measures(feature: string, value: number, rest: Partial<Report> = {}): Report {
  return report(feature, { kind: "measurement", value, halfWidth: 0.5, unit: "mm" }, rest);
}

/** A date mark that reads as one interval of months. */
export function reads(feature: string, from: number, to: number, rest: Partial<Report> = {}): Report {
  return report(feature, { kind: "date", readings: [{ interval: { from, to }, weight: 1 }] }, rest);
}
