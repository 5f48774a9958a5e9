// The worked examples of the identification method, section 10: numbers on which two programs written apart agree
// to 5e-11. They stand here to the six digits printed, tolerance 5e-7.
import { describe, expect, test } from "vitest";
import { monthInterval, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { compilePart } from "../../../knowledge/identification/compiled-part.ts";
import { meantUnitProbability } from "../../../knowledge/identification/doubtful-readings.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { reportsByState } from "../../../knowledge/identification/state-reports.ts";
import { variantLikelihood } from "../../../knowledge/identification/variant-likelihood.ts";
import { compiledExample, measures, reads, sees } from "../../support/worked-examples.ts";

const compiled = compiledExample();

interface Example {
  readonly car: CarDescription;
  readonly reports: readonly Report[];
  readonly prior: readonly number[];
  readonly posterior: readonly number[];
  readonly variants: readonly number[];
}

/** Hypotheses in the order of the table; variants: A, B, C, not in the handbook. */
const hypotheses = [
  "a:works",
  "b:works",
  "b:service",
  "a:used",
  "b:used",
  "c:reproduction",
  "kin-of:a",
  "kin-of:b",
  "kin-of:c",
  "kin-of-nothing",
];

const examples: Readonly<Record<string, Example>> = {
  "a car of March 1978 whose part shows no mark": {
    car: { built: monthInterval(1978, 3), grade: "history-unknown" },
    reports: [sees("mark", "absent")],
    prior: [0.76824, 0.00776, 0.075444, 0.031277, 0.03339, 0.053889, 0.022255, 0.003245, 0.0015, 0.003],
    posterior: [
      0.656204, 0.007971, 0.077496, 0.026716, 0.034297, 0.156936, 0.027115, 0.004291, 0.00368, 0.005294,
    ],
    variants: [0.68292, 0.119764, 0.156936, 0.040381],
  },
  "a car of which nothing is known, two people who disagree, and a tempered group": {
    car: {},
    reports: [
      sees("fixing", "two"),
      sees("fixing", "three", { by: "friend", certainty: 0.75 }),
      sees("inside", "smooth"),
      sees("edge", "round"),
    ],
    prior: [0.375325, 0.400675, 0.075444, 0.031277, 0.03339, 0.053889, 0.011318, 0.014182, 0.0015, 0.003],
    posterior: [
      0.308843, 0.336161, 0.063297, 0.025737, 0.028013, 0.199143, 0.013173, 0.018159, 0.003808, 0.003665,
    ],
    variants: [0.33458, 0.427471, 0.199143, 0.038805],
  },
  "a width said in the wrong unit and a date mark after the build date": {
    car: { built: monthInterval(1979, 5), grade: "one-owner" },
    reports: [measures("width", 42), reads("cast", 12 * 1980 + 1, 12 * 1980 + 2)],
    prior: [0.501609, 0.390345, 0.030351, 0.012583, 0.013433, 0.021679, 0.014313, 0.012084, 0.000603, 0.003],
    posterior: [
      0.037056, 0.038135, 0.334465, 0.005265, 0.546095, 0.002004, 0.016928, 0.01861, 0.000882, 0.00056,
    ],
    variants: [0.042321, 0.918695, 0.002004, 0.03698],
  },
  "a part that fits no variant": {
    car: { built: yearInterval(1978) },
    reports: [
      sees("fixing", "three"),
      sees("mark", "present"),
      sees("inside", "painted"),
      sees("edge", "square"),
      measures("width", 395),
    ],
    prior: [0.767243, 0.008757, 0.075444, 0.031277, 0.03339, 0.053889, 0.022227, 0.003273, 0.0015, 0.003],
    posterior: [
      0.04885, 0.005, 0.043079, 0.001991, 0.019066, 0.001928, 0.440938, 0.129083, 0.013944, 0.29612,
    ],
    variants: [0.050842, 0.067145, 0.001928, 0.880086],
  },
};

describe.each(Object.entries(examples))("%s", (_, { car, reports, prior, posterior, variants }) => {
  const belief = beliefOf(compiled, car, reports);
  test.each(hypotheses.map((id, row) => [id, row] as const))(
    "%s has the prior and posterior printed",
    (id, row) => {
      const h = compiled.space.ids.indexOf(id);
      expect(Math.abs((belief.ground.prior[h] ?? Number.NaN) - (prior[row] ?? 0))).toBeLessThan(5e-7);
      expect(Math.abs((belief.probabilities[h] ?? Number.NaN) - (posterior[row] ?? 0))).toBeLessThan(5e-7);
    },
  );
  test("the variants have the sums printed", () => {
    const { ranking } = identify(compiled, { car, reports, goal: "which-variant" });
    ["a", "b", "c", "not-in-the-handbook"].forEach((variant, index) => {
      const found = ranking.find((ranked) => ranked.variant === variant)?.probability;
      expect(Math.abs((found ?? Number.NaN) - (variants[index] ?? 0))).toBeLessThan(5e-7);
    });
  });
});

test("the chance that the absent mark is reported is .2662 for A, .320122 for B, .907588 for C, .55 flat, .37972 for A's kin", () => {
  const likelihood = variantLikelihood(compiled, { feature: "mark", reports: [sees("mark", "absent")] });
  const [a = 0, b, c] = likelihood?.byVariant ?? [];
  expect(a).toBeCloseTo(0.2662, 10);
  expect(b).toBeCloseTo(0.320122, 10);
  expect(c).toBeCloseTo(0.907588, 10);
  expect(likelihood?.flat).toBeCloseTo(0.55, 10);
  expect(0.6 * a + 0.4 * (likelihood?.flat ?? 0)).toBeCloseTo(0.37972, 10);
  const channel = compiled.states.get("mark")?.channel;
  expect(channel && [...reportsByState(channel, [sees("mark", "absent")])]).toEqual([0.12, 0.98]);
});

test("42 mm was meant as 42 cm, beyond .999999", () => {
  const example = examples["a width said in the wrong unit and a date mark after the build date"];
  const belief = beliefOf(compiled, example?.car ?? {}, example?.reports ?? []);
  expect(meantUnitProbability(belief, "width", "cm")).toBeGreaterThan(0.999999);
});

test("a reading in the wrong unit is doubtful until it is confirmed", () => {
  const car = { built: monthInterval(1979, 5), grade: "one-owner" } as const;
  const asked = { car, reports: [measures("width", 42)], goal: "right-for-car" } as const;
  const [doubt] = identify(compiled, asked).doubtful;
  expect(doubt).toMatchObject({ feature: "width", reason: "unit", meantUnit: "cm" });
});

test("right for car: as built .075191, right kind replaced .885826", () => {
  const example = examples["a width said in the wrong unit and a date mark after the build date"];
  const { classes, kindItWasBuiltWith } = identify(compiled, {
    car: example?.car ?? {},
    reports: example?.reports ?? [],
    goal: "right-for-car",
  });
  const probability = (name: string) =>
    classes.find((entry) => entry.class === name)?.probability ?? Number.NaN;
  expect(Math.abs(probability("as-built") - 0.075191)).toBeLessThan(5e-7);
  expect(Math.abs(probability("right-kind-replaced") - 0.885826)).toBeLessThan(5e-7);
  expect(Math.abs((kindItWasBuiltWith ?? Number.NaN) - 0.961017)).toBeLessThan(1e-6);
});

test("an unknown part handbook has no compiled form", () => {
  expect(compilePart(compiled.handbook, "no-such-part")).toBeUndefined();
});
